using System.Collections.Immutable;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Parts;

/// <summary>
/// Parts kept from one run to the next by the values they were made from: a part none of whose recorded inputs changed is not made again,
/// and one that is made again with the same content is the very object it was, so that what was made of it can be known again.
/// Empty at first; for one run at a time, on one thread.
/// </summary>
public sealed class KeptParts
{
    private readonly Dictionary<string, int> _asked = new(StringComparer.Ordinal);
    private Dictionary<string, Part> _earlier = [];
    private Dictionary<string, string> _earlierIds = [];
    private Dictionary<string, string> _ids = [];
    private ImmutableArray<Part> _made = [];
    private Func<DescribedValues> _earlierValues = () => DescribedValues.None;
    private Func<DescribedValues> _values = () => DescribedValues.None;
    private ImmutableArray<string> _changed = [];
    private Dictionary<string, (object? Value, InputSet Inputs)> _earlierPieces = [];
    private Dictionary<string, (object? Value, InputSet Inputs)> _pieces = [];
    private bool _hasEarlier;

    /// <summary>Begins a run; one that did not come to its end is forgotten.</summary>
    /// <param name="values">Lists the description's values.</param>
    internal void Begin(Func<DescribedValues> values)
    {
        _asked.Clear();
        (_ids, _made, _pieces, _values) = (new(StringComparer.Ordinal), [], new(StringComparer.Ordinal), values);
        if (!_hasEarlier)
        {
            // A single run needs no list of values.
            _changed = [];
            return;
        }

        _changed = [.. values().Since(_earlierValues()).Select(change => change.Path)];
        foreach (var (what, piece) in _earlierPieces)
        {
            if (!_changed.Any(piece.Inputs.Covers))
            {
                _pieces.Add(what, piece);
            }
        }
    }

    /// <summary>Names the making of a part: in a run after a small change it has the same name again.</summary>
    /// <param name="what">What is made.</param>
    internal string NameOf(string what)
    {
        var count = _asked[what] = _asked.GetValueOrDefault(what) + 1;
        return count == 1 ? what : FormattableString.Invariant($"{what}, {count}");
    }

    /// <summary>The part that came of a making the last time, if nothing that it was made from has changed; else null.</summary>
    internal Part? Unchanged(string making) =>
        _earlierIds.TryGetValue(making, out var id) && _earlier.TryGetValue(id, out var part) && !_changed.Any(part.Inputs.Covers) ? part : null;

    /// <summary>A piece that several parts or views are made from, as the last time if none of its inputs has changed.</summary>
    /// <param name="log">The log of this run's description.</param>
    /// <param name="what">What it is; no other piece is called so.</param>
    /// <param name="make">
    /// Makes it, and takes all that it is made from while doing so. It may hold nothing that reads the description when it is used: a
    /// kept one would read that of an earlier run, and nobody would write that down.
    /// </param>
    internal Recorded<T> Piece<T>(InputLog log, string what, Func<T> make)
    {
        if (_pieces.TryGetValue(what, out var known))
        {
            return log.Recall((T)known.Value!, known.Inputs);
        }

        var made = log.Record(make);
        _pieces.Add(what, (made.Unnoted, made.Inputs.ToSet()));
        return made;
    }

    /// <summary>Remembers what came of a making; only one that had nothing to say of the part may be left out the next time.</summary>
    internal void Remember(string making, Part part) => _ids[making] = part.Id;

    /// <summary>True for the very part of an earlier run, which has all its inputs already.</summary>
    internal bool IsEarlier(Part part) => _earlier.TryGetValue(part.Id, out var known) && ReferenceEquals(known, part);

    /// <summary>The parts, each in place of its like.</summary>
    internal ImmutableArray<Part> Known(ImmutableArray<Part> parts) => _made = [.. parts.Select(Known)];

    /// <summary>Ends a run that came to its end; what it did not make is let go.</summary>
    public void EndRun()
    {
        _earlier = new(StringComparer.Ordinal);
        foreach (var part in _made)
        {
            _earlier[part.Id] = part;
        }

        (_earlierIds, _earlierPieces, _earlierValues, _hasEarlier) = (_ids, _pieces, _values, true);
    }

    // One that came about otherwise than its like is not its like: other values decide whether it is made again.
    private Part Known(Part part) =>
        _earlier.TryGetValue(part.Id, out var known) && PartContent.IsSame(known, part) && known.Inputs.IsSameAs(part.Inputs) ? known : part;
}
