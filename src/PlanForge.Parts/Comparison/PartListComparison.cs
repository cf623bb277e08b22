using System.Collections.Immutable;

namespace PlanForge.Parts.Comparison;

/// <summary>The parts and figures of two designs, held against each other; a part is known by its id.</summary>
/// <param name="Parts">All parts of the new design in their order, then those that are gone.</param>
/// <param name="Figures">The figures of the whole airframe that differ.</param>
public sealed record PartListComparison(ImmutableArray<PartComparison> Parts, ImmutableArray<FigureChange> Figures)
{
    /// <summary>Compares two designs.</summary>
    /// <param name="old">What there was.</param>
    /// <param name="now">What there is.</param>
    public static PartListComparison Of(PartList old, PartList now)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(now);
        var before = old.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        var parts = now.Parts.AsParallel().AsOrdered().Select(part => before.TryGetValue(part.Id, out var was)
            ? PartComparer.Compare(was, part)
            : new PartComparison(null, part, PartState.New));
        var kept = now.Parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        var gone = old.Parts.Where(part => !kept.Contains(part.Id)).Select(part => new PartComparison(part, null, PartState.Gone));
        return new([.. parts, .. gone], FigureChange.Between(old.AirframeFigures, now.AirframeFigures));
    }
}
