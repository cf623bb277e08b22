using System.Collections.Immutable;

namespace PlanForge.Geometry.Fitting;

/// <summary>Finds the straight runs of a sampled curve.</summary>
internal static class StraightRuns
{
    // Samples on a line differ from it by rounding only. Larger would make gentle curves polygons, smaller would miss lines
    // whose samples were computed the long way.
    private const double GreatestDistance = 1e-7;
    private const double GreatestTurn = 1e-7;

    // Any curve is straight over a short enough stretch, at an inflection over a longer one. Runs shorter than this many
    // tolerances are left to the arcs, which follow them just as well.
    private const double LeastLength = 20;

    /// <summary>The runs, as indices of their first and last samples, in order; runs may share an end.</summary>
    public static List<(int First, int Last)> Find(ImmutableArray<CurveSample> samples, double tolerance)
    {
        var runs = new List<(int First, int Last)>();
        for (var first = 0; first < samples.Length - 1;)
        {
            var last = first;
            while (last + 1 < samples.Length && ContinuesStraight(samples[first], samples[last + 1]))
            {
                last++;
            }

            var isLong = last > first && samples[first].Point.DistanceTo(samples[last].Point) >= LeastLength * tolerance;
            if ((isLong || (first == 0 && last == samples.Length - 1)) && IsStraight(samples, first, last))
            {
                runs.Add((first, last));
                first = last;
            }
            else
            {
                first++;
            }
        }

        return runs;
    }

    // The direction at the first sample is known only so well: the further away, the further off a point may seem to be.
    private static bool ContinuesStraight(in CurveSample first, in CurveSample next)
    {
        var offset = next.Point - first.Point;
        return Math.Abs(first.Direction.Cross(next.Direction)) <= GreatestTurn
            && first.Direction.Dot(next.Direction) > 0
            && Math.Abs(first.Direction.Cross(offset)) <= GreatestDistance + (GreatestTurn * offset.Length);
    }

    private static bool IsStraight(ImmutableArray<CurveSample> samples, int first, int last)
    {
        var line = new Segment2(samples[first].Point, samples[last].Point, 0);
        for (var i = first + 1; i < last; i++)
        {
            if (line.DistanceTo(samples[i].Point) > GreatestDistance)
            {
                return false;
            }
        }

        return true;
    }
}
