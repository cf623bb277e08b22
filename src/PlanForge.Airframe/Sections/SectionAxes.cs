using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>
/// The chord line in a coordinate file's own axes, and the way from there to chords: leading edge at (0, 0), middle of the
/// trailing edge at (1, 0).
/// </summary>
/// <remarks>
/// Axes that pass for a chord line are left as their author drew them. Where they do not (a leading edge above a flat datum, a
/// section cut out of a drawing), proportions and angles stay, and points that lie on a line still do.
/// </remarks>
internal readonly record struct SectionAxes
{
    // In chords: how far the origin may lie off the outline, and the trailing edge off the x axis, for the file's axes to stand.
    // Less would turn good files that do not list their leading edge; at 0.002 the chord would be 0.1 degree out.
    private const double Tolerance = 0.002;

    // Points on either side of the foremost one that a curve round the nose needs.
    private const int NeighbourCount = 3;

    // Places on that curve: fine enough for the tolerance, however sparse the points.
    private const int CurveSampleCount = 200;

    private readonly Point2 _leadingEdge;
    private readonly Vector2 _chord;

    private SectionAxes(Point2 leadingEdge, Vector2 chord, Diagnostic? finding)
    {
        _leadingEdge = leadingEdge;
        _chord = chord;
        Finding = finding;
    }

    /// <summary>A warning when the section had to be moved or turned.</summary>
    public Diagnostic? Finding { get; }

    /// <summary>The axes of an outline, or null when it has no chord.</summary>
    /// <param name="outline">From the lower trailing edge to the upper.</param>
    public static SectionAxes? Of(List<ListedPoint> outline)
    {
        var trailingEdge = outline[0].Point.Towards(outline[^1].Point, 0.5);
        var chord = trailingEdge.X;
        if (chord > 0 && Math.Abs(trailingEdge.Y) <= Tolerance * chord && PassesOrigin(outline, chord))
        {
            return new(default, new(chord, 0), null);
        }

        var leading = outline[0];
        foreach (var row in outline)
        {
            leading = trailingEdge.DistanceTo(row.Point) > trailingEdge.DistanceTo(leading.Point) ? row : leading;
        }

        var line = trailingEdge - leading.Point;
        return line.X > 0 ? new(leading.Point, line, Moved(leading, trailingEdge, line)) : null;
    }

    /// <summary>The points of the file in chords.</summary>
    public Point2[] InChords(List<ListedPoint> outline)
    {
        var points = new Point2[outline.Count];
        for (var i = 0; i < points.Length; i++)
        {
            var from = outline[i].Point - _leadingEdge;

            // Kept apart so that points in straight axes are divided and no more: 100 in percent is then exactly 1.
            points[i] = _chord.Y == 0
                ? new(from.X / _chord.X, from.Y / _chord.X)
                : new(from.Dot(_chord) / _chord.LengthSquared, _chord.Cross(from) / _chord.LengthSquared);
        }

        return points;
    }

    // Where the points are sparse their polygon cuts the nose short: then the curve through the foremost of them tells.
    private static bool PassesOrigin(List<ListedPoint> outline, double chord)
    {
        var points = new SectionAxes(default, new(chord, 0), null).InChords(outline);
        var foremost = OutlineCheck.Foremost(points);
        if (DistanceFromOrigin(points) <= Tolerance)
        {
            return true;
        }

        var near = Math.Max(foremost - NeighbourCount, 0)..Math.Min(foremost + NeighbourCount + 1, points.Length);
        return near.End.Value - near.Start.Value == (2 * NeighbourCount) + 1
            && OutlineCheck.RunsAft(points, foremost, NeighbourCount)
            && DistanceFromOrigin(OutlineFit.Through(points.AsSpan(near), NeighbourCount).Sampled(CurveSampleCount)) <= Tolerance;
    }

    private static double DistanceFromOrigin(Point2[] polygon)
    {
        var least = double.PositiveInfinity;
        for (var i = 1; i < polygon.Length; i++)
        {
            var from = polygon[i - 1];
            var along = polygon[i] - from;
            var fraction = Math.Clamp((Point2.Origin - from).Dot(along) / along.LengthSquared, 0, 1);
            least = Math.Min(least, from.Towards(polygon[i], fraction).DistanceTo(Point2.Origin));
        }

        return least;
    }

    private static Diagnostic Moved(ListedPoint leading, Point2 trailingEdge, Vector2 line)
    {
        var degrees = line.Angle * 180 / Math.PI;
        var turn = Math.Abs(degrees) < 0.005
            ? "moved"
            : FormattableString.Invariant($"moved and turned nose {(degrees < 0 ? "down" : "up")} by {Math.Abs(degrees):F2} deg");
        return Diagnostic.Warning(
            leading.At,
            $"the chord does not lie on the x axis of this file: it runs from this leading edge, {leading.Text}, "
            + $"to the trailing edge at {ListedPoint.Written(trailingEdge)}; the section is {turn} so that it does");
    }
}
