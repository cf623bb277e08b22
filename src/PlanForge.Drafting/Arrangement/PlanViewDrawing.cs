using PlanForge.Airframe;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Drafting.Arrangement;

/// <summary>The plan view with the panels' breadths, the tip chord, the mean chord and the tailplane's span.</summary>
internal static class PlanViewDrawing
{
    private const double Clear = 7;

    /// <summary>Draws the view; a terse one leaves the mean chord's size to the table of key figures.</summary>
    public static Sketch Draw(ArrangementViews views, double scale, DisplayUnit unit, bool isTerse)
    {
        var view = new ViewSketch(views.Plan, scale, unit);
        AddPanels(views.Wing, view);
        var (leading, trailing) = views.Wing.Tip;
        var tipRow = (-leading.Y * scale) - Clear;
        view.Draw(view.Level(view.At(leading.X, -leading.Y), view.At(trailing.X, -trailing.Y), tipRow, views.Wing.TipChord, "tip chord"));
        if (views.Tailplane is { } tail)
        {
            var (x, half) = (tail.Tip.Trailing.X, tail.Across[^1]);
            view.Draw(view.Upright(view.At(x, -half), view.At(x, half), view.LineBounds.MaxX + Clear, 2 * half, "span"));
        }

        if (!isTerse)
        {
            AddMeanChord(views.Wing, view);
        }

        return view.Sketch;
    }

    private static void AddMeanChord(ArrangedWing wing, ViewSketch view)
    {
        var (mean, quarter) = (wing.MeanLeading, wing.MeanQuarter);
        var rear = view.At(mean.X + (4 * (quarter.X - mean.X)), -mean.Y);
        var text = $"mean chord {Measure.Length(wing.MeanChord, view.Unit)}, {Measure.Length(mean.Y, view.Unit)} from ℄";
        view.NearBy(text, rear + new Vector2(30, -4), rear);
    }

    // From the centre line outboard along the starboard half, ahead of everything.
    private static void AddPanels(ArrangedWing wing, ViewSketch view)
    {
        var rows = new DimensionRows(view, view.LineBounds.MinX - Clear, -view.RowPitch, isUpright: true);
        for (var i = wing.Joints.Length - 1; i > 0; i--)
        {
            double from = wing.Across[i - 1], to = wing.Across[i];
            Point2 inner = view.At(wing.Joints[i - 1].Leading.X, from), outer = view.At(wing.Joints[i].Leading.X, to);
            rows.Add(at => view.Upright(inner, outer, at, to - from));
        }
    }
}
