namespace PlanForge.Geometry.Regions;

/// <summary>Makes edges that run along each other one.</summary>
internal static class Coincidence
{
    // Edges between the same two vertices coincide when they part by no more than this many snap distances. Each may have been
    // moved by one; less would leave slivers between edges meant to be shared.
    private const double GreatestGap = 2;

    /// <summary>The edges across which something changes, coinciding ones added up, in order of travel.</summary>
    public static List<Edge> Combined(List<Edge> edges, Point2[] positions, double snap)
    {
        var keys = new double[edges.Count];
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = Key(edges[i], positions.Length);
        }

        var order = Ascending.Order(keys);
        var replaced = new bool[edges.Count];
        for (var from = 0; from < order.Length;)
        {
            var to = from + 1;
            while (to < order.Length && keys[to] == keys[from])
            {
                to++;
            }

            if (to - from > 1)
            {
                CombineGroup(edges, positions, order.AsSpan(from, to - from), GreatestGap * snap, replaced);
            }

            from = to;
        }

        var combined = new List<Edge>(edges.Count);
        for (var i = 0; i < edges.Count; i++)
        {
            if (!replaced[i] && !edges[i].IsCancelled)
            {
                combined.Add(edges[i]);
            }
        }

        return combined;
    }

    // One number for a pair of vertices, exact up to 90 million of them.
    private static double Key(in Edge edge, double vertexCount) =>
        (Math.Min(edge.Start, edge.End) * vertexCount) + Math.Max(edge.Start, edge.End);

    // All edges of the group join the same two vertices; the first of those that coincide stands for them.
    private static void CombineGroup(List<Edge> edges, Point2[] positions, ReadOnlySpan<int> group, double greatestGap, bool[] replaced)
    {
        for (var i = 0; i < group.Length; i++)
        {
            if (replaced[group[i]])
            {
                continue;
            }

            var edge = edges[group[i]];
            var chord = positions[edge.Start].DistanceTo(positions[edge.End]);
            for (var j = i + 1; j < group.Length; j++)
            {
                var other = edges[group[j]];
                var sense = other.Start == edge.Start ? 1 : -1;
                if (!replaced[group[j]] && Math.Abs(edge.Bulge - (sense * other.Bulge)) * chord / 2 <= greatestGap)
                {
                    replaced[group[j]] = true;
                    edge = edge with { First = edge.First + (sense * other.First), Second = edge.Second + (sense * other.Second) };
                }
            }

            edges[group[i]] = edge;
        }
    }
}
