using PlanForge.Airframe.Described;
using PlanForge.Airframe.Reading;

namespace PlanForge.Parts.Tests.Inputs;

/// <summary>A description whose values are changed one at a time, with its parts before and after.</summary>
internal sealed class ChangeProbe
{
    private readonly string _text;
    private readonly Func<string, string?> _files;
    private readonly PartList _parts;
    private readonly Dictionary<string, string> _before;

    public ChangeProbe(string text, Func<string, string?> files)
    {
        (_text, _files) = (text, files);
        var read = AirframeReader.Read("probe.yaml", text, files);
        Assert.True(read.Airframe is not null, string.Join('\n', read.Diagnostics));
        Values = read.ListValues();
        _parts = PartList.Of(read.Airframe!);
        Assert.True(!_parts.Parts.IsEmpty, string.Join('\n', _parts.Findings));
        _before = PartText.OfAll(_parts);
    }

    public DescribedValues Values { get; }

    /// <summary>The values that can be moved a little.</summary>
    public IEnumerable<DescribedValue> Numbers => Values.Values.Where(value => value.Path != "planforge" && ChangedText.Moved(value, 0.001) is not null);

    /// <summary>
    /// Moves a value and makes the parts again: for each part that is there before and after whether it changed and whether the value is
    /// among its inputs; null when the description no longer holds with the new value.
    /// </summary>
    public List<PartChange>? Move(DescribedValue value, double share)
    {
        if (Read(value, ChangedText.Moved(value, share)!) is not { } read)
        {
            return null;
        }

        var changed = read.ListValues().Since(Values).Select(change => change.Path).ToArray();
        if (changed.Length == 0 && share is > -1e-6 and < 1e-6)
        {
            return [];
        }

        Assert.True(changed is [var only] && only == value.Path, $"{value.Path}: changed {string.Join(", ", changed)}");
        var parts = PartList.Of(read.Airframe!);
        if (parts.Parts.IsEmpty)
        {
            return null;
        }

        var after = PartText.OfAll(parts);
        return [.. parts.Parts.Where(part => _before.ContainsKey(part.Id)).Select(part => new PartChange(
            part.Id,
            part.Kind,
            value.Path,
            _before[part.Id] != after[part.Id],
            _parts.Parts.Single(old => old.Id == part.Id).Inputs.Covers(value.Path),
            part.Inputs.Covers(value.Path)))];
    }

    /// <summary>Moves a value by so little that nothing else is decided, in the direction that the description allows.</summary>
    public List<PartChange>? MoveALittle(DescribedValue value) => Move(value, 0.003) ?? Move(value, -0.003) ?? Move(value, 0.00001);

    /// <summary>The parts among whose inputs a value is.</summary>
    public IEnumerable<string> UsersOf(DescribedValue value) => _parts.Parts.Where(part => part.Inputs.Covers(value.Path)).Select(part => part.Id);

    /// <summary>The parts that are not what they were, or gone, when something else stands for a value; none when the description no longer holds with the new value.</summary>
    public ISet<string> ChangedBy(DescribedValue value, string moved)
    {
        var after = Read(value, moved) is { } read ? PartList.Of(read.Airframe!) : null;
        if (after is null || after.Parts.IsEmpty)
        {
            return new HashSet<string>();
        }

        var texts = PartText.OfAll(after);
        return _before.Where(part => texts.GetValueOrDefault(part.Key) != part.Value).Select(part => part.Key).ToHashSet();
    }

    private ReadResult? Read(DescribedValue value, string moved)
    {
        var read = AirframeReader.Read("probe.yaml", ChangedText.With(_text, value.Path, moved), _files);
        return read.Airframe is null ? null : read;
    }
}

/// <summary>What became of one part.</summary>
internal sealed record PartChange(string Part, string Kind, string Path, bool IsChanged, bool WasInput, bool IsInput);
