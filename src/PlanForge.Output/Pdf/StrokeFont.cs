using PlanForge.Drafting.Lettering;
using PlanForge.Geometry;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Pdf;

/// <summary>
/// The single-stroke alphabet as a Type 3 font (ISO 32000-1, 9.6.5): each glyph is a little drawing with a pen, so lettering
/// is drawn in single strokes and is still text to search and copy.
/// </summary>
internal static class StrokeFont
{
    // Glyphs are drawn in thousandths of the height of capitals, as fonts are by custom.
    private const double UnitsPerHeight = 1000;

    // A thousandth of a unit is 2e-5 mm in letters 20 mm high, the largest of ISO 3098.
    private const int GlyphDecimals = 3;

    // In those letters one unit is 0.02 mm.
    private const double GlyphTolerance = CurveTolerance.Bezier / 0.02;

    /// <summary>Writes a font with its glyphs and its map to Unicode.</summary>
    /// <param name="file">Where it goes.</param>
    /// <param name="number">Its reserved number.</param>
    /// <param name="signs">The signs of the codes 1, 2, 3 and so on.</param>
    /// <param name="kept">What is kept from earlier files.</param>
    public static void Write(PdfFile file, int number, ReadOnlySpan<string> signs, KeptPages kept)
    {
        var bounds = Bounds2.Empty;
        var widths = new ByteText();
        var names = new ByteText();
        var procedures = new ByteText();
        foreach (var sign in signs)
        {
            var (glyph, drawn) = kept.Glyphs.Of(sign, () => Drawn(sign));
            var procedure = file.Reserve();
            file.WriteStream(procedure, drawn);
            widths.Append(" "u8).Append(glyph.Advance * UnitsPerHeight, GlyphDecimals);
            AppendName(names.Append(" "u8), sign);
            AppendName(procedures.Append(" "u8), sign).Append(" "u8).AppendReference(procedure);
            bounds = bounds.Joined(glyph.Bounds);
        }

        var toUnicode = file.Reserve();
        file.WriteStream(toUnicode, CharacterMap.Of(signs));
        var text = file.Begin(number);
        text.Append("<< /Type /Font /Subtype /Type3 /FontMatrix [0.001 0 0 0.001 0 0] /FontBBox "u8);
        AppendBounds(text, bounds.IsEmpty ? default : bounds.Grown(StrokeAlphabet.StrokeWidth / 2));
        text.Append("\n/FirstChar 1 /LastChar "u8).Append(signs.Length).Append(" /Widths ["u8).Append(widths.Written)
            .Append(" ]\n/Encoding << /Type /Encoding /Differences [ 1"u8).Append(names.Written)
            .Append(" ] >>\n/CharProcs <<"u8).Append(procedures.Written)
            .Append(" >>\n/Resources << >> /ToUnicode "u8).AppendReference(toUnicode).Append(" >>"u8);
        file.End();
    }

    private static (Glyph Glyph, PackedStream Procedure) Drawn(string sign)
    {
        var glyph = GlyphOf(sign);
        return (glyph, PackedStream.Of(ProcedureOf(glyph)));
    }

    /// <summary>A character's glyph; a fraction's strokes as one glyph, without the space before it that the lettering closes.</summary>
    private static Glyph GlyphOf(string sign)
    {
        if (sign.Length == 1)
        {
            return StrokeAlphabet.GlyphOf(sign[0]);
        }

        var fraction = sign.TrimStart(' ');
        return new(
            StrokeAlphabet.WidthOf(fraction, 1) + StrokeAlphabet.LetterGap + StrokeAlphabet.StrokeWidth,
            TextLayout.StrokesOf(fraction, Point2.Origin, 1, 0));
    }

    /// <summary>The width first (d0: the glyph takes the page's colour), then a round pen without dashes, then the strokes.</summary>
    private static ReadOnlySpan<byte> ProcedureOf(Glyph glyph)
    {
        var text = new ByteText(256);
        text.Append(glyph.Advance * UnitsPerHeight, GlyphDecimals).Append(" 0 d0\n"u8);
        if (glyph.Strokes.IsEmpty)
        {
            return text.Written;
        }

        text.Append(StrokeAlphabet.StrokeWidth * UnitsPerHeight, GlyphDecimals).Append(" w 1 J 1 j [] 0 d\n"u8);
        var path = new PdfPath(text, GlyphDecimals, GlyphTolerance);
        foreach (var stroke in glyph.Strokes)
        {
            path.Append(stroke, UnitsPerHeight);
        }

        return text.Append("S\n"u8).Written;
    }

    /// <summary>Letters keep their names, by which some readers judge the size of a font; other signs are named by number.</summary>
    private static ByteText AppendName(ByteText text, string sign)
    {
        if (sign.Length == 1 && char.IsAsciiLetter(sign[0]))
        {
            return text.Append("/"u8).Append((byte)sign[0]);
        }

        text.Append("/uni"u8);
        foreach (var character in sign)
        {
            text.AppendHex(character, digits: 4);
        }

        return text;
    }

    private static void AppendBounds(ByteText text, Bounds2 bounds)
    {
        text.Append("["u8).Append(bounds.MinX * UnitsPerHeight, GlyphDecimals);
        text.Append(" "u8).Append(bounds.MinY * UnitsPerHeight, GlyphDecimals);
        text.Append(" "u8).Append(bounds.MaxX * UnitsPerHeight, GlyphDecimals);
        text.Append(" "u8).Append(bounds.MaxY * UnitsPerHeight, GlyphDecimals).Append("]"u8);
    }
}
