namespace PlanForge.Geometry;

/// <summary>What two segments have to do with each other: where they cross, how near they come, how far they run along each other.</summary>
public static class SegmentPair
{
    /// <summary>The points two segments share, ends that lie on the other one among them; a point may come more than once.</summary>
    /// <param name="a">A segment of some length.</param>
    /// <param name="b">Another.</param>
    /// <param name="tolerance">Segments that pass each other within this distance touch, mm, over 0.</param>
    public static IReadOnlyList<Point2> SharedPoints(in Segment2 a, in Segment2 b, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        return PathCrossings.SharedPoints(a, b, tolerance);
    }

    /// <summary>The fractions of two segments at which they come nearest to each other, and that distance, mm; 0 need not be found where they cross.</summary>
    public static (double OnA, double OnB, double Distance) Nearest(in Segment2 a, in Segment2 b)
    {
        var best = (OnA: 0.0, OnB: 0.0, Distance: double.PositiveInfinity);
        TryFromB(a, b, b.Start, ref best);
        TryFromB(a, b, b.End, ref best);
        TryFromA(a, b, a.Start, ref best);
        TryFromA(a, b, a.End, ref best);

        // Between the ends the nearest places lie on a line through the centres, on either side of them.
        if (!b.IsLine)
        {
            TryFromB(a, b, b.Centre, ref best);
        }

        if (!a.IsLine)
        {
            TryFromA(a, b, a.Centre, ref best);
            if (!b.IsLine)
            {
                TryFromB(a, b, a.Centre + (a.Centre - b.Centre), ref best);
                TryFromA(a, b, b.Centre + (b.Centre - a.Centre), ref best);
            }
        }

        return best;
    }

    /// <summary>The part of one segment, as fractions of it, along which another lies within a tolerance; null when they share no stretch.</summary>
    /// <param name="a">A segment of some length.</param>
    /// <param name="b">Another.</param>
    /// <param name="tolerance">Greatest distance between the two along the stretch, mm, over 0.</param>
    public static (double From, double To)? Overlap(in Segment2 a, in Segment2 b, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        Span<double> on = stackalloc double[4];
        var count = 0;
        if (b.DistanceTo(a.Start) <= tolerance)
        {
            on[count++] = 0;
        }

        if (b.DistanceTo(a.End) <= tolerance)
        {
            on[count++] = 1;
        }

        foreach (var end in (ReadOnlySpan<Point2>)[b.Start, b.End])
        {
            var fraction = a.NearestFraction(end);
            if (a.PointAt(fraction).DistanceTo(end) <= tolerance)
            {
                on[count++] = fraction;
            }
        }

        on = on[..count];
        on.Sort();

        // Two arcs of one circle may share more than one stretch: the longest counts.
        var best = default((double From, double To)?);
        for (var i = 1; i < count; i++)
        {
            var (from, to) = (on[i - 1], on[i]);
            var isShared = to > from && IsOn(a, b, from + ((to - from) / 2), tolerance)
                && IsOn(a, b, from + ((to - from) / 4), tolerance) && IsOn(a, b, from + ((to - from) * 3 / 4), tolerance);
            if (isShared && (best is not var (low, high) || to - from > high - low))
            {
                best = (from, to);
            }
        }

        return best;
    }

    /// <summary>True when a point lies on the endless line or full circle that carries a segment.</summary>
    /// <param name="segment">A segment of some length.</param>
    /// <param name="point">The point.</param>
    /// <param name="tolerance">Greatest distance, mm.</param>
    public static bool IsOnCarrier(in Segment2 segment, Point2 point, double tolerance) =>
        Math.Abs(Carrier.Of(segment).SignedDistance(point)) <= tolerance;

    private static bool IsOn(in Segment2 a, in Segment2 b, double fraction, double tolerance) =>
        b.DistanceTo(a.PointAt(fraction)) <= tolerance;

    private static void TryFromB(in Segment2 a, in Segment2 b, Point2 point, ref (double OnA, double OnB, double Distance) best)
    {
        var onA = a.NearestFraction(point);
        var at = a.PointAt(onA);
        Keep(onA, b.NearestFraction(at), a, b, ref best);
    }

    private static void TryFromA(in Segment2 a, in Segment2 b, Point2 point, ref (double OnA, double OnB, double Distance) best)
    {
        var onB = b.NearestFraction(point);
        var at = b.PointAt(onB);
        Keep(a.NearestFraction(at), onB, a, b, ref best);
    }

    private static void Keep(double onA, double onB, in Segment2 a, in Segment2 b, ref (double OnA, double OnB, double Distance) best)
    {
        var distance = a.PointAt(onA).DistanceTo(b.PointAt(onB));
        if (distance < best.Distance)
        {
            best = (onA, onB, distance);
        }
    }
}
