using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Dowels;

/// <summary>What is said of dowel holes, on the wing's template and on the former alike.</summary>
internal static class DowelTexts
{
    /// <summary>The holes' number, diameter and drill: <c>2 × ⌀8.1, drill 8.1 mm</c>.</summary>
    public static string Hole(DowelAxis axis, MeasureText text)
    {
        var diameter = axis.Dowels.Diameter + axis.Dowels.Fit;
        var drill = Drill.Nearest(diameter, text.Unit);
        var count = axis.Across > 0 ? "2 × " : "";
        return $"{count}{text.Diameter(diameter)}, {(drill.Fits(diameter) ? "drill" : "nearest drill")} {drill.Name}";
    }

    /// <summary>Dowel and fit, for a note: <c>8 mm dowel, 0.1 mm fit</c>.</summary>
    public static string Fit(DowelAxis axis, MeasureText text) =>
        $"{text.SizeWithUnit(axis.Dowels.Diameter)} dowel, {text.SizeWithUnit(axis.Dowels.Fit)} fit";
}
