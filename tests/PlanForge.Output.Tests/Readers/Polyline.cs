using PlanForge.Geometry;

namespace PlanForge.Output.Tests.Readers;

/// <summary>A contour read back from a file, as points so close that chords stray less than a fifth of a thousandth of a millimetre.</summary>
internal sealed record Polyline(IReadOnlyList<Point2> Points, bool IsClosed)
{
    /// <summary>Farthest that a chord may stray from its arc, mm.</summary>
    public const double Sagitta = 2e-4;

    /// <summary>A path of a drawing, without anything a writer might use.</summary>
    public static Polyline Of(Path2 path)
    {
        var points = new List<Point2> { path.Start };
        foreach (var segment in path.Segments)
        {
            // Arcs flatter than this are lines here, because their centre is too far away to compute with.
            var sagitta = Math.Abs(segment.Bulge) * (segment.End - segment.Start).Length / 2;
            points.AddRange(sagitta < 1e-5
                ? [segment.End]
                : OnArc(segment.Centre, segment.Radius, (segment.Start - segment.Centre).Angle, segment.Sweep));
        }

        return new(points, path.IsClosed);
    }

    /// <summary>Points after the first on an arc of a circle, by its angles.</summary>
    public static IEnumerable<Point2> OnArc(Point2 centre, double radius, double from, double sweep)
    {
        // r (1 − cos(a/2)) = 2 r sin²(a/4), which does not cancel on large radii.
        var step = 4 * Math.Asin(Math.Min(1, Math.Sqrt(Sagitta / (2 * radius))));
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / step));
        for (var i = 1; i <= count; i++)
        {
            yield return centre + (Vector2.FromAngle(from + (sweep * i / count)) * radius);
        }
    }

    /// <summary>
    /// The greatest distance of points of one from the other, both ways (Hausdorff distance, within the sagitta and for some
    /// forty points spread over each).
    /// </summary>
    public double DistanceTo(Polyline other) => Math.Max(OneWay(this, other), OneWay(other, this));

    private static double OneWay(Polyline from, Polyline to)
    {
        const int Probes = 40;
        var stride = Math.Max(1, from.Points.Count / Probes);
        var largest = to.DistanceTo(from.Points[^1]);
        for (var i = 0; i < from.Points.Count; i += stride)
        {
            largest = Math.Max(largest, to.DistanceTo(from.Points[i]));
        }

        return largest;
    }

    private double DistanceTo(Point2 point)
    {
        var least = double.PositiveInfinity;
        var count = IsClosed ? Points.Count : Points.Count - 1;
        for (var i = 0; i < count; i++)
        {
            var (a, b) = (Points[i], Points[(i + 1) % Points.Count]);
            var along = b - a;
            var t = along.LengthSquared == 0 ? 0 : Math.Clamp((point - a).Dot(along) / along.LengthSquared, 0, 1);
            least = Math.Min(least, point.DistanceTo(a + (along * t)));
        }

        return least;
    }
}
