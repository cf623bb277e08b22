using PlanForge.Geometry;

namespace PlanForge.Output.Curves;

/// <summary>A turn, a scale, a move and perhaps a flip of y at the end: what takes glyphs to their line and drawings to a page.</summary>
/// <param name="Along">Where the unit vector of x goes.</param>
/// <param name="Move">Where the origin goes, as a vector from the origin.</param>
/// <param name="IsFlipped">True when left and right change places, as they do where y points down.</param>
internal readonly record struct Similarity(Vector2 Along, Vector2 Move, bool IsFlipped)
{
    /// <summary>From y up to y down: the point (left, top) becomes the origin.</summary>
    public static Similarity Downward(double left, double top) => new(new(1, 0), new(-left, top), true);

    /// <summary>Where a point goes.</summary>
    public Point2 Apply(Point2 point)
    {
        var across = IsFlipped ? -Along.Left : Along.Left;
        return Point2.Origin + ((Along * point.X) + (across * point.Y) + Move);
    }

    /// <summary>The bulge of a segment after the change.</summary>
    public double Apply(double bulge) => IsFlipped ? -bulge : bulge;

    /// <summary>Where a path goes.</summary>
    public Path2 Apply(Path2 path)
    {
        var vertices = new PathVertex[path.Vertices.Length];
        for (var i = 0; i < vertices.Length; i++)
        {
            vertices[i] = new(Apply(path.Vertices[i].Point), Apply(path.Vertices[i].Bulge));
        }

        return path.IsClosed ? Path2.Closed(vertices) : Path2.Open(vertices);
    }
}
