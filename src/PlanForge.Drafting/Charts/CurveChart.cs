using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Charts;

/// <summary>
/// Curves over one quantity, each in a small panel with axes of its own, since their units differ. Axes begin and end at round numbers,
/// which stand beside them: a vertical axis need not begin at nought.
/// </summary>
public static class CurveChart
{
    private const int Columns = 3;
    private const double Margin = 8;
    private const double PanelWidth = 88;
    private const double PlotHeight = 38;
    private const double Left = 16;
    private const double Right = 4;
    private const double Letters = LetteringSizes.Least;
    private const double TitleHeight = 5;
    private const double TickLength = 1.2;
    private const double DotRadius = 0.6;
    private const double Gap = 6;

    // Clear of the uppermost figure, which stands half above the plot.
    private const double TitleLift = 3.5;

    private static readonly LineStyle Axis = LineConventions.Thin;
    private static readonly LineStyle Curve = new(LineType.Continuous, 0.5);

    /// <summary>Draws a chart on a sheet as large as it needs to be.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="across">What the curves run over, with its unit.</param>
    /// <param name="curves">The curves; at least one, with at least two known points in all.</param>
    public static Sheet Draw(string title, string across, ImmutableArray<ChartCurve> curves)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(across);
        var columns = Math.Min(Columns, curves.Length);
        var panels = curves.Select(curve => Panel(curve, across)).ToList();
        var sketch = new Sketch();
        var width = (2 * Margin) + (columns * PanelWidth);
        var lines = TextWrap.Lines(title, width - (2 * Margin), TitleHeight).ToList();
        var rows = panels.Chunk(columns).Select(row => row.Max(panel => panel.Bounds.Height)).ToList();
        var height = (2 * Margin) + (lines.Count * TitleHeight * 1.8) + rows.Sum(row => row + Gap);
        var y = height - Margin;
        foreach (var line in lines)
        {
            y -= TitleHeight * 1.8;
            sketch.Text(Layer.Notes, line, new(Margin, y + (TitleHeight * 0.8)), TitleHeight);
        }

        for (var i = 0; i < panels.Count; i++)
        {
            sketch.Add(panels[i], new(Margin + (i % columns * PanelWidth), y - panels[i].Bounds.MaxY));
            y -= i % columns == columns - 1 ? rows[i / columns] + Gap : 0;
        }

        return new(1, title, width, height, new(sketch.Items), []);
    }

    /// <summary>A panel: the lower left corner of its plot stands right of the figures beside it.</summary>
    private static Sketch Panel(ChartCurve curve, string across)
    {
        var known = curve.Points.Where(point => point.Y is not null).Select(point => point.Y!.Value).ToList();
        var levels = RoundTicks.Over(known.Min(), known.Max(), 6);
        var places = RoundTicks.Over(curve.Points[0].X, curve.Points[^1].X, 8);
        var sketch = new Sketch();
        var plot = new Bounds2(Left, 0, PanelWidth - Right, PlotHeight);
        double X(double value) => plot.MinX + (plot.Width * Fraction(places, value));
        double Y(double value) => plot.MinY + (plot.Height * Fraction(levels, value));
        sketch.Stroke(Layer.Reference, Path2.Rectangle(plot), Axis);
        foreach (var level in levels.Values)
        {
            var text = levels.Text(level);
            sketch.Line(Layer.Reference, new(plot.MinX - TickLength, Y(level)), new(plot.MinX, Y(level)), Axis);
            sketch.Text(
                Layer.Notes, text, new(plot.MinX - TickLength - 1 - StrokeAlphabet.WidthOf(text, Letters), Y(level) - (Letters / 2)), Letters);
        }

        foreach (var place in places.Values)
        {
            var text = places.Text(place);
            sketch.Line(Layer.Reference, new(X(place), plot.MinY), new(X(place), plot.MinY - TickLength), Axis);
            sketch.Text(
                Layer.Notes, text, new(X(place) - (StrokeAlphabet.WidthOf(text, Letters) / 2), plot.MinY - TickLength - 1 - Letters), Letters);
        }

        var below = plot.MinY - TickLength - 1 - (2.8 * Letters);
        sketch.Text(Layer.Notes, across, new(plot.Centre.X - (StrokeAlphabet.WidthOf(across, Letters) / 2), below), Letters);
        DrawTitle(sketch, curve.Unit.Length > 0 ? $"{curve.Title} ({curve.Unit})" : curve.Title, plot.MaxY);
        DrawCurve(sketch, curve, point => new(X(point.X), Y(point.Y!.Value)));
        return sketch;
    }

    private static double Fraction(RoundTicks ticks, double value) => (value - ticks.Values[0]) / (ticks.Values[^1] - ticks.Values[0]);

    private static void DrawTitle(Sketch sketch, string title, double top)
    {
        var y = top + TitleLift;
        foreach (var line in TextWrap.Lines(title, PanelWidth - Right, Letters).Reverse())
        {
            sketch.Text(Layer.Notes, line, new(0, y), Letters);
            y += LetteringSizes.PitchOf(line, Letters);
        }
    }

    private static void DrawCurve(Sketch sketch, ChartCurve curve, Func<(double X, double? Y), Point2> place)
    {
        Point2? before = null;
        foreach (var point in curve.Points)
        {
            if (point.Y is null)
            {
                before = null;
                continue;
            }

            var at = place(point);
            if (before is { } start)
            {
                sketch.Line(Layer.Cut, start, at, Curve);
            }

            sketch.Fill(Layer.Cut, Path2.Circle(at, DotRadius));
            before = at;
        }
    }
}
