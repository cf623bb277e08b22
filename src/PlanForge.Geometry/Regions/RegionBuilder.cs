using System.Collections.Immutable;

namespace PlanForge.Geometry.Regions;

/// <summary>Works out the boundary of a region from contours that may cross, overlap and coincide.</summary>
/// <remarks>
/// All contours are split at all their crossings into edges that meet in vertices only. Each edge then knows how often both
/// sets of contours run around the points on its left and on its right; where the one belongs to the result and the other
/// does not, it is part of the boundary. The edges are put together into loops, and the loops into outlines with openings.
/// Because coinciding edges are added up before, shared boundaries need no case of their own.
/// </remarks>
internal static class RegionBuilder
{
    // Snapping moves edges by up to the snap distance, and edges as near as that to each other may cross where no vertex is.
    // The two sides of such a place can then be judged differently. It takes input that differs by about the snap distance,
    // and the same input is coarse or fine enough at another one. More steps would only delay the exception.
    private const int Attempts = 3;
    private const double CoarserPerAttempt = 10;

    public static ImmutableArray<RegionPart> Build(InsideRule rule, IEnumerable<Path2> first, IEnumerable<Path2> second)
    {
        List<Path2> firstSet = [.. first], secondSet = [.. second];
        var snap = Region2.SnapDistance;
        for (var attempt = 1; ; attempt++, snap *= CoarserPerAttempt)
        {
            try
            {
                return Build(rule, firstSet, secondSet, snap);
            }
            catch (BoundaryException) when (attempt < Attempts)
            {
                // Judged again with the next snap distance.
            }
        }
    }

    internal static ImmutableArray<RegionPart> Build(InsideRule rule, List<Path2> first, List<Path2> second, double snap)
    {
        var cutter = PieceCutter.Cut(first, second, snap);
        if (cutter.Pieces.Count == 0)
        {
            return [];
        }

        var splits = CrossingSweep.Find(cutter);
        var vertices = VertexTable.Of(cutter.Points, snap);
        var edges = Coincidence.Combined(EdgeSplitter.Split(cutter, vertices, splits), vertices.Positions, snap);
        if (edges.Count == 0)
        {
            return [];
        }

        var boundary = ChainSelector.Select(edges, vertices.Positions, rule);
        var writer = new ContourWriter(edges, vertices.Positions, cutter.Sources, snap);
        var contours = new List<Contour>();
        foreach (var loop in BoundaryWalk.Loops(edges, vertices.Positions, boundary))
        {
            if (writer.Write(loop) is { } contour)
            {
                contours.Add(contour);
            }
        }

        return Nesting.Nest(contours, snap);
    }
}
