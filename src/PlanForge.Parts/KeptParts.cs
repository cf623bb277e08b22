using System.Collections.Immutable;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Inputs;
using PlanForge.Parts.Arrangement;

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
    private (ArrangementViews Views, InputSet Inputs)? _earlierViews;
    private (ArrangementViews Views, InputSet Inputs)? _views;

    /// <summary>Begins a run; one that did not come to its end is forgotten.</summary>
    /// <param name="values">Lists the description's values.</param>
    internal void Begin(Func<DescribedValues> values)
    {
        _asked.Clear();
        (_ids, _made, _views, _values) = (new(StringComparer.Ordinal), [], null, values);

        // A single run needs no list of values.
        _changed = _earlier.Count == 0 ? [] : [.. values().Since(_earlierValues()).Select(change => change.Path)];
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

    /// <summary>The views of the whole airframe and their inputs, as the last time if none of those has changed.</summary>
    internal (ArrangementViews Views, InputSet Inputs) Views(Func<Recorded<ArrangementViews>> make)
    {
        if (_earlierViews is not { } views || _changed.Any(views.Inputs.Covers))
        {
            var made = make();
            views = (made.Unnoted, made.Inputs.ToSet());
        }

        _views = views;
        return views;
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

        (_earlierIds, _earlierViews, _earlierValues) = (_ids, _views, _values);
    }

    // One that came about otherwise than its like is not its like: other values decide whether it is made again.
    private Part Known(Part part) =>
        _earlier.TryGetValue(part.Id, out var known) && PartContent.IsSame(known, part) && known.Inputs.IsSameAs(part.Inputs) ? known : part;
}
