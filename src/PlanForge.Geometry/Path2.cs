using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace PlanForge.Geometry;

/// <summary>A vertex of a path and the bulge of the segment that leaves it (see <see cref="Segment2"/>).</summary>
/// <param name="Point">Where the vertex lies.</param>
/// <param name="Bulge">Bulge of the leaving segment; ignored at the last vertex of an open path.</param>
public readonly record struct PathVertex(Point2 Point, double Bulge = 0);

/// <summary>A chain of lines and arcs: open, or closed and then an outline with an inside. Immutable.</summary>
/// <remarks>
/// A closed path does not repeat its first vertex. An outline that bounds material from outside runs anticlockwise, an
/// opening in it clockwise, by convention; <see cref="SignedArea"/> tells. A full circle is a closed path of two half circles.
/// </remarks>
public sealed class Path2
{
    private Path2(ImmutableArray<PathVertex> vertices, bool isClosed)
    {
        Vertices = vertices;
        IsClosed = isClosed;
    }

    /// <summary>The vertices in order of travel.</summary>
    public ImmutableArray<PathVertex> Vertices { get; }

    /// <summary>True when a last segment joins the last vertex to the first.</summary>
    public bool IsClosed { get; }

    /// <summary>How many segments the path has.</summary>
    public int SegmentCount => IsClosed ? Vertices.Length : Vertices.Length - 1;

    /// <summary>The segments in order of travel.</summary>
    public IEnumerable<Segment2> Segments
    {
        get
        {
            for (var i = 0; i < SegmentCount; i++)
            {
                yield return SegmentAt(i);
            }
        }
    }

    /// <summary>The first vertex's point.</summary>
    public Point2 Start => Vertices[0].Point;

    /// <summary>The point where travel ends: the first vertex again on a closed path.</summary>
    public Point2 End => IsClosed ? Start : Vertices[^1].Point;

    /// <summary>The length of all segments, mm.</summary>
    public double Length
    {
        get
        {
            var length = 0.0;
            for (var i = 0; i < SegmentCount; i++)
            {
                length += SegmentAt(i).Length;
            }

            return length;
        }
    }

    /// <summary>The smallest upright rectangle around the path, arcs included.</summary>
    public Bounds2 Bounds
    {
        get
        {
            var bounds = Bounds2.Empty;
            for (var i = 0; i < SegmentCount; i++)
            {
                bounds = bounds.Joined(SegmentAt(i).Bounds);
            }

            return bounds;
        }
    }

    /// <summary>The enclosed area, mm², positive when the path runs anticlockwise; exact for arcs; 0 for an open path.</summary>
    public double SignedArea
    {
        get
        {
            if (!IsClosed)
            {
                return 0;
            }

            // Chords by the shoelace formula, then what lies between each arc and its chord.
            var area = 0.0;
            for (var i = 0; i < SegmentCount; i++)
            {
                var segment = SegmentAt(i);
                area += ((segment.Start - Start).Cross(segment.End - Start) / 2) + segment.CapArea;
            }

            return area;
        }
    }

    /// <summary>The centre of gravity of the enclosed area; exact for arcs; null for an open path or one without area.</summary>
    public Point2? AreaCentroid
    {
        get
        {
            var area = SignedArea;
            if (area == 0)
            {
                return null;
            }

            var moment = new Vector2(0, 0);
            for (var i = 0; i < SegmentCount; i++)
            {
                var segment = SegmentAt(i);
                var (start, end) = (segment.Start - Start, segment.End - Start);
                moment += (start + end) * (start.Cross(end) / 6);
                if (!segment.IsLine)
                {
                    moment += ((start + end) * (segment.CapArea / 2)) - ((end - start).Unit().Left * segment.CapMoment);
                }
            }

            return Start + (moment / area);
        }
    }

    /// <summary>An open path. Needs at least two vertices.</summary>
    /// <exception cref="ArgumentException">Fewer than two vertices.</exception>
    public static Path2 Open(IEnumerable<PathVertex> vertices) => new(AtLeastTwo(vertices), isClosed: false);

    /// <summary>A closed path. Needs at least two vertices (two arcs make a lens or a circle).</summary>
    /// <exception cref="ArgumentException">Fewer than two vertices.</exception>
    public static Path2 Closed(IEnumerable<PathVertex> vertices) => new(AtLeastTwo(vertices), isClosed: true);

    /// <summary>An open chain of straight lines.</summary>
    public static Path2 Polyline(params IEnumerable<Point2> points) => Open(points.Select(point => new PathVertex(point)));

    /// <summary>A closed chain of straight lines.</summary>
    public static Path2 Polygon(params IEnumerable<Point2> points) => Closed(points.Select(point => new PathVertex(point)));

    /// <summary>A straight line.</summary>
    public static Path2 Line(Point2 start, Point2 end) => Polyline(start, end);

    /// <summary>A rectangle, anticlockwise.</summary>
    public static Path2 Rectangle(Bounds2 bounds) => Polygon(
        new Point2(bounds.MinX, bounds.MinY), new(bounds.MaxX, bounds.MinY), new(bounds.MaxX, bounds.MaxY), new(bounds.MinX, bounds.MaxY));

    /// <summary>A full circle, anticlockwise, as two half circles.</summary>
    public static Path2 Circle(Point2 centre, double radius) => Closed(
        [new(centre + new Vector2(radius, 0), 1), new(centre - new Vector2(radius, 0), 1)]);

