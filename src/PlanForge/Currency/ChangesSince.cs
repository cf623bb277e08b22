using System.Collections.Immutable;
using PlanForge.Airframe.Described;
using PlanForge.Folders;
using PlanForge.Parts;

namespace PlanForge.Currency;

/// <summary>What became of the description since something was drawn.</summary>
/// <param name="Past">What was drawn then.</param>
/// <param name="Now">What is drawn now.</param>
/// <param name="Values">The values that differ; null when it is not known what they were.</param>
/// <param name="Parts">The parts of the design as it is now.</param>
internal sealed record ChangesSince(DrawnState Past, DrawnState Now, ImmutableArray<ValueChange>? Values, ImmutableArray<Part> Parts)
{
    /// <summary>What became of it since a state.</summary>
    /// <param name="past">What was drawn then.</param>
    /// <param name="now">What is drawn now.</param>
    /// <param name="values">The description's values as they are now.</param>
    /// <param name="parts">The parts of the design as it is now.</param>
    public static ChangesSince Of(DrawnState past, DrawnState now, DescribedValues values, ImmutableArray<Part> parts) =>
        new(past, now, past.Values?.ToDescribed() is { } before ? values.Since(before) : null, parts);

    /// <summary>Of the values that differ, those that a thing's parts are made from, as far as these are not as they were.</summary>
    public ImmutableArray<ValueChange> CausesOf(MarkedThing thing)
    {
        if (Values is not { } values)
        {
            return [];
        }

        // What a part that is no more was made from, nobody knows now.
        var was = thing.Parts.ToDictionary(part => part.Id, part => part.Fingerprint, StringComparer.Ordinal);
        var inputs = Parts
            .Where(part => was.TryGetValue(part.Id, out var fingerprint) && fingerprint != (part.Fingerprint?.Code ?? ""))
            .Select(part => part.Inputs).ToList();
        return [.. values.Where(value => inputs.Exists(set => set.Covers(value.Path)))];
    }
}
