namespace PlanForge.Geometry.Regions;

/// <summary>An edge of the result's boundary, turned so that the result lies to its left.</summary>
/// <param name="Edge">Index of the edge.</param>
/// <param name="IsForward">True when it runs as the edge does, false when against it.</param>
internal readonly record struct BoundaryEdge(int Edge, bool IsForward);

/// <summary>Selects the edges that bound the result.</summary>
/// <remarks>
/// Edges that follow each other through vertices where nothing else ends form a chain, along which the turns on both sides
/// stay the same: the longest edge decides for all of them, where rounding matters least.
/// </remarks>
internal sealed class ChainSelector
{
    private readonly List<Edge> _edges;
    private readonly Point2[] _positions;
    private readonly int[] _degrees;

    // The exclusive-or of the edges at each vertex: where there are two, it gives the one from the other.
    private readonly int[] _links;
    private readonly bool[] _isDone;

    private ChainSelector(List<Edge> edges, Point2[] positions)
    {
        (_edges, _positions) = (edges, positions);
        (_degrees, _links) = (new int[positions.Length], new int[positions.Length]);
        _isDone = new bool[edges.Count];
        for (var i = 0; i < edges.Count; i++)
        {
            _degrees[edges[i].Start]++;
            _degrees[edges[i].End]++;
            _links[edges[i].Start] ^= i;
            _links[edges[i].End] ^= i;
        }
    }

    public static List<BoundaryEdge> Select(List<Edge> edges, Point2[] positions, InsideRule rule)
    {
        var selector = new ChainSelector(edges, positions);
        var rays = new RayIndex(edges, positions);
        var (selected, chain) = (new List<BoundaryEdge>(), new List<BoundaryEdge>());
        for (var i = 0; i < edges.Count; i++)
        {
            if (!selector._isDone[i])
            {
                chain.Clear();
                selector.Collect(i, chain);
                selector.Decide(chain, rays, rule, selected);
            }
        }

        return selected;
    }

    // All edges of a chain, each with its direction along the chain, which runs as the first edge does.
    private void Collect(int first, List<BoundaryEdge> chain)
    {
        _isDone[first] = true;
        chain.Add(new(first, true));
        Follow(first, _edges[first].End, isAhead: true, chain);
        Follow(first, _edges[first].Start, isAhead: false, chain);
    }

    private void Follow(int edge, int vertex, bool isAhead, List<BoundaryEdge> chain)
    {
        while (_degrees[vertex] == 2 && !_isDone[_links[vertex] ^ edge])
        {
            edge ^= _links[vertex];
            _isDone[edge] = true;
            var leavesVertex = _edges[edge].Start == vertex;
            chain.Add(new(edge, leavesVertex == isAhead));
            vertex = leavesVertex ? _edges[edge].End : _edges[edge].Start;
        }
    }

    private void Decide(List<BoundaryEdge> chain, RayIndex rays, InsideRule rule, List<BoundaryEdge> selected)
    {
        var longest = chain[0];
        var greatest = -1.0;
        foreach (var member in chain)
        {
            var length = _positions[_edges[member.Edge].Start].DistanceTo(_positions[_edges[member.Edge].End]);
            if (length > greatest)
            {
                (longest, greatest) = (member, length);
            }
        }

        var edge = _edges[longest.Edge];
        var (first, second) = rays.TurnsLeftOf(longest.Edge);
        var isLeftInside = rule.Holds(first, second);
        if (isLeftInside == rule.Holds(first - edge.First, second - edge.Second))
        {
            return;
        }

        foreach (var member in chain)
        {
            selected.Add(new(member.Edge, member.IsForward == longest.IsForward == isLeftInside));
        }
    }
}
