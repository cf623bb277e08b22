using System.Collections.Immutable;

namespace PlanForge.Geometry;

/// <summary>Finds the points two paths share (see <see cref="Path2.IntersectionsWith"/>).</summary>
internal static class PathCrossings
{
    public static ImmutableArray<PathCrossing> Find(Path2 path, Path2 other, double tolerance)
    {
        var otherBounds = new Bounds2[other.SegmentCount];
        for (var j = 0; j < otherBounds.Length; j++)
        {
            otherBounds[j] = other.SegmentAt(j).Bounds;
        }

        var found = new List<PathCrossing>();
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var segment = path.SegmentAt(i);
            var bounds = segment.Bounds.Grown(tolerance);
            for (var j = 0; j < otherBounds.Length; j++)
            {
                if (bounds.Touches(otherBounds[j]))
                {
                    foreach (var point in SharedPoints(segment, other.SegmentAt(j), tolerance))
                    {
                        Add(found, At(path, i, other, j, point, tolerance), tolerance);
                    }
                }
            }
        }

        found.Sort((a, b) => (a.Segment + a.Fraction).CompareTo(b.Segment + b.Fraction));
        return [.. found];
    }

    /// <summary>The points two segments share, and the ends of one that lie on the other, each perhaps more than once.</summary>
    public static List<Point2> SharedPoints(in Segment2 a, in Segment2 b, double tolerance)
    {
        var points = new List<Point2>(2);
        AddIfOn(points, a.Start, b, tolerance);
        AddIfOn(points, a.End, b, tolerance);
        AddIfOn(points, b.Start, a, tolerance);
        AddIfOn(points, b.End, a, tolerance);
        var count = Carrier.Meet(Carrier.Of(a), Carrier.Of(b), tolerance, out var first, out var second);
        if (count > 0 && a.DistanceTo(first) <= tolerance)
        {
            AddIfOn(points, first, b, tolerance);
        }

        if (count > 1 && a.DistanceTo(second) <= tolerance)
        {
            AddIfOn(points, second, b, tolerance);
        }

        return points;
    }

    private static void AddIfOn(List<Point2> points, Point2 point, in Segment2 segment, double tolerance)
    {
        if (segment.DistanceTo(point) <= tolerance)
        {
            points.Add(point);
        }
    }

    private static PathCrossing At(Path2 path, int i, Path2 other, int j, Point2 point, double tolerance)
    {
        var (segment, fraction) = Place(path, i, point, tolerance);
        var (otherSegment, otherFraction) = Place(other, j, point, tolerance);
        return new(point, segment, fraction, otherSegment, otherFraction);
    }

    // The end of a segment is the start of the next one, where there is one.
    private static (int Segment, double Fraction) Place(Path2 path, int index, Point2 point, double tolerance)
    {
        var segment = path.SegmentAt(index);
        var hasNext = path.IsClosed || index + 1 < path.SegmentCount;
        return hasNext && point.DistanceTo(segment.End) <= tolerance
            ? ((index + 1) % path.SegmentCount, 0)
            : (index, segment.NearestFraction(point));
    }

    // The same point comes up again from the ends of neighbouring segments: its first finding stays.
    private static void Add(List<PathCrossing> found, PathCrossing crossing, double tolerance)
    {
        foreach (var known in found)
        {
            if (known.Segment == crossing.Segment
                && known.OtherSegment == crossing.OtherSegment
                && known.Point.DistanceTo(crossing.Point) <= 2 * tolerance)
            {
                return;
            }
        }

        found.Add(crossing);
    }
}
