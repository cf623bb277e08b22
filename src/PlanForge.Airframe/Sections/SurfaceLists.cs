using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>Brings the rows of a coordinate file, in whatever order they stand, into one order: an outline.</summary>
internal static class SurfaceLists
{
    // A step in x of so much of the whole range leads from the end of one list to the start of the next: within a list it would
    // mean a surface of two or three points.
    private const double LeastJump = 0.8;

    // Neighbours closer than this part of the range are one point written twice.
    private const double Same = 1e-9;

    // A segment at an end of the outline that is steeper than this is the base of a blunt trailing edge, not part of a surface.
    private const double BaseSteepness = 4;

    /// <summary>
    /// The outline from the lower trailing edge by way of the nose to the upper trailing edge, or null with an error added.
    /// </summary>
    public static List<ListedPoint>? Outline(List<ListedPoint> rows, List<Diagnostic> findings)
    {
        var halves = Halves(rows, findings);
        if (halves is not { } found)
        {
            return null;
        }

        var (one, other) = (FromNose(found.One), FromNose(found.Other));
        var (upper, lower) = MeanHeight(one) >= MeanHeight(other) ? (one, other) : (other, one);
        lower.Reverse();
        lower.AddRange(upper);
        return WithoutBase(WithoutRepeats(lower));
    }

    private static (List<ListedPoint> One, List<ListedPoint> Other)? Halves(List<ListedPoint> rows, List<Diagnostic> findings)
    {
        if (SectionCounts.Of(rows) is { } counts)
        {
            var data = rows.GetRange(1, rows.Count - 1);
            if (counts.Sum != data.Count)
            {
                var asked = FormattableString.Invariant($"the counts {counts.First} and {counts.Second} ask for {counts.Sum} points");
                findings.Add(Diagnostic.Error(rows[0].At, FormattableString.Invariant($"{asked}, but {data.Count} follow")));
                return null;
            }

            return (data.GetRange(0, counts.First), data.GetRange(counts.First, counts.Second));
        }

        var (foremost, least, greatest) = Extent(rows);
        var jump = Jump(rows, LeastJump * (greatest - least));
        if (jump >= 2 && jump < rows.Count - 3)
        {
            return (rows.GetRange(0, jump + 1), rows.GetRange(jump + 1, rows.Count - jump - 1));
        }

        var middle = (least + greatest) / 2;
        if (rows[0].Point.X < middle || rows[^1].Point.X < middle)
        {
            findings.Add(Diagnostic.Error(
                rows[rows[0].Point.X < middle ? 0 : ^1].At,
                "a single list starts and ends at the trailing edge: this one does not; two lists need their counts on the first line"));
            return null;
        }

        return (rows.GetRange(0, foremost + 1), rows.GetRange(foremost, rows.Count - foremost));
    }

    private static (int Foremost, double Least, double Greatest) Extent(List<ListedPoint> rows)
    {
        var foremost = 0;
        var greatest = rows[0].Point.X;
        for (var i = 1; i < rows.Count; i++)
        {
            foremost = rows[i].Point.X < rows[foremost].Point.X ? i : foremost;
            greatest = Math.Max(greatest, rows[i].Point.X);
        }

        return (foremost, rows[foremost].Point.X, greatest);
    }

    // Index of the last row before the first jump, or −1.
    private static int Jump(List<ListedPoint> rows, double least)
    {
        for (var i = 0; i + 1 < rows.Count; i++)
        {
            if (Math.Abs(rows[i + 1].Point.X - rows[i].Point.X) > least)
            {
                return i;
            }
        }

        return -1;
    }

    private static List<ListedPoint> FromNose(List<ListedPoint> half)
    {
        if (half[0].Point.X > half[^1].Point.X)
        {
            half.Reverse();
        }

        return half;
    }

    // Mean of y over x by the trapezium rule.
    private static double MeanHeight(List<ListedPoint> half)
    {
        double sum = 0, length = 0;
        for (var i = 1; i < half.Count; i++)
        {
            Point2 a = half[i - 1].Point, b = half[i].Point;
            sum += (b.X - a.X) * (a.Y + b.Y) / 2;
            length += b.X - a.X;
        }

        return length == 0 ? 0 : sum / length;
    }

    private static List<ListedPoint> WithoutRepeats(List<ListedPoint> outline)
    {
        var (_, least, greatest) = Extent(outline);
        var kept = new List<ListedPoint>(outline.Count);
        foreach (var row in outline)
        {
            if (kept.Count == 0 || kept[^1].Point.DistanceTo(row.Point) > Same * (greatest - least))
            {
                kept.Add(row);
            }
        }

        return kept;
    }

    // Some files close an open trailing edge with points on its base, or by repeating the first point at the end.
    private static List<ListedPoint> WithoutBase(List<ListedPoint> outline)
    {
        var first = 0;
        while (outline.Count - first > 2 && IsSteep(outline[first].Point, outline[first + 1].Point))
        {
            first++;
        }

        var last = outline.Count - 1;
        while (last - first > 2 && IsSteep(outline[last].Point, outline[last - 1].Point))
        {
            last--;
        }

        return outline.GetRange(first, last - first + 1);
    }

    private static bool IsSteep(Point2 end, Point2 next) => Math.Abs(next.Y - end.Y) > BaseSteepness * Math.Abs(next.X - end.X);
}
