using PlanForge.Drafting.Model;
using PlanForge.Parts;

namespace PlanForge.Drafting.Conventions;

/// <summary>How each kind of line is drawn, on which layer, and what the legend calls it: the one table of line conventions.</summary>
/// <remarks>
/// Types and widths after ISO 128 (secondary source: shared/check-values.md section 5): wide to narrow 2 : 1, narrow lines for
/// everything that is not an edge. The trim line is continuous, because it is worked to; the station line is the narrowest.
/// </remarks>
public static class LineConventions
{
    /// <summary>Lines of dimensions, leaders, tables and check bars.</summary>
    public static LineStyle Thin { get; } = new(LineType.Continuous, 0.18);

    /// <summary>The frame of the sheet.</summary>
    public static LineStyle Frame { get; } = new(LineType.Continuous, 0.7);

    /// <summary>Lines between the fields of the title strip.</summary>
    public static LineStyle Field { get; } = new(LineType.Continuous, 0.35);

    /// <summary>All meanings of lines, in the order of the legend.</summary>
    internal static ReadOnlySpan<LineUse> Uses =>
    [
        LineUse.Cut, LineUse.Trim, LineUse.Score, LineUse.Hidden, LineUse.Centre, LineUse.Datum, LineUse.Station, LineUse.Neighbour,
        LineUse.Edge, LineUse.Before, LineUse.Difference,
    ];

    /// <summary>Type and width of a line by its meaning.</summary>
    public static LineStyle StyleOf(LineUse use) => Of(use).Style;

    /// <summary>The layer of a line by its meaning.</summary>
    public static Layer LayerOf(LineUse use) => Of(use).Layer;

    /// <summary>What the legend of a sheet calls a line.</summary>
    public static string NameOf(LineUse use) => Of(use).Name;

    private static (LineStyle Style, Layer Layer, string Name) Of(LineUse use) => use switch
    {
        LineUse.Cut => (new(LineType.Continuous, 0.35), Layer.Cut, "cut line"),
        LineUse.Trim => (new(LineType.Continuous, 0.25), Layer.Score, "trim line"),
        LineUse.Score => (new(LineType.Continuous, 0.18), Layer.Score, "score line"),
        LineUse.Hidden => (new(LineType.Dashed, 0.18), Layer.Reference, "far face, hidden"),
        LineUse.Centre => (new(LineType.LongDashedDotted, 0.18), Layer.CentreAndDatum, "centre line"),
        LineUse.Datum => (new(LineType.LongDashedDotted, 0.25), Layer.CentreAndDatum, "datum line"),
        LineUse.Station => (new(LineType.Continuous, 0.13), Layer.Reference, "station, other part"),
        LineUse.Neighbour => (new(LineType.LongDashedDoubleDotted, 0.18), Layer.Reference, "neighbouring part"),
        LineUse.Edge => (new(LineType.Continuous, 0.35), Layer.Reference, "edge"),
        LineUse.Before => (new(LineType.LongDashedDoubleDotted, 0.25), Layer.Reference, "as it was"),
        LineUse.Difference => (new(LineType.Continuous, 0.13), Layer.Reference, "wood that differs"),
        _ => throw new ArgumentOutOfRangeException(nameof(use), use, "A line has one of the meanings of LineUse."),
    };
}
