using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>The project's own single-stroke alphabet after the proportions of ISO 3098 type B, upright.</summary>
/// <remarks>
/// Heights are measured between the middle lines of the strokes. Proportions in heights of a capital: stroke 1/10, small
/// letters 7/10, gap between letters 2/10 and between words 6/10 (clear of ink). Source: ISO 3098-0 type B as quoted in
/// shared/check-values.md section 5 (secondary source).
/// </remarks>
public static class StrokeAlphabet
{
    /// <summary>Width of the pen in heights of a capital.</summary>
    public const double StrokeWidth = 0.1;

    /// <summary>Height of small letters without ascender in heights of a capital.</summary>
    public const double SmallLetterHeight = 0.7;

    /// <summary>Clear space between the ink of two letters in heights of a capital.</summary>
    public const double LetterGap = 0.2;

    /// <summary>Clear space between the ink of two words in heights of a capital.</summary>
    public const double WordGap = 0.6;

    /// <summary>From the right edge of a letter's middle lines to the left edge of the next letter's, in heights of a capital.</summary>
    internal const double Spacing = LetterGap + StrokeWidth;

    /// <summary>How far a letter lies below the baseline at most (tails), in heights of a capital.</summary>
    internal const double Descent = 0.3;

    private static readonly GlyphTable Table = new();

    private static readonly Glyph MissingGlyph = new(0.6 + Spacing, [Path2.Rectangle(new Bounds2(0, 0, 0.6, 1))]);

    /// <summary>The glyph of a character, or null where the alphabet has none.</summary>
    public static Glyph? Find(char character) => Table.Find(character);

    /// <summary>The glyph of a character; a hollow box stands for characters the alphabet lacks.</summary>
    public static Glyph GlyphOf(char character) => Find(character) ?? MissingGlyph;

    /// <summary>Length of a text from the start of its first letter to the end of its last, mm (the last letter gap left out).</summary>
    /// <remarks>The pen itself reaches half its width, height / 20, beyond both ends.</remarks>
    /// <param name="text">One line of text; see <see cref="TextLayout"/> for how fractions are written.</param>
    /// <param name="height">Height of capitals, mm.</param>
    public static double WidthOf(string text, double height) => TextLayout.WidthOf(text) * height;
}
