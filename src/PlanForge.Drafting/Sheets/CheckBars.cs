using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>The bars that show whether a sheet was printed at true size: 100 mm level and upright, 4 in level.</summary>
/// <remarks>Scaling and the two axes of a printer err separately (shared/practice.md), hence one bar along each.</remarks>
internal static class CheckBars
{
    public const double PanelWidth = 118;
    public const double PanelHeight = 24;
    public const double ColumnWidth = 9;
    public const double ColumnHeight = 120;

    /// <summary>Length of the metric bars, mm.</summary>
    public const double MetricLength = 100;

    /// <summary>Length of the inch bar, mm.</summary>
    public const double InchLength = 4 * Measure.Inch;

    private const string Instruction = "Print at 100 %: the bars must measure 100 mm";
    private const double Tick = 3;
    private const double HalfTick = 2;
    private const double BandWidth = 1;
    private const double LabelGap = 1.5;
    private const double Indent = 3;

    /// <summary>Draws the level bars and the instruction.</summary>
    /// <param name="sketch">Where they are drawn.</param>
    /// <param name="panel">The room for them.</param>
    public static void DrawPanel(Sketch sketch, Bounds2 panel)
    {
        var left = panel.MinX + Indent;
        Draw(sketch, new(left, panel.MinY + 12.5), new(1, 0), MetricLength, 10, 2, "100 mm");
        Draw(sketch, new(left, panel.MinY + 4.5), new(1, 0), InchLength, 8, 2, "4 in");
        sketch.Text(Layer.Frame, Instruction, new(left, panel.MinY + 19), LetteringSizes.Least);
    }

    /// <summary>Draws the upright bar.</summary>
    /// <param name="sketch">Where it is drawn.</param>
    /// <param name="column">The room for it.</param>
    public static void DrawColumn(Sketch sketch, Bounds2 column) =>
        Draw(sketch, new(column.MinX + 6, column.MinY + 3), new(0, 1), MetricLength, 10, 5, "100 mm");

    /// <summary>Draws a bar with its ticks on the left of its direction and its length behind its end.</summary>
    /// <param name="sketch">Where it is drawn.</param>
    /// <param name="start">Where it starts.</param>
    /// <param name="along">Unit direction.</param>
    /// <param name="length">Its length, mm.</param>
    /// <param name="parts">How many parts it is divided into.</param>
    /// <param name="longEvery">Every how many parts a tick is long.</param>
    /// <param name="label">Its length in words.</param>
    public static void Draw(Sketch sketch, Point2 start, Vector2 along, double length, int parts, int longEvery, string label)
    {
        var end = start + (along * length);
        sketch.Line(Layer.Frame, start, end, LineConventions.Thin);
        for (var i = 0; i <= parts; i++)
        {
            var at = start + (along * (length * i / parts));
            var tick = i % longEvery == 0 ? Tick : HalfTick;
            sketch.Line(Layer.Frame, at, at + (along.Left * tick), LineConventions.Thin);
            if (i % 2 == 0 && i < parts)
            {
                var next = start + (along * (length * (i + 1) / parts));
                var lift = along.Left * BandWidth;
                sketch.Fill(Layer.Frame, Path2.Polygon(at, next, next + lift, at + lift));
            }
        }

        sketch.Text(Layer.Frame, label, end + (along * LabelGap), LetteringSizes.Least, along.Angle);
    }
}
