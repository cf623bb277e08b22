using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Drafting.Lettering.Alphabet;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>Draws a glyph from its definition.</summary>
/// <remarks>
/// A definition is written in tenths of the height of a capital and is one of
/// <list type="bullet">
/// <item><c>0,0 3,10 6,0 ; 1,4 5,4</c>: strokes, points apart by spaces, strokes apart by <c>;</c>. <c>^90</c> after a point
/// makes the way to the next point an arc that turns 90° to the left, <c>^-90</c> to the right; <c>z</c> closes a stroke.</item>
/// <item><c>=A´</c>: another character with a mark over or under its middle, or at the place <c>=a˛@4</c>; strokes may follow.</item>
/// <item><c>^2</c>: another character raised and made smaller.</item>
/// <item><c>1⁄2</c>: a fraction.</item>
/// </list>
/// The pen's leftmost point becomes x = 0, so that the gap to the letter before is the same for all letters.
/// </remarks>
internal static class GlyphPen
{
    private const double Unit = 0.1;

    /// <summary>Draws a definition; other characters it refers to come from <paramref name="find"/>.</summary>
    public static Glyph Draw(ReadOnlySpan<char> definition, Func<char, Glyph?> find)
    {
        if (definition[0] == '^')
        {
            return Fitted(Scaled(Required(find, definition[1]).Strokes, Fraction.Scale, new(0, Fraction.Raise)));
        }

        if (definition.Contains(Fraction.Slash))
        {
            return FractionGlyph(definition.ToString());
        }

        var strokes = ImmutableArray.CreateBuilder<Path2>();
        if (definition[0] == '=')
        {
            var space = definition.IndexOf(' ');
            var reference = space < 0 ? definition : definition[..space];
            AddReference(reference, find, strokes);
            definition = space < 0 ? [] : definition[(space + 1)..];
        }

        AddStrokes(definition, strokes);
        return Fitted(strokes.ToImmutable());
    }

    private static void AddReference(
        ReadOnlySpan<char> reference, Func<char, Glyph?> find, ImmutableArray<Path2>.Builder strokes)
    {
        var letter = Required(find, reference[1]);
        strokes.AddRange(letter.Strokes);
        if (reference.Length < 3)
        {
            return;
        }

        var mark = Marks.Find(reference[2]);
        var x = reference.Length > 3 ? Number(reference[4..]) * Unit : letter.Bounds.Centre.X;
        var y = mark.IsAbove ? letter.Bounds.MaxY : 0;
        var drawn = ImmutableArray.CreateBuilder<Path2>();
        AddStrokes(mark.Definition, drawn);
        strokes.AddRange(Scaled(drawn.ToImmutable(), 1, new(x, y)));
    }

    private static void AddStrokes(ReadOnlySpan<char> definition, ImmutableArray<Path2>.Builder strokes)
    {
        var vertices = new List<PathVertex>();
        while (!definition.IsEmpty)
        {
            var space = definition.IndexOf(' ');
            var token = space < 0 ? definition : definition[..space];
            definition = space < 0 ? [] : definition[(space + 1)..];
            if (token is "z")
            {
                strokes.Add(Path2.Closed(vertices));
                vertices.Clear();
            }
            else if (token is not ";")
            {
                vertices.Add(Vertex(token));
                continue;
            }
            else if (vertices.Count > 0)
            {
                strokes.Add(Path2.Open(vertices));
                vertices.Clear();
            }
        }

        if (vertices.Count > 0)
        {
            strokes.Add(Path2.Open(vertices));
        }
    }

    private static PathVertex Vertex(ReadOnlySpan<char> token)
    {
        var arc = token.IndexOf('^');
        var place = arc < 0 ? token : token[..arc];
        var comma = place.IndexOf(',');
        var point = new Point2(Number(place[..comma]) * Unit, Number(place[(comma + 1)..]) * Unit);
        return new(point, arc < 0 ? 0 : BulgeOf(Number(token[(arc + 1)..])));
    }

    // The tangent of 45° is not 1 in floating point, and a circle is known by bulges of exactly 1.
    private static double BulgeOf(double degrees) =>
        Math.Abs(degrees) == 180 ? Math.Sign(degrees) : Math.Tan(degrees * Math.PI / 720);

    private static double Number(ReadOnlySpan<char> text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static Glyph Required(Func<char, Glyph?> find, char character) =>
        find(character) ?? throw new InvalidOperationException($"The alphabet refers to '{character}', which it does not define.");

    private static Glyph FractionGlyph(string text)
    {
        var strokes = ImmutableArray.CreateBuilder<Path2>();
        foreach (var placed in TextLayout.Of(text).Glyphs)
        {
            strokes.AddRange(Scaled(placed.Glyph.Strokes, placed.Scale, placed.At - Point2.Origin));
        }

        return Fitted(strokes.ToImmutable());
    }

    private static Glyph Fitted(ImmutableArray<Path2> strokes)
    {
        var bounds = new Glyph(0, strokes).Bounds;
        return new(bounds.Width + StrokeAlphabet.Spacing, bounds.MinX == 0 ? strokes : Scaled(strokes, 1, new(-bounds.MinX, 0)));
    }

    private static ImmutableArray<Path2> Scaled(ImmutableArray<Path2> strokes, double scale, Vector2 shift)
    {
        var result = ImmutableArray.CreateBuilder<Path2>(strokes.Length);
        foreach (var stroke in strokes)
        {
            result.Add(PlacedGlyph.Transformed(stroke, scale, 0, Point2.Origin + shift));
        }

        return result.MoveToImmutable();
    }
}
