using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>Finds the line a straightedge held against a section's lower surface comes to rest on.</summary>
internal static class UndersideFinder
{
    // In chords: on a shorter line the straightedge has nothing to rest on.
    private const double LeastLength = 0.25;

    // Samples of the surface, evenly in w. Fewer could pass by a touching place, more cost time: places are refined afterwards.
    private const int SampleCount = 128;

    // In chords: how far hull corners may stand out below a line through two others. A flat computed from a formula or a
    // straight run keeps the first; a flat whose printed points are rounded outwards keeps the second (5 µm of 250 mm), at
    // which no curve of a radius under 390 chords passes for flat.
    private const double ExactFlat = 1e-9;
    private const double RoundedFlat = 2e-5;

    // Each step squares the error of the line's direction: three are needed.
    private const int GreatestStepCount = 10;

    // dy/dw against the line that is more than the rounding of a flat and less than any curve shows over one sample.
    private const double LeastRise = 1e-10;

    // In w: a tangent point this far off stands off the line by its square.
    private const double Tolerance = 1e-13;

    /// <summary>The line, or null when none touches at two places a quarter of the chord apart.</summary>
    public static UndersideLine? Find(Section section)
    {
        var places = Places(section);
        var points = Array.ConvertAll(places, w => PointAt(section, w));
        var hull = LowerHull(points);
        var edge = LongestLine(points, hull, ExactFlat) ?? LongestLine(points, hull, RoundedFlat);
        if (edge is not { } found)
        {
            return null;
        }

        var (front, rear) = (places[found.Front], places[found.Rear]);
        for (var step = 0; step < GreatestStepCount; step++)
        {
            Point2 a = PointAt(section, front), b = PointAt(section, rear);
            var slope = (b.Y - a.Y) / (b.X - a.X);
            var next = (Touching(section, places, found.Front, front, slope), Touching(section, places, found.Rear, rear, slope));
            if (next == (front, rear))
            {
                break;
            }

            (front, rear) = next;
        }

        Point2 first = PointAt(section, front), last = PointAt(section, rear);
        return new(Math.Atan2(first.Y - last.Y, last.X - first.X), first, last);
    }

    private static double[] Places(Section section)
    {
        var places = new List<double>(section.LowerBreaks);
        for (var i = 0; i <= SampleCount; i++)
        {
            places.Add((double)i / SampleCount);
        }

        places.Sort();
        return [.. places];
    }

    private static Point2 PointAt(Section section, double w)
    {
        var point = section.Lower(w);
        return new(point.X, point.Y);
    }

    // Andrew's monotone chain; x grows along the surface.
    private static List<int> LowerHull(Point2[] points)
    {
        var hull = new List<int>(points.Length);
        for (var i = 0; i < points.Length; i++)
        {
            while (hull.Count >= 2 && (points[hull[^1]] - points[hull[^2]]).Cross(points[i] - points[hull[^1]]) <= 0)
            {
                hull.RemoveAt(hull.Count - 1);
            }

            hull.Add(i);
        }

        return hull;
    }

    // The longest line through two corners of the hull with the corners between at most the tolerance below it.
    private static (int Front, int Rear)? LongestLine(Point2[] points, List<int> hull, double tolerance)
    {
        (int Front, int Rear)? longest = null;
        var length = LeastLength;
        for (var i = 0; i < hull.Count; i++)
        {
            for (var j = i + 1; j < hull.Count && (j == i + 1 || StandsOut(points, hull, i, j) <= tolerance); j++)
            {
                var span = points[hull[j]].X - points[hull[i]].X;
                if (span > length)
                {
                    (longest, length) = ((hull[i], hull[j]), span);
                }
            }
        }

        return longest;
    }

    private static double StandsOut(Point2[] points, List<int> hull, int from, int to)
    {
        var start = points[hull[from]];
        var direction = (points[hull[to]] - start).Unit();
        var greatest = 0.0;
        for (var i = from + 1; i < to; i++)
        {
            greatest = Math.Max(greatest, (points[hull[i]] - start).Cross(direction));
        }

        return greatest;
    }

    // Where the surface near a sample is lowest as seen along the line; the place as it is when the surface does not fall on one
    // side of it and rise on the other, as at the ends of a flat or at the trailing edge.
    private static double Touching(Section section, double[] places, int sample, double place, double slope)
    {
        double low = places[Math.Max(sample - 1, 0)], high = places[Math.Min(sample + 1, places.Length - 1)];
        double Rise(double w)
        {
            var point = section.Lower(w);
            return point.Dy - (slope * point.Dx);
        }

        return Rise(low) < -LeastRise && Rise(high) > LeastRise
            ? RootFinder.Bracketed(Rise, low, high, Tolerance) ?? place
            : place;
    }
}
