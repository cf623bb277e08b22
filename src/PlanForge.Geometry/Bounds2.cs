namespace PlanForge.Geometry;

/// <summary>An upright rectangle, both edges included, in millimetres. <see cref="Empty"/> contains nothing.</summary>
/// <param name="MinX">Left edge.</param>
/// <param name="MinY">Lower edge.</param>
/// <param name="MaxX">Right edge.</param>
/// <param name="MaxY">Upper edge.</param>
public readonly record struct Bounds2(double MinX, double MinY, double MaxX, double MaxY)
{
    /// <summary>The rectangle that contains no point; joining it with another gives the other.</summary>
    public static Bounds2 Empty => new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>True when no point lies inside.</summary>
    public bool IsEmpty => MinX > MaxX || MinY > MaxY;

    /// <summary>Extent along x, mm.</summary>
    public double Width => MaxX - MinX;

    /// <summary>Extent along y, mm.</summary>
    public double Height => MaxY - MinY;

    /// <summary>The middle.</summary>
    public Point2 Centre => new((MinX + MaxX) / 2, (MinY + MaxY) / 2);

    /// <summary>The smallest rectangle around some points.</summary>
    public static Bounds2 Around(IEnumerable<Point2> points)
    {
        var bounds = Empty;
        foreach (var point in points)
        {
            bounds = bounds.Including(point);
        }

        return bounds;
    }

    /// <summary>The rectangle with two points as opposite corners, whichever way round.</summary>
    public static Bounds2 Around(Point2 corner, Point2 opposite) => new(
        Math.Min(corner.X, opposite.X), Math.Min(corner.Y, opposite.Y), Math.Max(corner.X, opposite.X), Math.Max(corner.Y, opposite.Y));

    /// <summary>The smallest rectangle that also contains a point.</summary>
    public Bounds2 Including(Point2 p) =>
        new(Math.Min(MinX, p.X), Math.Min(MinY, p.Y), Math.Max(MaxX, p.X), Math.Max(MaxY, p.Y));

    /// <summary>The smallest rectangle that contains both.</summary>
    public Bounds2 Joined(Bounds2 other) =>
        new(Math.Min(MinX, other.MinX), Math.Min(MinY, other.MinY), Math.Max(MaxX, other.MaxX), Math.Max(MaxY, other.MaxY));

    /// <summary>The rectangle moved outward by a margin on all sides (inward when negative), mm.</summary>
    public Bounds2 Grown(double margin) => new(MinX - margin, MinY - margin, MaxX + margin, MaxY + margin);

    /// <summary>The rectangle moved without turning; one that contains nothing still does not.</summary>
    public Bounds2 MovedBy(Vector2 move) => new(MinX + move.X, MinY + move.Y, MaxX + move.X, MaxY + move.Y);

    /// <summary>True when the rectangles share at least one point.</summary>
    public bool Touches(Bounds2 other) =>
        MinX <= other.MaxX && other.MinX <= MaxX && MinY <= other.MaxY && other.MinY <= MaxY;

    /// <summary>True when the point lies inside or on an edge.</summary>
    public bool Contains(Point2 p) => p.X >= MinX && p.X <= MaxX && p.Y >= MinY && p.Y <= MaxY;

    /// <summary>True when the other rectangle lies inside as a whole; common edges are allowed.</summary>
    public bool Encloses(Bounds2 other) => other.MinX >= MinX && other.MinY >= MinY && other.MaxX <= MaxX && other.MaxY <= MaxY;

    /// <summary>The shortest distance from a point to the rectangle, mm: 0 inside; infinite for one that contains nothing.</summary>
    public double DistanceTo(Point2 p) => new Vector2(
        Math.Max(0, Math.Max(MinX - p.X, p.X - MaxX)), Math.Max(0, Math.Max(MinY - p.Y, p.Y - MaxY))).Length;
}
