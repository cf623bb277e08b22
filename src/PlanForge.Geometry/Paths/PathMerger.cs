using System.Collections.Immutable;

namespace PlanForge.Geometry;

/// <summary>Joins neighbouring segments of a path into one where the carrier is the same (see <see cref="Path2.Merged"/>).</summary>
internal static class PathMerger
{
    // The bulge of an arc of 350°. More would leave ends so close together that the bulge no longer fixes the circle well.
    private const double GreatestBulge = 22.903765548431;

    // A chain of arcs whose sweeps add up to a full turn to within this, radians, may be a circle. Its points decide; this
    // only keeps a chain from counting that runs around twice or not at all.
    private const double GreatestSweepError = 1e-3;

    public static Path2 Merged(Path2 path, double tolerance)
    {
        if (path.AsCircle() is not null)
        {
            return path;
        }

        if (AsCircle(path, tolerance) is { } circle)
        {
            return circle;
        }

        var count = path.SegmentCount;
        var first = path.IsClosed ? FirstCorner(path, tolerance) : 0;
        var merged = ImmutableArray.CreateBuilder<PathVertex>(count + 1);
        for (var i = 0; i < count;)
        {
            var run = path.SegmentAt((first + i) % count);
            var length = 1;
            while (i + length < count && Joined(path, first + i, length, run, tolerance) is { } longer)
            {
                run = longer;
                length++;
            }

            merged.Add(new(run.Start, run.Bulge));
            i += length;
        }

        if (!path.IsClosed)
        {
            merged.Add(new(path.End));
        }

        return merged.Count == path.Vertices.Length || merged.Count < 2
            ? path
            : path.IsClosed ? Path2.Closed(merged) : Path2.Open(merged);
    }

    // A vertex of a closed path at which no run goes on, so that none is cut in two; any vertex when there is none.
    private static int FirstCorner(Path2 path, double tolerance)
    {
        var count = path.SegmentCount;
        for (var i = 0; i < count; i++)
        {
            var before = (i + count - 1) % count;
            if (Joined(path, before, 1, path.SegmentAt(before), tolerance) is null)
            {
                return i;
            }
        }

        return 0;
    }

    // The run from segment `first` over `length` segments, lengthened by the next, when everything it replaces lies on it.
    private static Segment2? Joined(Path2 path, int first, int length, in Segment2 run, double tolerance)
    {
        var count = path.SegmentCount;
        var next = path.SegmentAt((first + length) % count);
        if (Sum(run.Bulge, next.Bulge) is not { } bulge || run.DirectionAt(1).Dot(next.DirectionAt(0)) <= 0)
        {
            return null;
        }

        var joined = new Segment2(run.Start, next.End, bulge);
        if (joined.Start == joined.End)
        {
            return null;
        }

        var carrier = Carrier.Of(joined);
        for (var i = 0; i <= length; i++)
        {
            var replaced = path.SegmentAt((first + i) % count);
            if (Math.Abs(carrier.SignedDistance(replaced.PointAt(0.5))) > tolerance
                || (i > 0 && Math.Abs(carrier.SignedDistance(replaced.Start)) > tolerance))
            {
                return null;
            }
        }

        return joined;
    }

    // Bulges add like tangents of the quarter sweeps they are. Null when the arc would turn too far, or turns both ways.
    private static double? Sum(double a, double b)
    {
        if (a == 0 && b == 0)
        {
            return 0;
        }

        var divisor = 1 - (a * b);
        return divisor > 0 && Math.Abs(a + b) <= GreatestBulge * divisor && (a > 0 == b > 0 || a == 0 || b == 0)
            ? (a + b) / divisor
            : null;
    }

    private static Path2? AsCircle(Path2 path, double tolerance)
    {
        if (!path.IsClosed)
        {
            return null;
        }

        var longest = path.SegmentAt(0);
        var sweep = 0.0;
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var segment = path.SegmentAt(i);
            if (segment.IsLine)
            {
                return null;
            }

            sweep += segment.Sweep;
            longest = Math.Abs(segment.Sweep) > Math.Abs(longest.Sweep) ? segment : longest;
        }

        if (Math.Abs(Math.Abs(sweep) - (2 * Math.PI)) > GreatestSweepError)
        {
            return null;
        }

        var (centre, radius) = (longest.Centre, longest.Radius);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var segment = path.SegmentAt(i);
            if (Math.Abs(segment.Start.DistanceTo(centre) - radius) > tolerance
                || Math.Abs(segment.PointAt(0.5).DistanceTo(centre) - radius) > tolerance)
            {
                return null;
            }
        }

        var bulge = Math.Sign(sweep);
        return Path2.Closed([new(path.Start, bulge), new(path.Start.Towards(centre, 2), bulge)]);
    }
}
