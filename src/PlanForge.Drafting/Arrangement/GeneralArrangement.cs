using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Arrangement;

namespace PlanForge.Drafting.Arrangement;

/// <summary>The general arrangement as drawn.</summary>
/// <param name="Items">What is drawn, in sheet coordinates.</param>
/// <param name="Bounds">The smallest upright rectangle around it.</param>
/// <param name="Scale">Drawn length over true length.</param>
/// <param name="ScaleName">The scale as a drawing names it: <c>1:10</c>.</param>
/// <param name="Views">Side, plan and front view with the room each takes.</param>
public sealed record GeneralArrangementDrawing(
    ImmutableArray<DrawingItem> Items, Bounds2 Bounds, double Scale, string ScaleName, ImmutableArray<ScaledView> Views);

/// <summary>Draws the airframe in three views with its main dimensions and the table of key figures.</summary>
public static class GeneralArrangement
{
    /// <summary>The reductions of ISO 5455 (from memory) that are used: one over these.</summary>
    public static ImmutableArray<int> Reductions { get; } = [1, 2, 5, 10, 20, 50, 100];

    /// <summary>Draws the arrangement at the largest standard scale at which everything fits.</summary>
    /// <param name="views">The three views at true size.</param>
    /// <param name="figures">The key figures, in the order of the table.</param>
    /// <param name="space">The free space of the sheet, mm.</param>
    /// <param name="projection">How the views stand to each other.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    /// <returns>The drawing in the middle of the space; null where even 1:100 does not fit.</returns>
    public static GeneralArrangementDrawing? Draw(
        ArrangementViews views, ImmutableArray<Figure> figures, Bounds2 space, ProjectionAngle projection, DisplayUnit unit)
    {
        ArgumentNullException.ThrowIfNull(views);
        var table = new FigureTable(figures, unit);
        foreach (var reduction in Reductions)
        {
            var scale = 1.0 / reduction;
            if (!MayFit(views, scale, space))
            {
                continue;
            }

            var name = FormattableString.Invariant($"1:{reduction}");
            var angle = projection == ProjectionAngle.First ? "first" : "third";
            var notes = new NoteLines($"Scale {name}, {angle} angle projection; in the side view wing and tailplane are cut at the centre line.");
            var front = FrontViewDrawing.Draw(views, scale, unit);
            foreach (var isTerse in (ReadOnlySpan<bool>)[false, true])
            {
                var placing = new ViewPlacing(
                    SideViewDrawing.Draw(views, scale, unit, isTerse), PlanViewDrawing.Draw(views, scale, unit, isTerse), front, projection);
                if (placing.With(table, notes, space) is { } whole)
                {
                    return new(whole.Sketch.Items, whole.Sketch.Bounds, scale, name, whole.ScaledViews(scale));
                }
            }
        }

        return null;
    }

    // The bare views side by side: what is too large without any text need not be drawn.
    private static bool MayFit(ArrangementViews views, double scale, Bounds2 space)
    {
        var span = 2 * views.Wing.Tip.Leading.Y;
        return (views.Overall.Length + span) * scale <= space.Width && span * scale <= space.Height;
    }
}
