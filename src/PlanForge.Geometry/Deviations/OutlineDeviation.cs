using System.Collections.Immutable;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Deviations;

/// <summary>How two shapes of material, each bounded by closed contours with openings, differ.</summary>
/// <param name="Largest">The Hausdorff distance between their outlines, openings included.</param>
/// <param name="Zones">Where they differ by more than a threshold: along the new outline first, then along the old.</param>
public sealed record OutlineDeviation(Deviation Largest, ImmutableArray<DeviationZone> Zones)
{
    // A run is pointed at in its middle where that is as far off as the farthest place for any eye, mm.
    private const double Indistinguishable = 0.01;

    // A run ends short of a corner by the threshold over the sine of the corner's angle, known to another threshold.
    private const double RunEnd = 4;

    /// <summary>The zone of a side with the greatest distance, but for those beyond an edge's end; null when there is none beyond the threshold.</summary>
    public DeviationZone? WorstOf(DeviationSide side) =>
        Zones.Where(zone => zone.Side == side && !zone.IsBeyondEnd).MaxBy(zone => zone.Largest.Distance);

    /// <summary>Compares two shapes.</summary>
    /// <remarks>
    /// A place on the new outline that lies in the old material says that material is to come off, one outside it that some is missing;
    /// for a place on the old outline and the new material it is the other way round. A run along the old outline whose farthest
    /// place is opposite a run along the new one belongs to that: their zone has the greater distance of both.
    /// </remarks>
    /// <param name="old">The contours of the one shape, none crossing another; points inside an odd number of them are material.</param>
    /// <param name="now">Those of the other.</param>
    /// <param name="tolerance">How much less than the greatest distance the results may be at most, mm, over 0; they are never more.</param>
    /// <param name="threshold">Distances up to this make no zone, mm, over the tolerance.</param>
    /// <exception cref="ArgumentException">A shape has no contour of some length.</exception>
    public static OutlineDeviation Of(IReadOnlyList<Path2> old, IReadOnlyList<Path2> now, double tolerance, double threshold) =>
        Of(new EdgedShape(old, old), new EdgedShape(now, now), tolerance, threshold);

    /// <summary>Compares two shapes along some of their edges.</summary>
    /// <inheritdoc cref="Of(IReadOnlyList{Path2}, IReadOnlyList{Path2}, double, double)"/>
    /// <param name="old">The one shape.</param>
    /// <param name="now">The other.</param>
    /// <param name="tolerance">How much less than the greatest distance the results may be at most, mm, over 0; they are never more.</param>
    /// <param name="threshold">Distances up to this make no zone, mm, over the tolerance.</param>
    /// <exception cref="ArgumentException">A shape has no edge of some length.</exception>
    public static OutlineDeviation Of(EdgedShape old, EdgedShape now, double tolerance, double threshold)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(threshold, tolerance);
        LineIndex oldLines = new(old.Edges), newLines = new(now.Edges);
        var zones = Runs(now.Edges, oldLines, old, isOnOld: false, tolerance, threshold);
        var unmatched = new List<DeviationZone>();
        var matched = new HashSet<int>();
        foreach (var zone in Runs(old.Edges, newLines, now, isOnOld: true, tolerance, threshold))
        {
            var (segment, _) = newLines.Nearest(zone.Middle);
            var foot = segment.PointAt(segment.NearestFraction(zone.Middle));
            var opposite = zones.FindIndex(it => it.Side == zone.Side && it.IsBeyondEnd == zone.IsBeyondEnd && Math.Min(it.Run.DistanceTo(foot), it.Run.DistanceTo(zone.Largest.Nearest)) <= RunEnd * threshold);
            if (opposite < 0)
            {
                unmatched.Add(zone);
                continue;
            }

            matched.Add(opposite);
            var largest = new Deviation(zone.Largest.Distance, zone.Largest.Nearest, zone.Largest.At);
            zones[opposite] = largest.Distance > zones[opposite].Largest.Distance + Indistinguishable
                ? zones[opposite] with { Largest = largest, Middle = largest.At }
                : zones[opposite];
        }

        for (var i = 0; i < zones.Count; i++)
        {
            zones[i] = zones[i] with { IsAlone = zones[i].Run.IsClosed && !matched.Contains(i) };
        }

        return new(Deviation.Between(old.Edges, now.Edges, tolerance), [.. zones, .. unmatched]);
    }

    private static List<DeviationZone> Runs(
        IReadOnlyList<Path2> edges, LineIndex to, EdgedShape other, bool isOnOld, double tolerance, double threshold)
    {
        var zones = new List<DeviationZone>();
        var ends = new EdgeEnds(other.Edges, to);
        foreach (var edge in edges)
        {
            foreach (var (run, isBeyondEnd) in DeviantRuns.Find(edge, to, threshold).SelectMany(run => ends.Split(run, tolerance, threshold)))
            {
                var largest = FarthestPlace.Find(run.Segments, to, tolerance);
                var middle = MiddleOf(run);
                var isMiddleAsFar = to.Nearest(middle).Distance >= largest.Distance - Indistinguishable;

                // All of a run is on one side; its ends may lie on stretches of the other outline that do not count.
                var isInOther = (other.Contours.Sum(it => Winding.Around(it, middle)) & 1) != 0;
                zones.Add(new(
                    isInOther == isOnOld ? DeviationSide.Lack : DeviationSide.Surplus,
                    largest,
                    isMiddleAsFar ? middle : largest.At,
                    run,
                    isOnOld,
                    IsAlone: run.IsClosed)
                {
                    IsBeyondEnd = isBeyondEnd,
                });
            }
        }

        return zones;
    }

    private static Point2 MiddleOf(Path2 run)
    {
        var left = run.Length / 2;
        foreach (var segment in run.Segments)
        {
            if (left <= segment.Length)
            {
                return segment.PointAt(left / segment.Length);
            }

            left -= segment.Length;
        }

        return run.End;
    }
}
