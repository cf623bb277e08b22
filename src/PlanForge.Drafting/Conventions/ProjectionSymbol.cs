using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Conventions;

/// <summary>
/// The symbol of the projection method: a truncated cone from the side and from its small end (ISO 5456-2).
/// </summary>
/// <remarks>
/// Both circles are solid, so the small end faces the viewer: in first angle the end view stands right of the cone, whose small
/// end points left; in third angle it stands left (reasoned in shared/check-values.md section 5). Proportions are ours:
/// ends 2 : 1, the cone as long as its large end is wide.
/// </remarks>
internal static class ProjectionSymbol
{
    /// <summary>Width of the symbol with its centre lines, in diameters of the large end.</summary>
    public const double Width = 2.9;

    private const double Overrun = 0.2;

    /// <summary>Draws the symbol.</summary>
    /// <param name="sketch">Where it is drawn.</param>
    /// <param name="middle">Its middle.</param>
    /// <param name="diameter">Diameter of the large end, mm.</param>
    /// <param name="projection">The method.</param>
    public static void Draw(Sketch sketch, Point2 middle, double diameter, ProjectionAngle projection)
    {
        var radius = diameter / 2;
        var side = projection == ProjectionAngle.First ? 1 : -1;
        var rings = middle + new Vector2(side * 0.75 * diameter, 0);
        var cone = middle - new Vector2(side * 0.75 * diameter, 0);
        var left = cone - new Vector2(radius, 0);
        var right = cone + new Vector2(radius, 0);
        var edge = LineConventions.Field;
        sketch.Stroke(Layer.Frame, Path2.Circle(rings, radius), edge);
        sketch.Stroke(Layer.Frame, Path2.Circle(rings, radius / 2), edge);
        sketch.Stroke(
            Layer.Frame,
            Path2.Polygon(
                left + new Vector2(0, -radius / 2), right + new Vector2(0, -radius), right + new Vector2(0, radius), left + new Vector2(0, radius / 2)),
            edge);

        var axis = LineConventions.StyleOf(Parts.LineUse.Centre);
        var reach = radius + (Overrun * diameter);
        sketch.Line(Layer.Frame, cone - new Vector2(reach, 0), cone + new Vector2(reach, 0), axis);
        sketch.Line(Layer.Frame, rings - new Vector2(reach, 0), rings + new Vector2(reach, 0), axis);
        sketch.Line(Layer.Frame, rings - new Vector2(0, reach), rings + new Vector2(0, reach), axis);
    }
}
