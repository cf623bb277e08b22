using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Parts.Shapes;

/// <summary>Turns rows of exact points into samples with directions, as curve fitting wants them.</summary>
internal static class SampledCurve
{
    // Points nearer than this (mm) are one place: the two sides of a corner, or the crowd at a nose.
    private const double OnePlace = 1e-7;

    /// <summary>Samples with directions by the circle through each point and its neighbours; a repeated point is a corner.</summary>
    public static ImmutableArray<CurveSample> Through(IReadOnlyList<Point2> points)
    {
        var samples = ImmutableArray.CreateBuilder<CurveSample>(points.Count);
        var first = 0;
        while (first < points.Count)
        {
            var last = first;
            while (last + 1 < points.Count && points[last].DistanceTo(points[last + 1]) > OnePlace)
            {
                last++;
            }

            AddPiece(points, first, last, samples);
            first = last + 1;
        }

        return samples.ToImmutable();
    }

    /// <summary>Adds a sample; one nearer to the last than anything can be told apart is put exactly on it, as a corner wants.</summary>
    public static void Append(this ImmutableArray<CurveSample>.Builder samples, CurveSample sample)
    {
        var isCorner = samples.Count > 0 && samples[^1].Point.DistanceTo(sample.Point) <= OnePlace;
        samples.Add(isCorner ? sample with { Point = samples[^1].Point } : sample);
    }

    private static void AddPiece(IReadOnlyList<Point2> points, int first, int last, ImmutableArray<CurveSample>.Builder samples)
    {
        if (first == last)
        {
            // A place repeated more than twice adds nothing to the corner it marks.
            return;
        }

        for (var i = first; i <= last; i++)
        {
            var direction = i == first ? AtEnd(points[i], points[i + 1], i + 2 <= last ? points[i + 2] : null)
                : i == last ? -AtEnd(points[i], points[i - 1], i - 2 >= first ? points[i - 2] : null)
                : Between(points[i - 1], points[i], points[i + 1]);
            samples.Append(new(points[i], direction));
        }
    }

    // The tangent at the middle of three points of a circle: the chords' directions, weighted by the other chord's length.
    private static Vector2 Between(Point2 a, Point2 b, Point2 c)
    {
        Vector2 before = b - a, after = c - b;
        return ((before.Unit() * after.Length) + (after.Unit() * before.Length)).Unit();
    }

    // At an end: the first chord turned back by half of what the circle turns along it.
    private static Vector2 AtEnd(Point2 end, Point2 next, Point2? afterNext)
    {
        var chord = (next - end).Unit();
        if (afterNext is not { } third)
        {
            return chord;
        }

        var there = Between(end, next, third);
        var half = Math.Atan2(chord.Cross(there), chord.Dot(there));
        return chord.Turned(-half);
    }
}
