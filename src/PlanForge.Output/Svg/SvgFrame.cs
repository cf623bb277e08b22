using PlanForge.Geometry;

namespace PlanForge.Output.Svg;

/// <summary>From a drawing's coordinates, y up, to a picture's, y down. Lengths stay as they are.</summary>
/// <param name="Left">The drawing's x that becomes 0.</param>
/// <param name="Top">The drawing's y that becomes 0.</param>
internal readonly record struct SvgFrame(double Left, double Top)
{
    /// <summary>Where a point goes.</summary>
    public Point2 Apply(Point2 point) => new(point.X - Left, Top - point.Y);

    /// <summary>The bulge of a segment there: left and right have changed places.</summary>
    public static double Apply(double bulge) => -bulge;
}
