using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>Where each letter of one line of text stands; everything that draws or measures lettering goes through here.</summary>
/// <remarks>
/// Figures before and after U+2044 FRACTION SLASH are lettered as a fraction, small and raised or lowered (<c>2 1⁄4</c>,
/// <c>3⁄64</c>); the space between a whole number and its fraction is narrowed to the letter gap. An ordinary slash stays one.
/// </remarks>
/// <param name="Glyphs">The letters in reading order for a text height of 1, from (0, 0) along the x axis; spaces left out.</param>
/// <param name="Width">From the start of the first letter to the end of the last, in heights of a capital; 0 for an empty text.</param>
public sealed record TextLayout(ImmutableArray<PlacedGlyph> Glyphs, double Width)
{
    /// <summary>Lays out one line of text.</summary>
    public static TextLayout Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var layout = new Builder(ImmutableArray.CreateBuilder<PlacedGlyph>(text.Length));
        var width = Place(text, layout);
        return new(layout.ToImmutable(), width);
    }

    /// <summary>The width alone, in heights of a capital.</summary>
    public static double WidthOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Place(text, new(null));
    }

    private static double Place(string text, Builder layout)
    {
        var x = 0.0;

        // Most texts hold no fraction: then one need not be looked for at each letter.
        if (!text.Contains(Fraction.Slash, StringComparison.Ordinal))
        {
            foreach (var character in text)
            {
                x += layout.Add(character, new(x, 0), 1);
            }

            return text.Length == 0 ? 0 : x - StrokeAlphabet.Spacing;
        }

        var fractionEnd = -1;
        for (var i = 0; i < text.Length;)
        {
            if (Fraction.At(text, i) is { } fraction)
            {
                x = Fraction.Place(text, i, fraction, x, layout) + StrokeAlphabet.Spacing;
                i = fractionEnd = fraction.End;
                continue;
            }

            if (i == fractionEnd || !IsBetweenNumberAndFraction(text, i))
            {
                x += layout.Add(text[i], new(x, 0), 1);
            }

            i++;
        }

        return x - StrokeAlphabet.Spacing;
    }

    /// <summary>The strokes of a text on a drawing, as the pen's middle lines in the drawing's coordinates.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="at">Start of the baseline.</param>
    /// <param name="height">Height of capitals, mm.</param>
    /// <param name="angle">Direction of reading from the x axis, radians.</param>
    public static ImmutableArray<Path2> StrokesOf(string text, Point2 at, double height, double angle)
    {
        var strokes = ImmutableArray.CreateBuilder<Path2>();
        foreach (var placed in Of(text).Glyphs)
        {
            placed.AddStrokes(at, height, angle, strokes);
        }

        return strokes.ToImmutable();
    }

    private static bool IsBetweenNumberAndFraction(string text, int i) =>
        text[i] == ' ' && i > 0 && char.IsAsciiDigit(text[i - 1]) && Fraction.At(text, i + 1) is not null;

    /// <summary>Collects placed letters, or only tells how far they advance.</summary>
    /// <param name="glyphs">Takes the letters; null where they are only measured.</param>
    internal readonly struct Builder(ImmutableArray<PlacedGlyph>.Builder? glyphs)
    {
        /// <summary>Adds a letter and returns its advance at its size.</summary>
        public double Add(char character, Point2 at, double scale)
        {
            var glyph = StrokeAlphabet.GlyphOf(character);
            if (glyph.Strokes.Length > 0)
            {
                glyphs?.Add(new(character, glyph, at, scale));
            }

            return glyph.Advance * scale;
        }

        public ImmutableArray<PlacedGlyph> ToImmutable() => glyphs!.ToImmutable();
    }
}
