using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>One letter of a laid-out text.</summary>
/// <param name="Character">The character.</param>
/// <param name="Glyph">Its strokes, for a height of 1.</param>
/// <param name="At">Where its origin stands, for a text height of 1 that starts at (0, 0).</param>
/// <param name="Scale">Its own height in heights of the text: 1, or less in fractions. The pen is the same for all letters of a
/// text.</param>
public readonly record struct PlacedGlyph(char Character, Glyph Glyph, Point2 At, double Scale)
{
    /// <summary>Where its origin stands on a drawing.</summary>
    /// <param name="start">Start of the text's baseline.</param>
    /// <param name="height">Height of the text's capitals, mm.</param>
    /// <param name="angle">Direction of reading from the x axis, radians.</param>
    public Point2 OriginIn(Point2 start, double height, double angle) => start + ((At - Point2.Origin) * height).Turned(angle);

    /// <summary>Adds the strokes in a drawing's coordinates.</summary>
    /// <param name="start">Start of the text's baseline.</param>
    /// <param name="height">Height of the text's capitals, mm.</param>
    /// <param name="angle">Direction of reading from the x axis, radians.</param>
    /// <param name="strokes">Where the strokes go.</param>
    public void AddStrokes(Point2 start, double height, double angle, ImmutableArray<Path2>.Builder strokes)
    {
        var origin = OriginIn(start, height, angle);
        foreach (var stroke in Glyph.Strokes)
        {
            strokes.Add(Transformed(stroke, Scale * height, angle, origin));
        }
    }

    /// <summary>A path made larger by a factor, turned about the origin and moved there.</summary>
    internal static Path2 Transformed(Path2 path, double scale, double angle, Point2 origin)
    {
        var (sin, cos) = Math.SinCos(angle);
        var vertices = new PathVertex[path.Vertices.Length];
        for (var i = 0; i < vertices.Length; i++)
        {
            var (point, bulge) = path.Vertices[i];
            var (x, y) = (point.X * scale, point.Y * scale);
            vertices[i] = new(new(origin.X + (x * cos) - (y * sin), origin.Y + (x * sin) + (y * cos)), bulge);
        }

        return path.IsClosed ? Path2.Closed(vertices) : Path2.Open(vertices);
    }
}
