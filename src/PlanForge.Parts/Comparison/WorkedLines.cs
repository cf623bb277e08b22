using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Deviations;

namespace PlanForge.Parts.Comparison;

/// <summary>The lines of a part that wood is worked to, without what is no more than the edge of a template's paper.</summary>
internal static class WorkedLines
{
    /// <summary>All lines but the paper's edges.</summary>
    public static ImmutableArray<PartLine> Of(Part part) => part.Fitted is { } fitted
        ? [.. part.Lines.Where(line => line.Use != LineUse.Cut), .. fitted.Select(path => new PartLine(LineUse.Cut, path))]
        : part.Lines;

    /// <summary>The part's shape, by the contours that bound it and those of their stretches that count.</summary>
    public static EdgedShape ShapeOf(Part part)
    {
        var contours = LineChange.PathsOf(part.Lines, LineUse.Cut);
        return new(contours, part.Fitted is { } fitted ? fitted : contours);
    }

    /// <summary>True when a line of hatching ends at what wood is worked to, in either part.</summary>
    public static bool Touches(Part old, Part now, Segment2 hatch)
    {
        return old.Fitted is null && now.Fitted is null || new[] { old, now }.Any(part =>
            ShapeOf(part).Edges.Any(path => path.DistanceTo(hatch.Start) <= LineChange.Same || path.DistanceTo(hatch.End) <= LineChange.Same));
    }
}
