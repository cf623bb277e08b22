using PlanForge.Geometry;

namespace PlanForge.Output.Tests.Curves;

/// <summary>Cubic Bézier curves by their definition.</summary>
internal static class Bezier
{
    /// <summary>The point at a parameter from 0 to 1.</summary>
    public static Point2 PointAt(Point2 start, Point2 first, Point2 second, Point2 end, double t)
    {
        var s = 1 - t;
        var (a, b, c, d) = (s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t);
        return new((a * start.X) + (b * first.X) + (c * second.X) + (d * end.X), (a * start.Y) + (b * first.Y) + (c * second.Y) + (d * end.Y));
    }
}
