using PlanForge.Drafting.Dimensions.Placing;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Conventions;

/// <summary>The filled arrow head of dimensions and leaders: 15° between its flanks (ISO 129-1, from memory).</summary>
internal static class Arrowhead
{
    /// <summary>Length from tip to base, mm.</summary>
    public const double Length = 3;

    private const double HalfAngle = 7.5 * Math.PI / 180;

    private static readonly double HalfWidth = Length * Math.Tan(HalfAngle);

    /// <summary>Draws a head.</summary>
    /// <param name="sketch">Where it is drawn.</param>
    /// <param name="tip">Where it points at.</param>
    /// <param name="direction">Unit direction it points in.</param>
    public static void Draw(Sketch sketch, Point2 tip, Vector2 direction)
    {
        var foot = tip - (direction * Length);
        var half = direction.Left * HalfWidth;
        sketch.Fill(Layer.Dimensions, Path2.Closed([new(tip), new(foot + half), new(foot - half)]));
    }

    /// <summary>The room a head takes.</summary>
    public static TextBox BoxOf(Point2 tip, Vector2 direction) =>
        new(tip - (direction * Length) - (direction.Left * HalfWidth), direction, Length, 2 * HalfWidth);
}
