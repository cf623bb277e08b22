using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Finds where two segments of cut contours leave too little between them.</summary>
internal static class NarrowPlace
{
    // Along one contour, places no farther apart than so many times the least width are a corner or a round end, no neck.
    private const double CornerLengths = 2.5;

    // Cosine from which a line that goes on leads nearer: then the narrowest place is not here.
    private const double Nearer = 0.05;

    // Under it the lines touch, mm, which is said elsewhere.
    private const double Touch = 0.001;

    private const double AtEnd = 1e-9;

    /// <summary>Calls with the place and the width where the segments come nearest, when that is a narrow place.</summary>
    public static void Find(Contour c, int i, Contour d, int j, double least, Action<Point2, double> found)
    {
        var (a, b) = (c.Segments[i], d.Segments[j]);
        var nearest = SegmentPair.Nearest(a.Segment, b.Segment);
        if (nearest.Distance >= least || nearest.Distance <= Touch)
        {
            return;
        }

        if (ReferenceEquals(c, d) && IsNearAlong(c, a, b, nearest.OnA, nearest.OnB, least))
        {
            // Two sides of a slot are nearest anywhere along them: they are judged by their middles.
            nearest = (0.5, b.Segment.NearestFraction(a.Segment.PointAt(0.5)), 0);
            var (p, q) = (a.Segment.PointAt(0.5), b.Segment.PointAt(nearest.OnB));
            nearest.Distance = p.DistanceTo(q);
            var across = (q - p) / nearest.Distance;
            if (!(nearest.Distance < least) || IsNearAlong(c, a, b, 0.5, nearest.OnB, least)
                || Math.Abs(across.Dot(a.Segment.DirectionAt(0.5))) > Nearer || Math.Abs(across.Dot(b.Segment.DirectionAt(nearest.OnB))) > Nearer)
            {
                return;
            }
        }

        var (from, to) = (a.Segment.PointAt(nearest.OnA), b.Segment.PointAt(nearest.OnB));
        var towards = (to - from) / nearest.Distance;
        if (!GoesNearer(c, i, nearest.OnA, towards) && !GoesNearer(d, j, nearest.OnB, -towards))
        {
            found(from.Towards(to, 0.5), nearest.Distance);
        }
    }

    private static bool IsNearAlong(Contour contour, in ContourSegment a, in ContourSegment b, double onA, double onB, double least) =>
        contour.Apart(a.From + (onA * a.Segment.Length), b.From + (onB * b.Segment.Length)) <= CornerLengths * least;

    // At the end of a segment the next one may lead nearer still; at a loose end there is a gap, which is said elsewhere.
    private static bool GoesNearer(Contour contour, int index, double fraction, Vector2 towards)
    {
        if (fraction > AtEnd && fraction < 1 - AtEnd)
        {
            return false;
        }

        var isStart = fraction <= AtEnd;
        return contour.Neighbour(index, isStart ? -1 : 1) is not { } next
            || (isStart ? -next.Segment.DirectionAt(1) : next.Segment.DirectionAt(0)).Dot(towards) > Nearer;
    }
}
