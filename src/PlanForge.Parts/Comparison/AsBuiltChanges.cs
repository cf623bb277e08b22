using System.Collections.Immutable;

namespace PlanForge.Parts.Comparison;

/// <summary>What differs between a design as it was drawn first and as it is drawn to the wood that was measured.</summary>
/// <param name="Parts">The parts, in the order of the later state, then those that are gone.</param>
/// <param name="Figures">All figures that changed at all, in the order of the later state; those it lacks come last.</param>
public sealed record AsBuiltChanges(ImmutableArray<PartComparison> Parts, ImmutableArray<FigureChange> Figures)
{
    /// <summary>Compares both states.</summary>
    /// <param name="designed">As designed, without errors.</param>
    /// <param name="built">As built, without errors.</param>
    public static AsBuiltChanges Between(PartList designed, PartList built)
    {
        ArgumentNullException.ThrowIfNull(designed);
        ArgumentNullException.ThrowIfNull(built);
        return new(PartListComparison.Of(designed, built).Parts, FigureChange.Between(designed.Figures, built.Figures, LeastChange.Any));
    }

    /// <summary>The parts of which something became.</summary>
    public IEnumerable<PartComparison> Those(params PartState[] states) => Parts.Where(part => states.Contains(part.State));
}
