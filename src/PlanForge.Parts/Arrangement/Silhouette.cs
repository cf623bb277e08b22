using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Parts.Arrangement;

/// <summary>The outline of a body in a view: tells which stretches of a line lie inside it.</summary>
internal sealed class Silhouette
{
    // Chords of the outline decide only on which side the middle of a stretch lies.
    private const double ChordTolerance = 0.01;

    // Nearer to the outline than this, mm, is on it.
    private const double OnOutline = 1e-4;

    private readonly Path2 _outline;
    private readonly ImmutableArray<Point2> _corners;
    private readonly Bounds2 _bounds;

    /// <summary>Makes a silhouette of a closed path.</summary>
    public Silhouette(Path2 outline) =>
        (_outline, _corners, _bounds) = (outline, outline.Flattened(ChordTolerance), outline.Bounds.Grown(OnOutline));

    /// <summary>True when a point lies inside; on the outline itself as asked.</summary>
    public bool Contains(Point2 point, bool isOutlineInside = false)
    {
        if (!_bounds.Contains(point))
        {
            return false;
        }

        if (_outline.DistanceTo(point) <= OnOutline)
        {
            return isOutlineInside;
        }

        // Even-odd: how often a ray to the right crosses the outline.
        var isInside = false;
        for (var i = 0; i < _corners.Length; i++)
        {
            Point2 a = _corners[i], b = _corners[(i + 1) % _corners.Length];
            if (a.Y > point.Y != b.Y > point.Y && point.X < a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }

    /// <summary>The stretches of a line between the outlines of some silhouettes, in order of travel, each with a point half way.</summary>
    public static IEnumerable<(Path2 Piece, Point2 Middle)> Pieces(Path2 line, params IEnumerable<Silhouette> silhouettes)
    {
        const double Touch = 1e-7;
        const double Shortest = 1e-9;
        var cuts = new List<double> { 0, line.SegmentCount };
        var bounds = line.Bounds;
        foreach (var silhouette in silhouettes)
        {
            if (!bounds.Touches(silhouette._bounds))
            {
                continue;
            }

            foreach (var crossing in line.IntersectionsWith(silhouette._outline, Touch))
            {
                cuts.Add(crossing.Segment + crossing.Fraction);
            }
        }

        cuts.Sort();
        for (var i = 1; i < cuts.Count; i++)
        {
            if (cuts[i] - cuts[i - 1] > Shortest)
            {
                var middle = (cuts[i - 1] + cuts[i]) / 2;
                var segment = Math.Min((int)middle, line.SegmentCount - 1);
                yield return (Piece(line, cuts[i - 1], cuts[i]), line.SegmentAt(segment).PointAt(middle - segment));
            }
        }
    }

    private static Path2 Piece(Path2 line, double from, double to)
    {
        var vertices = ImmutableArray.CreateBuilder<PathVertex>();
        Point2 end = default;
        for (var i = (int)from; i < to && i < line.SegmentCount; i++)
        {
            var part = line.SegmentAt(i).Part(Math.Max(0, from - i), Math.Min(1, to - i));
            vertices.Add(new(part.Start, part.Bulge));
            end = part.End;
        }

        vertices.Add(new(end));
        return Path2.Open(vertices);
    }
}
