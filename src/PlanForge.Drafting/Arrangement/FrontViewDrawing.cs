using PlanForge.Airframe;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Drafting.Arrangement;

/// <summary>The front view with span, dihedral and the height of the tips.</summary>
internal static class FrontViewDrawing
{
    private const double Clear = 7;

    public static Sketch Draw(ArrangementViews views, double scale, DisplayUnit unit)
    {
        var view = new ViewSketch(views.Front, scale, unit);
        var tip = views.Wing.Tip.Leading;
        var half = views.Wing.Across[^1];
        var row = view.LineBounds.MinY - Clear;
        view.Draw(view.Level(view.At(-half, tip.Z), view.At(half, tip.Z), row, 2 * half, "span"));
        Point2 foot = new(view.LineBounds.MaxX, 0), end = view.At(half, tip.Z);
        var (low, high) = tip.Z >= 0 ? (foot, end) : (end, foot);
        view.Draw(view.Upright(low, high, view.LineBounds.MaxX + Clear, Math.Abs(tip.Z), "tip"));
        AddDihedral(views.Wing, view);
        return view.Sketch;
    }

    // Above the port half, which lies on the right: over the middle of each panel that rises.
    private static void AddDihedral(ArrangedWing wing, ViewSketch view)
    {
        const double Air = 1.5;
        for (var i = 0; i < wing.Dihedrals.Length; i++)
        {
            if (wing.Dihedrals[i] == 0)
            {
                continue;
            }

            var text = Measure.Angle(wing.Dihedrals[i]);
            var width = StrokeAlphabet.WidthOf(text, ViewSketch.TextHeight);
            var middle = (wing.Across[i] + wing.Across[i + 1]) / 2 * view.Scale;
            double left = view.TopAt(middle - (width / 2)) ?? 0, right = view.TopAt(middle + (width / 2)) ?? 0;
            view.Sketch.Text(Layer.Notes, text, new(middle - (width / 2), Math.Max(left, right) + Air), ViewSketch.TextHeight);
        }
    }
}
