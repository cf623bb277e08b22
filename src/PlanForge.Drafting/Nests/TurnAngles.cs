using PlanForge.Geometry;

namespace PlanForge.Drafting.Nests;

/// <summary>The angles a part may be turned by on a sheet.</summary>
internal static class TurnAngles
{
    private const double Quarter = Math.PI / 2;

    // Turned by less from a quarter, a part fits no better than turned by the quarter.
    private const double Least = 0.01;

    // Of a box that is smaller by less than this share, the plain quarters do as well.
    private const double Worthwhile = 0.98;

    /// <summary>
    /// With a grain: the two turns that lay it along the sheet. Else the quarters, and those that lay the part's smallest
    /// upright box level, where that is clearly smaller than its box in the quarters.
    /// </summary>
    /// <param name="grain">The grain's direction in the part's coordinates, radians, or null when the part may lie anyhow.</param>
    /// <param name="chords">The part's contours.</param>
    public static double[] Of(double? grain, Chord[] chords)
    {
        if (grain is { } angle)
        {
            return [Half(-angle), Half(Math.PI - angle)];
        }

        return SmallestBox(chords) is { } turn
            ? [0, Quarter, 2 * Quarter, -Quarter, turn, turn + Quarter, turn + (2 * Quarter), turn - Quarter]
            : [0, Quarter, 2 * Quarter, -Quarter];
    }

    // Into (−π, π], so that placements read as one would write them.
    private static double Half(double angle) => Math.IEEERemainder(angle, 2 * Math.PI);

    // The smallest box has an edge of the convex hull on one of its sides (Freeman and Shapira 1975, from memory).
    private static double? SmallestBox(Chord[] chords)
    {
        var hull = ConvexHull.Of(chords);
        var plain = BoxArea(hull, 0);
        var (least, best) = (plain * Worthwhile, (double?)null);
        for (var i = 0; i < hull.Length; i++)
        {
            // Into [−45°, 45°]: the other quarters follow.
            var turn = Math.IEEERemainder(-(hull[(i + 1) % hull.Length] - hull[i]).Angle, Quarter);
            if (Math.Abs(turn) >= Least && BoxArea(hull, turn) is var area && area < least)
            {
                (least, best) = (area, turn);
            }
        }

        return best;
    }

    private static double BoxArea(Point2[] hull, double turn)
    {
        var along = Vector2.FromAngle(-turn);
        var across = along.Left;
        double left = double.MaxValue, right = double.MinValue, low = double.MaxValue, high = double.MinValue;
        foreach (var point in hull)
        {
            var (x, y) = ((point - Point2.Origin).Dot(along), (point - Point2.Origin).Dot(across));
            (left, right) = (Math.Min(left, x), Math.Max(right, x));
            (low, high) = (Math.Min(low, y), Math.Max(high, y));
        }

        return (right - left) * (high - low);
    }
}

/// <summary>The convex hull of contours.</summary>
internal static class ConvexHull
{
    /// <summary>Its corners, anticlockwise, by Andrew's monotone chain (1979, from memory).</summary>
    public static Point2[] Of(Chord[] chords)
    {
        var points = new Point2[chords.Length];
        for (var i = 0; i < points.Length; i++)
        {
            points[i] = chords[i].Start;
        }

        Array.Sort(points, static (a, b) => a.X != b.X ? a.X.CompareTo(b.X) : a.Y.CompareTo(b.Y));
        var hull = new List<Point2>(points.Length + 1);
        AddChain(hull, points);
        Array.Reverse(points);
        AddChain(hull, points);
        return [.. hull];
    }

    // One half of the hull, without its last corner, with which the other half begins.
    private static void AddChain(List<Point2> hull, Point2[] points)
    {
        var first = hull.Count;
        foreach (var point in points)
        {
            while (hull.Count >= first + 2 && (hull[^1] - hull[^2]).Cross(point - hull[^2]) <= 0)
            {
                hull.RemoveAt(hull.Count - 1);
            }

            hull.Add(point);
        }

        hull.RemoveAt(hull.Count - 1);
    }
}
