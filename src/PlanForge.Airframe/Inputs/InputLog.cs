using System.Numerics;
using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Inputs;

/// <summary>
/// Writes down what is read of one description while things are made from it. One log serves one description that was given it
/// (<see cref="AirframeDescription.Watched"/>) and one thread.
/// </summary>
/// <remarks>
/// What is read goes to the recording that was begun last. Recordings nest: what is made within one and used by others is made in a
/// recording of its own, and everybody who uses it inherits its inputs by <see cref="Recorded{T}.Value"/>. Each input and each
/// recording has a number, so that noting one is setting a bit.
/// </remarks>
public sealed class InputLog
{
    private const int BitsInWord = 64;

    private readonly Dictionary<InputKey, int> _numbers = new(InputKey.Comparer);
    private readonly List<string?> _paths = [];
    private readonly List<ulong[]?> _recordings = [];
    private readonly Dictionary<int, InputSet> _recalled = [];
    private ulong[] _read = new ulong[4];

    /// <summary>Makes something in a recording of its own: nothing of it counts for the recording around it until it is used.</summary>
    /// <param name="make">Makes it. When it throws, what was read counts for the recording around it.</param>
    public Recorded<T> Record<T>(Func<T> make)
    {
        ArgumentNullException.ThrowIfNull(make);
        var around = _read;
        _read = new ulong[around.Length];
        T value;
        try
        {
            value = make();
        }
        catch
        {
            around = Merged(around, _read);
            _read = around;
            throw;
        }

        var own = _read;
        _read = around.Length < own.Length ? Merged(around, new ulong[own.Length]) : around;
        return new(value, new(this, Add(null, own)));
    }

    /// <summary>The same for a number; compiled ahead, where the other is compiled when it is first used.</summary>
    public Recorded<double> RecordNumber(Func<double> make) => Record(make);

    /// <summary>What is read while something is done; nothing of it counts for the recording around it until it is used.</summary>
    public RecordedInputs InputsOf(Action act)
    {
        ArgumentNullException.ThrowIfNull(act);
        return Record(() =>
        {
            act();
            return true;
        }).Inputs;
    }

    /// <summary>Something made from an equal description before: whoever uses it now inherits the inputs that it had then.</summary>
    /// <param name="value">What was made; it must not read the description of then.</param>
    /// <param name="inputs">What went into it.</param>
    public Recorded<T> Recall<T>(T value, InputSet inputs)
    {
        var number = Add(null, null);
        _recalled.Add(number, inputs);
        return new(value, new(this, number));
    }

    /// <summary>Notes the input of a number.</summary>
    internal void Note(int number) => _read[number / BitsInWord] |= 1UL << number;

    /// <summary>Notes that something of a place is read.</summary>
    internal void Note(Place place, Key? key, InputKind kind, Key? outer = null)
    {
        var input = new InputKey(place, outer, key, kind);
        if (!_numbers.TryGetValue(input, out var number))
        {
            var holder = outer is null ? place : place.Of(outer);
            var path = (key is null ? holder : holder.Of(key)).Path + kind switch
            {
                InputKind.Members => Place.Members,
                InputKind.Presence => Place.Presence,
                _ => "",
            };
            number = Add(path, null);
            _numbers.Add(input, number);
        }

        Note(number);
    }

    /// <summary>The paths of all inputs of a recording, those of the recordings it used among them.</summary>
    internal HashSet<string> PathsOf(int number)
    {
        var paths = new HashSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<int> { number };
        var open = new Stack<int>(seen);
        while (open.TryPop(out var next))
        {
            if (_paths[next] is { } path)
            {
                paths.Add(path);
                continue;
            }

            if (_recalled.TryGetValue(next, out var inputs))
            {
                paths.UnionWith(inputs.Paths);
                continue;
            }

            var read = _recordings[next]!;
            for (var word = 0; word < read.Length; word++)
            {
                for (var bits = read[word]; bits != 0; bits &= bits - 1)
                {
                    var input = (word * BitsInWord) + BitOperations.TrailingZeroCount(bits);
                    if (seen.Add(input))
                    {
                        open.Push(input);
                    }
                }
            }
        }

        return paths;
    }

    private int Add(string? path, ulong[]? recording)
    {
        var number = _paths.Count;
        _paths.Add(path);
        _recordings.Add(recording);
        if (number / BitsInWord >= _read.Length)
        {
            Array.Resize(ref _read, 2 * _read.Length);
        }

        return number;
    }

    private static ulong[] Merged(ulong[] first, ulong[] second)
    {
        var merged = new ulong[Math.Max(first.Length, second.Length)];
        first.CopyTo(merged, 0);
        for (var i = 0; i < second.Length; i++)
        {
            merged[i] |= second[i];
        }

        return merged;
    }
}
