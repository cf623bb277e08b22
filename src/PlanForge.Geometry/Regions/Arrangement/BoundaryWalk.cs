namespace PlanForge.Geometry.Regions;

/// <summary>Puts boundary edges together into loops that pass each vertex at most once.</summary>
/// <remarks>
/// Where several loops touch in a vertex, the walk keeps to the wedge of the result it came along, and what returns to a
/// vertex already passed is cut off as a loop of its own. So pieces that touch come out apart, and an opening that touches
/// its outline comes out as an opening.
/// </remarks>
internal sealed class BoundaryWalk
{
    private readonly List<Edge> _edges;
    private readonly Point2[] _positions;
    private readonly List<BoundaryEdge> _boundary;

    // The boundary edges that leave each vertex, as linked lists; used ones are taken out.
    private readonly int[] _firstOut;
    private readonly int[] _nextOut;
    private readonly bool[] _isUsed;

    private BoundaryWalk(List<Edge> edges, Point2[] positions, List<BoundaryEdge> boundary)
    {
        (_edges, _positions, _boundary) = (edges, positions, boundary);
        _firstOut = new int[positions.Length];
        Array.Fill(_firstOut, -1);
        _nextOut = new int[boundary.Count];
        _isUsed = new bool[boundary.Count];
        for (var i = boundary.Count - 1; i >= 0; i--)
        {
            var from = From(i);
            (_nextOut[i], _firstOut[from]) = (_firstOut[from], i);
        }
    }

    /// <summary>The loops, each a list of boundary edges in order of travel.</summary>
    /// <exception cref="BoundaryException">As many edges do not leave a vertex as arrive there.</exception>
    public static List<BoundaryEdge[]> Loops(List<Edge> edges, Point2[] positions, List<BoundaryEdge> boundary)
    {
        var walk = new BoundaryWalk(edges, positions, boundary);
        walk.CheckBalance();
        var loops = new List<BoundaryEdge[]>();
        var trail = new List<int>();
        var places = new int[positions.Length];
        Array.Fill(places, -1);
        for (var i = 0; i < boundary.Count; i++)
        {
            if (!walk._isUsed[i])
            {
                walk.Walk(i, trail, places, loops);
            }
        }

        return loops;
    }

    private void CheckBalance()
    {
        var balance = new int[_positions.Length];
        for (var i = 0; i < _boundary.Count; i++)
        {
            balance[From(i)]++;
            balance[To(i)]--;
        }

        for (var vertex = 0; vertex < balance.Length; vertex++)
        {
            if (balance[vertex] != 0)
            {
                throw new BoundaryException("The boundary of a region does not close", _positions[vertex]);
            }
        }
    }

    // Follows edges until it is back at the start; `places` gives for each vertex of the trail the edge that left it.
    private void Walk(int first, List<int> trail, int[] places, List<BoundaryEdge[]> loops)
    {
        places[From(first)] = 0;
        for (var current = first; ;)
        {
            Take(current);
            trail.Add(current);
            var vertex = To(current);
            if (places[vertex] < 0)
            {
                places[vertex] = trail.Count;
            }
            else
            {
                loops.Add(CutOff(trail, places, vertex));
                if (trail.Count == 0)
                {
                    places[vertex] = -1;
                    return;
                }
            }

            current = Next(current, vertex);
        }
    }

    private BoundaryEdge[] CutOff(List<int> trail, int[] places, int vertex)
    {
        var place = places[vertex];
        var loop = new BoundaryEdge[trail.Count - place];
        for (var i = 0; i < loop.Length; i++)
        {
            loop[i] = _boundary[trail[place + i]];
            places[From(trail[place + i])] = -1;
        }

        trail.RemoveRange(place, loop.Length);
        places[vertex] = place;
        return loop;
    }

    private void Take(int edge)
    {
        _isUsed[edge] = true;
        var from = From(edge);
        if (_firstOut[from] == edge)
        {
            _firstOut[from] = _nextOut[edge];
            return;
        }

        var before = _firstOut[from];
        while (_nextOut[before] != edge)
        {
            before = _nextOut[before];
        }

        _nextOut[before] = _nextOut[edge];
    }

    // The result lies left of travel, so its wedge is what opens clockwise from the edge looking back.
    private int Next(int arrived, int vertex)
    {
        var best = _firstOut[vertex];
        if (_nextOut[best] < 0)
        {
            return best;
        }

        // Edges may leave with a common tangent: their directions are compared where they are this far away.
        var reach = Chord(arrived);
        for (var i = best; i >= 0; i = _nextOut[i])
        {
            reach = Math.Min(reach, Chord(i));
        }

        var back = AngleAway(_boundary[arrived] with { IsForward = !_boundary[arrived].IsForward }, reach / 2);
        var smallest = double.PositiveInfinity;
        for (var i = best; i >= 0; i = _nextOut[i])
        {
            var turn = back - AngleAway(_boundary[i], reach / 2);
            turn = turn > 0 ? turn : turn + (2 * Math.PI);
            turn = turn > 0 ? turn : turn + (2 * Math.PI);
            if (turn < smallest)
            {
                (best, smallest) = (i, turn);
            }
        }

        return best;
    }

    // The direction angle from the start of an edge to its point at a distance.
    private double AngleAway(BoundaryEdge boundaryEdge, double distance)
    {
        var edge = _edges[boundaryEdge.Edge];
        var (start, end) = (_positions[edge.Start], _positions[edge.End]);
        var segment = boundaryEdge.IsForward ? new Segment2(start, end, edge.Bulge) : new(end, start, -edge.Bulge);
        var chordAngle = (segment.End - segment.Start).Angle;
        return segment.IsLine
            ? chordAngle
            : chordAngle - (segment.Sweep / 2) + Math.Asin(Math.Clamp(segment.Curvature * distance / 2, -1, 1));
    }

    private double Chord(int edge) => _positions[From(edge)].DistanceTo(_positions[To(edge)]);

    private int From(int edge) =>
        _boundary[edge].IsForward ? _edges[_boundary[edge].Edge].Start : _edges[_boundary[edge].Edge].End;

    private int To(int edge) =>
        _boundary[edge].IsForward ? _edges[_boundary[edge].Edge].End : _edges[_boundary[edge].Edge].Start;
}
