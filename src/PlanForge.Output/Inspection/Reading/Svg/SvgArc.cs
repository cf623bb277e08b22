using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>From the ends of an elliptical arc to its centre (SVG 1.1, appendix F.6; from memory).</summary>
internal static class SvgArc
{
    /// <summary>Adds the arc of a path command; a line where a radius is 0, nothing where the ends are the same.</summary>
    public static void Add(SvgOutline outline, Point2 start, Point2 end, Vector2 radii, double degrees, bool isLarge, bool isPositive, TextPlace at)
    {
        var (rx, ry) = (Math.Abs(radii.X), Math.Abs(radii.Y));
        if (start == end || rx == 0 || ry == 0)
        {
            outline.AddLine(start, end, at);
            return;
        }

        var axis = degrees % 360 * Math.PI / 180;
        var half = ((start - end) / 2).Turned(-axis);
        var ratio = (half.X * half.X / (rx * rx)) + (half.Y * half.Y / (ry * ry));

        // Radii that are too small to reach both ends grow until they do.
        if (ratio > 1)
        {
            (rx, ry) = (rx * Math.Sqrt(ratio), ry * Math.Sqrt(ratio));
            ratio = 1;
        }

        // In the frame in which the ellipse is the unit circle the centre lies on the chord's perpendicular.
        var unit = new Vector2(half.X / rx, half.Y / ry);
        var side = (isLarge == isPositive ? -1 : 1) * Math.Sqrt(Math.Max(0, (1 / Math.Max(ratio, double.Epsilon)) - 1));
        var toCentre = new Vector2(unit.Y, -unit.X) * side;
        if (!double.IsFinite(toCentre.X) || !double.IsFinite(toCentre.Y))
        {
            outline.AddLine(start, end, at);
            return;
        }

        var from = (unit - toCentre).Angle;
        var sweep = (-unit - toCentre).Angle - from;
        sweep += isPositive && sweep < 0 ? 2 * Math.PI : !isPositive && sweep > 0 ? -2 * Math.PI : 0;
        var centre = start.Towards(end, 0.5) + new Vector2(toCentre.X * rx, toCentre.Y * ry).Turned(axis);
        outline.AddArc(centre, new(rx, ry), axis, from, sweep, (start, end), at);
    }
}
