namespace PlanForge.Geometry.Deviations;

/// <summary>The ends of open edges: what lies beyond one is off along the edge, not to one of its sides.</summary>
internal sealed class EdgeEnds
{
    private const double Rounding = 1e-9;

    private readonly List<(Point2 Place, Vector2 Outward)> _ends = [];
    private readonly LineIndex _lines;

    /// <param name="edges">The edges; closed ones have no ends.</param>
    /// <param name="lines">The same, to find the nearest in.</param>
    public EdgeEnds(IReadOnlyList<Path2> edges, LineIndex lines)
    {
        _lines = lines;
        foreach (var edge in edges.Where(edge => !edge.IsClosed))
        {
            _ends.Add((edge.Start, -edge.SegmentAt(0).DirectionAt(0)));
            _ends.Add((edge.End, edge.SegmentAt(edge.SegmentCount - 1).DirectionAt(1)));
        }
    }

    /// <summary>A run with what lies beyond an end, at either of its own ends, set apart.</summary>
    /// <param name="run">A run of which every place is off the edges.</param>
    /// <param name="tolerance">How exactly it is parted, mm.</param>
    /// <param name="least">What goes on by no more than this is left out: lines beside each other that end square to themselves do, mm.</param>
    public IEnumerable<(Path2 Run, bool IsBeyondEnd)> Split(Path2 run, double tolerance, double least)
    {
        var length = run.Length;
        if (run.IsClosed || _ends.Count == 0)
        {
            return [(run, false)];
        }

        var from = IsBeyond(run.Start) ? Part(0, length) : 0;
        var to = from < length && IsBeyond(run.End) ? Part(length, from) : length;
        return new (double From, double To, bool IsBeyond)[] { (0, from, true), (from, to, false), (to, length, true) }
            .Where(piece => piece.To - piece.From > (piece.IsBeyond ? least : tolerance))
            .Select(piece => (piece.To - piece.From >= length - tolerance ? run : Stretch(run, piece.From, piece.To), piece.IsBeyond));

        // The place between one beyond an end and one that is not, by halving.
        double Part(double beyond, double other)
        {
            if (IsBeyond(At(run, other)))
            {
                return other;
            }

            while (Math.Abs(other - beyond) > tolerance)
            {
                var middle = (beyond + other) / 2;
                (beyond, other) = IsBeyond(At(run, middle)) ? (middle, other) : (beyond, middle);
            }

            return beyond;
        }
    }

    private bool IsBeyond(Point2 place)
    {
        var (segment, _) = _lines.Nearest(place);
        var nearest = segment.PointAt(segment.NearestFraction(place));
        return _ends.Exists(end => end.Place.DistanceTo(nearest) <= Rounding && (place - nearest).Dot(end.Outward) > 0);
    }

    private static Point2 At(Path2 run, double length) => length <= 0 ? run.Start : Stretch(run, 0, length).End;

    private static Path2 Stretch(Path2 run, double from, double to)
    {
        var vertices = new List<PathVertex>();
        var passed = 0.0;
        var end = run.Start;
        foreach (var segment in run.Segments)
        {
            var length = segment.Length;
            var (first, last) = (Math.Max(0, from - passed), Math.Min(length, to - passed));
            if (last > first)
            {
                var part = segment.Part(first / length, last / length);
                vertices.Add(new(part.Start, part.Bulge));
                end = part.End;
            }

            passed += length;
        }

        return Path2.Open([.. vertices, new(end)]);
    }
}
