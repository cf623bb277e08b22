using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>The project's own single-stroke alphabet after the proportions of ISO 3098 type B, upright.</summary>
public static class StrokeAlphabet
{
    /// <summary>The glyph of a character, or null where the alphabet has none.</summary>
    public static Glyph? Find(char character) => throw new NotImplementedException(character.ToString());

    /// <summary>The glyph of a character; a hollow box stands for characters the alphabet lacks.</summary>
    public static Glyph GlyphOf(char character) => Find(character) ?? MissingGlyph;

    /// <summary>Length of a text from the start of its first letter to the end of its last, mm (the last letter gap left out).</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="height">Height of capitals, mm.</param>
    public static double WidthOf(string text, double height) => throw new NotImplementedException(text + height);

    private static Glyph MissingGlyph { get; } = new(0.8, [Path2.Rectangle(new Bounds2(0, 0, 0.6, 1))]);
}
