using System.Collections.Immutable;

namespace PlanForge.Drafting.Charts;

/// <summary>One quantity over another, for a panel of its own.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Unit">Its unit, or empty.</param>
/// <param name="Points">Its points by ascending X; a Y that is not known breaks the curve.</param>
public sealed record ChartCurve(string Title, string Unit, ImmutableArray<(double X, double? Y)> Points);
