namespace PlanForge.Airframe.Sections;

/// <summary>The numbers of points in the two lists of a coordinate file, as its first pair of numbers.</summary>
internal readonly record struct SectionCounts(int First, int Second)
{
    /// <summary>How many points the lists hold together.</summary>
    public int Sum => First + Second;

    /// <summary>The counts, or null when the first pair is a point.</summary>
    /// <remarks>
    /// Counts are whole numbers over 1. So may be a first point in percent, (100, 2) at a thick trailing edge: it is one when the
    /// other points reach as far aft, unless the numbers agree with the lines that follow.
    /// </remarks>
    public static SectionCounts? Of(List<ListedPoint> rows)
    {
        var (x, y) = (rows[0].Point.X, rows[0].Point.Y);
        if (!(x > 1 && y > 1 && x == Math.Floor(x) && y == Math.Floor(y)))
        {
            return null;
        }

        var farthest = 0.0;
        for (var i = 1; i < rows.Count; i++)
        {
            farthest = Math.Max(farthest, rows[i].Point.X);
        }

        return x + y == rows.Count - 1 || farthest < 0.9 * x || farthest > 1.1 * x ? new((int)x, (int)y) : null;
    }
}
