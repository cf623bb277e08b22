using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>A pair of numbers in a coordinate file.</summary>
/// <param name="Point">The numbers as they stand there.</param>
/// <param name="At">Where they stand.</param>
internal sealed record ListedPoint(Point2 Point, SourcePosition At)
{
    /// <summary>The numbers as messages give them.</summary>
    public string Text => Written(Point);

    /// <summary>A pair of coordinates as messages give it.</summary>
    public static string Written(Point2 point) => FormattableString.Invariant($"({point.X:0.######}, {point.Y:0.######})");
}