    /// <summary>The segment that leaves vertex <paramref name="index"/>.</summary>
    public Segment2 SegmentAt(int index)
    {
        var vertex = Vertices[index];
        return new(vertex.Point, Vertices[(index + 1) % Vertices.Length].Point, vertex.Bulge);
    }

    /// <summary>When the path is one full circle: its centre and radius, else null.</summary>
    public (Point2 Centre, double Radius)? AsCircle() =>
        IsClosed && Vertices.Length == 2 && Math.Abs(Vertices[0].Bulge) == 1 && Vertices[0].Bulge == Vertices[1].Bulge
            ? (Vertices[0].Point.Towards(Vertices[1].Point, 0.5), Vertices[0].Point.DistanceTo(Vertices[1].Point) / 2)
            : null;

    /// <summary>The same path travelled the other way.</summary>
    public Path2 Reversed()
    {
        var count = Vertices.Length;
        var reversed = ImmutableArray.CreateBuilder<PathVertex>(count);
        for (var i = 0; i < count; i++)
        {
            // The segment that leaves vertex j backwards is the one that arrived at it forwards: it left vertex j - 1.
            var j = IsClosed ? (count - i) % count : count - 1 - i;
            var arriving = IsClosed ? Vertices[(j + count - 1) % count].Bulge : j > 0 ? Vertices[j - 1].Bulge : 0;
            reversed.Add(new(Vertices[j].Point, 0 - arriving));
        }

        return new(reversed.MoveToImmutable(), IsClosed);
    }

    /// <summary>The path moved, turned or mirrored.</summary>
    public Path2 Placed(Placement2 placement) => new(
        [.. Vertices.Select(v => new PathVertex(placement.Apply(v.Point), placement.IsMirrored ? 0 - v.Bulge : v.Bulge))], IsClosed);

    /// <summary>The path made larger about the origin by a factor; bulges are angles and stay.</summary>
    /// <param name="factor">New length over old, over 0.</param>
    public Path2 Scaled(double factor)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(factor);
        return new([.. Vertices.Select(v => v with { Point = new(v.Point.X * factor, v.Point.Y * factor) })], IsClosed);
    }

    /// <summary>True when another path is the same to the last bit.</summary>
    public bool IsSameAs(Path2 other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return ReferenceEquals(this, other) || (IsClosed == other.IsClosed
            && MemoryMarshal.AsBytes(Vertices.AsSpan()).SequenceEqual(MemoryMarshal.AsBytes(other.Vertices.AsSpan())));
    }

    /// <summary>The shortest distance from a point to the path itself (not its inside), mm.</summary>
    public double DistanceTo(Point2 point)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < SegmentCount; i++)
        {
            least = Math.Min(least, SegmentAt(i).DistanceTo(point));
        }

        return least;
    }

    /// <summary>
    /// The same path with neighbouring segments joined into one where a single line or arc takes their place: collinear lines
    /// become one line, arcs of the same circle one arc (of less than 350°), and a closed path that is one circle two half circles.
    /// A closed path may begin at another vertex then.
    /// </summary>
    /// <param name="tolerance">Greatest distance between the old and the new path, mm, not negative.</param>
    public Path2 Merged(double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(tolerance);
        return PathMerger.Merged(this, tolerance);
    }

    /// <summary>The points this path shares with another, in order of travel along this one.</summary>
    /// <param name="other">The other path, open or closed.</param>
    /// <param name="tolerance">Paths that pass each other within this distance touch, mm, over 0.</param>
    /// <returns>Each crossing or touch once; where the paths run along each other, the ends of the shared stretches.</returns>
    public ImmutableArray<PathCrossing> IntersectionsWith(Path2 other, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        return PathCrossings.Find(this, other, tolerance);
    }

    /// <summary>Points along the path so close that straight lines between them stay within a sagitta of the arcs.</summary>
    /// <param name="tolerance">Greatest distance between an arc and its chord, mm, over 0.</param>
    /// <returns>Every vertex, and points between on arcs; a closed path does not repeat its start.</returns>
    public ImmutableArray<Point2> Flattened(double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var points = ImmutableArray.CreateBuilder<Point2>();
        foreach (var segment in Segments)
        {
            points.Add(segment.Start);
            if (segment.IsLine)
            {
                continue;
            }

            // A chord over the angle a of a circle of radius r has the sagitta r (1 − cos(a/2)) = 2 r sin²(a/4); the sine of
            // the small angle keeps its digits where the cosine rounds to 1 and an all but straight arc would never end.
            var step = 4 * Math.Asin(Math.Min(1, Math.Sqrt(tolerance / (2 * segment.Radius))));
            var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(segment.Sweep) / step));
            for (var i = 1; i < pieces; i++)
            {
                points.Add(segment.PointAt((double)i / pieces));
            }
        }

        if (!IsClosed)
        {
            points.Add(End);
        }

        return points.ToImmutable();
    }

    private static ImmutableArray<PathVertex> AtLeastTwo(IEnumerable<PathVertex> vertices)
    {
        var array = vertices.ToImmutableArray();
        return array.Length >= 2
            ? array
            : throw new ArgumentException($"A path needs at least two vertices, not {array.Length}.", nameof(vertices));
    }
}
