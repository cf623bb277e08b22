namespace PlanForge.Geometry.Regions;

/// <summary>Tells how often both sets of contours run around places on the edges, by rays towards +x.</summary>
internal sealed class RayIndex
{
    private readonly List<Edge> _edges;
    private readonly Point2[] _positions;

    // Horizontal slabs of equal height, and for each slab the edges that reach into it: a ray looks through one slab only.
    private readonly double _low;
    private readonly double _slabsPerMillimetre;
    private readonly int[] _firstOfSlab;
    private readonly int[] _edgesBySlab;

    public RayIndex(List<Edge> edges, Point2[] positions)
    {
        (_edges, _positions) = (edges, positions);
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var edge in edges)
        {
            low = Math.Min(low, Math.Min(positions[edge.Start].Y, positions[edge.End].Y));
            high = Math.Max(high, Math.Max(positions[edge.Start].Y, positions[edge.End].Y));
        }

        // About two edges begin in a slab: fewer slabs make rays slow, more make the index large.
        var slabCount = Math.Max(1, edges.Count / 2);
        _low = low;
        _slabsPerMillimetre = high > low ? slabCount / (high - low) : 0;
        _firstOfSlab = new int[slabCount + 2];
        foreach (var edge in edges)
        {
            for (var slab = FirstSlab(edge); slab <= LastSlab(edge); slab++)
            {
                _firstOfSlab[slab + 1]++;
            }
        }

        for (var slab = 0; slab <= slabCount; slab++)
        {
            _firstOfSlab[slab + 1] += _firstOfSlab[slab];
        }

        _edgesBySlab = new int[_firstOfSlab[^1]];
        var next = (int[])_firstOfSlab.Clone();
        for (var i = 0; i < edges.Count; i++)
        {
            for (var slab = FirstSlab(edges[i]); slab <= LastSlab(edges[i]); slab++)
            {
                _edgesBySlab[next[slab]++] = i;
            }
        }
    }

    /// <summary>The turns of both sets around the points just left of an edge's middle.</summary>
    public (int First, int Second) TurnsLeftOf(int index)
    {
        var edge = _edges[index];
        var (start, end) = (_positions[edge.Start], _positions[edge.End]);
        var middle = new Segment2(start, end, edge.Bulge).PointAt(0.5);

        // Between the ends, where rounding may have taken it out, and below the upper one, which the rule counts as above.
        var (low, high) = (Math.Min(start.Y, end.Y), Math.Max(start.Y, end.Y));
        var y = low == high ? low : Math.Clamp(middle.Y, low, Math.BitDecrement(high));
        var turns = TurnsAlongRay(new(middle.X, y), index);

        // The ray leaves a rising edge to its right, a falling one to its left; it runs just above a level one.
        var leavesLeft = end.Y < start.Y || (end.Y == start.Y && end.X > start.X);
        return leavesLeft ? turns : (turns.First + edge.First, turns.Second + edge.Second);
    }

    private (int First, int Second) TurnsAlongRay(Point2 from, int without)
    {
        var (first, second) = (0, 0);
        var slab = Slab(from.Y);
        for (var i = _firstOfSlab[slab]; i < _firstOfSlab[slab + 1]; i++)
        {
            if (_edgesBySlab[i] != without)
            {
                var edge = _edges[_edgesBySlab[i]];
                var sense = Crossing(edge, from);
                first += sense * edge.First;
                second += sense * edge.Second;
            }
        }

        return (first, second);
    }

    // 1 when the edge crosses the ray rising, −1 when falling. An edge holds its lower end and not its upper one, so that a
    // ray through a vertex crosses the two edges there once in all, or twice in opposite senses.
    private int Crossing(in Edge edge, Point2 from)
    {
        var (start, end) = (_positions[edge.Start], _positions[edge.End]);
        var isRising = end.Y > start.Y;
        if (isRising ? from.Y < start.Y || from.Y >= end.Y : from.Y < end.Y || from.Y >= start.Y)
        {
            return 0;
        }

        var sense = isRising ? 1 : -1;
        if (from.X > Math.Max(start.X, end.X))
        {
            return 0;
        }

        if (from.X < Math.Min(start.X, end.X))
        {
            return sense;
        }

        var side = Carrier.Of(new(start, end, edge.Bulge)).Value(from);
        return (isRising ? side > 0 : side < 0) ? sense : 0;
    }

    private int FirstSlab(in Edge edge) => Slab(Math.Min(_positions[edge.Start].Y, _positions[edge.End].Y));

    private int LastSlab(in Edge edge) => Slab(Math.Max(_positions[edge.Start].Y, _positions[edge.End].Y));

    private int Slab(double y) => (int)((y - _low) * _slabsPerMillimetre);
}
