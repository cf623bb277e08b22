namespace PlanForge.Geometry.Deviations;

/// <summary>Lines in which the nearest to a point is found quickly.</summary>
internal sealed class LineIndex
{
    private readonly Segment2[] _segments;
    private readonly BoxTree _tree;

    /// <exception cref="ArgumentException">No line has a length.</exception>
    public LineIndex(IReadOnlyList<Path2> paths)
    {
        ArgumentNullException.ThrowIfNull(paths);
        _segments = [.. paths.SelectMany(path => path.Segments).Where(segment => segment.Start != segment.End)];
        if (_segments.Length == 0)
        {
            throw new ArgumentException("There is no line of some length to be near to.", nameof(paths));
        }

        _tree = new([.. _segments.Select(segment => segment.Bounds.Grown(Rounding))]);
    }

    // The box of an arc is computed otherwise than the distance to it: it must not come out larger than that.
    private const double Rounding = 1e-9;

    /// <summary>The segment nearest to a point, and the distance, mm.</summary>
    public (Segment2 Segment, double Distance) Nearest(Point2 point)
    {
        var (number, distance) = _tree.Nearest(point, i => _segments[i].DistanceTo(point));
        return (_segments[number], distance);
    }
}
