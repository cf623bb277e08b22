namespace PlanForge.Geometry.Regions;

/// <summary>How often contours run around a point.</summary>
internal static class Winding
{
    /// <summary>The turns of a closed path around a point, anticlockwise positive; on the path itself either neighbouring value.</summary>
    public static int Around(Path2 contour, Point2 point)
    {
        var turns = 0;
        for (var i = 0; i < contour.SegmentCount; i++)
        {
            turns += Crossing(contour.SegmentAt(i), point);
        }

        return turns;
    }

    // A closed path turns around a point as its chords do, and once more for each arc whose cap (between arc and chord)
    // holds the point. The chord's share is how it crosses the ray from the point towards +x; which side of the chord counts
    // for a point exactly on it must be the same for both shares, or they would count it twice or never.
    private static int Crossing(in Segment2 segment, Point2 point)
    {
        var (a, b) = (segment.Start, segment.End);
        var cross = (b - a).Cross(point - a);
        var onLineIsLeft = a.Y > b.Y || (a.Y == b.Y && b.X > a.X);
        var isLeft = onLineIsLeft ? cross >= 0 : cross > 0;
        var turns = a.Y <= point.Y
            ? b.Y > point.Y && isLeft ? 1 : 0
            : b.Y <= point.Y && !isLeft ? -1 : 0;
        if (segment.Bulge > 0 && !isLeft && Carrier.Of(segment).Value(point) > 0)
        {
            return turns + 1;
        }

        return segment.Bulge < 0 && isLeft && Carrier.Of(segment).Value(point) < 0 ? turns - 1 : turns;
    }
}
