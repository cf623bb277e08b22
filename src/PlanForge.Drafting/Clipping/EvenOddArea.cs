using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Clipping;

/// <summary>The area inside some closed paths by the even-odd rule: an opening inside an outline is outside.</summary>
/// <remarks>Arcs of the outlines are taken as chords within a tolerance; paths that are cut at the outline keep their arcs.</remarks>
public sealed class EvenOddArea
{
    // An arc flatter than this is cut as a line: its sagitta is below 1e-4 mm on a chord of 1 m, while its centre lies so far
    // away that points computed from it lose their last digits.
    private const double FlatBulge = 1e-7;

    private readonly ImmutableArray<Segment2> _edges;

    /// <summary>Bounds an area.</summary>
    /// <param name="outlines">Closed paths, in any direction; open ones bound nothing and are left out.</param>
    /// <param name="tolerance">Greatest distance between the outlines and the chords that stand for them, mm, over 0.</param>
    public EvenOddArea(IEnumerable<Path2> outlines, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(outlines);
        var edges = ImmutableArray.CreateBuilder<Segment2>();
        foreach (var outline in outlines)
        {
            if (!outline.IsClosed)
            {
                continue;
            }

            var points = outline.Flattened(tolerance);
            for (var i = 0; i < points.Length; i++)
            {
                edges.Add(new(points[i], points[(i + 1) % points.Length], 0));
            }
        }

        _edges = edges.ToImmutable();
    }

    /// <summary>True when a point lies inside; on the outline itself either answer may come.</summary>
    public bool Contains(Point2 point)
    {
        var isInside = false;
        foreach (var edge in _edges)
        {
            var (a, b) = (edge.Start, edge.End);
            if (a.Y > point.Y != b.Y > point.Y && point.X < a.X + ((b.X - a.X) * (point.Y - a.Y) / (b.Y - a.Y)))
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }

    /// <summary>The distance from a point to the outline, mm; infinite when there is none.</summary>
    public double DistanceToOutline(Point2 point)
    {
        var least = double.PositiveInfinity;
        foreach (var edge in _edges)
        {
            least = Math.Min(least, edge.DistanceTo(point));
        }

        return least;
    }

    /// <summary>
    /// The parts of a path that lie inside, in order of travel; a path that nowhere crosses the outline comes back whole.
    /// </summary>
    public ImmutableArray<Path2> Inside(Path2 path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var pieces = new List<Segment2>();
        var isWhole = true;
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var segment = path.SegmentAt(i);
            segment = Math.Abs(segment.Bulge) < FlatBulge ? segment with { Bulge = 0 } : segment;
            var cuts = CutsOf(segment);
            for (var c = 1; c < cuts.Count; c++)
            {
                var piece = segment.Part(cuts[c - 1], cuts[c]);
                if (Contains(piece.PointAt(0.5)))
                {
                    pieces.Add(piece);
                }
                else
                {
                    isWhole = false;
                }
            }
        }

        return isWhole ? [path] : Chained(pieces);
    }

    /// <summary>Where a segment meets the outline, as fractions of its length in order, with 0 and 1.</summary>
    private List<double> CutsOf(Segment2 segment)
    {
        var cuts = new List<double> { 0, 1 };
        foreach (var edge in _edges)
        {
            Crossings.Add(segment, edge, cuts);
        }

        cuts.Sort();
        return cuts;
    }

    private static ImmutableArray<Path2> Chained(List<Segment2> pieces)
    {
        var paths = ImmutableArray.CreateBuilder<Path2>();
        for (var i = 0; i < pieces.Count;)
        {
            var vertices = new List<PathVertex>();
            var end = pieces[i].Start;
            for (; i < pieces.Count && pieces[i].Start == end; i++)
            {
                vertices.Add(new(pieces[i].Start, pieces[i].Bulge));
                end = pieces[i].End;
            }

            vertices.Add(new(end));
            paths.Add(Path2.Open(vertices));
        }

        return paths.ToImmutable();
    }
}
