using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Pdf;

/// <summary>
/// The single-stroke alphabet as Type 3 fonts (ISO 32000-1, 9.6.5): each glyph is a little drawing with a pen, so lettering
/// is drawn in single strokes and is still text to search and copy. A font holds the 255 characters its byte codes can name;
/// the used characters in order of their Unicode numbers fill as many fonts as they need.
/// </summary>
internal sealed class StrokeFonts
{
    /// <summary>Most glyphs in a font: code 0 stays free, as some readers take it for the end of a text.</summary>
    public const int GlyphsPerFont = 255;

    // Glyphs are drawn in thousandths of the height of capitals, as fonts are by custom.
    private const double UnitsPerHeight = 1000;

    // ISO 3098 type B: the pen is a tenth of the height (secondary source: shared/check-values.md section 5).
    private const double PenUnits = UnitsPerHeight / 10;

    // A thousandth of a unit is 2e-5 mm in letters 20 mm high, the largest of ISO 3098.
    private const int GlyphDecimals = 3;

    // In those letters one unit is 0.02 mm.
    private const double GlyphTolerance = CurveTolerance.Bezier / 0.02;

    private readonly Func<char, Glyph> _alphabet;
    private readonly char[] _characters;
    private readonly ushort[] _places = new ushort[char.MaxValue + 1];
    private readonly int[] _numbers;

    /// <summary>Collects the characters that the texts of a set use and reserves the fonts they need.</summary>
    /// <param name="file">The file the fonts go to.</param>
    /// <param name="set">The sheets.</param>
    /// <param name="alphabet">The glyph of each character.</param>
    public StrokeFonts(PdfFile file, SheetSet set, Func<char, Glyph> alphabet)
    {
        _alphabet = alphabet;
        var count = 0;
        foreach (var sheet in set.Sheets)
        {
            foreach (var item in sheet.Drawing.Items)
            {
                if (item is DrawingItem.Text text)
                {
                    foreach (var character in text.Content)
                    {
                        count += _places[character] == 0 ? 1 : 0;
                        _places[character] = 1;
                    }
                }
            }
        }

        _characters = new char[count];
        var place = 0;
        for (var character = 0; place < count; character++)
        {
            if (_places[character] != 0)
            {
                _places[character] = (ushort)place;
                _characters[place++] = (char)character;
            }
        }

        _numbers = new int[(count + GlyphsPerFont - 1) / GlyphsPerFont];
        for (var font = 0; font < _numbers.Length; font++)
        {
            _numbers[font] = file.Reserve();
        }
    }

    /// <summary>The font of a character, from 0, and its code there, 1 to 255. The character must be one of the set's.</summary>
    public (int Font, int Code) Find(char character)
    {
        var place = _places[character];
        return (place / GlyphsPerFont, (place % GlyphsPerFont) + 1);
    }

    /// <summary>Appends the name by which content streams refer to a font.</summary>
    public static ByteText AppendResourceName(ByteText text, int font) => text.Append("/Letters"u8).Append(font);

    /// <summary>Appends a page's resource entry.</summary>
    public void AppendResources(ByteText text)
    {
        text.Append("/Font <<"u8);
        for (var font = 0; font < _numbers.Length; font++)
        {
            AppendResourceName(text.Append(" "u8), font).Append(" "u8).AppendReference(_numbers[font]);
        }

        text.Append(" >>"u8);
    }

    /// <summary>Writes the fonts with their glyphs.</summary>
    public void Write(PdfFile file)
    {
        for (var font = 0; font < _numbers.Length; font++)
        {
            var from = font * GlyphsPerFont;
            WriteFont(file, _numbers[font], _characters.AsSpan(from, Math.Min(GlyphsPerFont, _characters.Length - from)));
        }
    }

    private void WriteFont(PdfFile file, int number, ReadOnlySpan<char> characters)
    {
        var bounds = Bounds2.Empty;
        var widths = new ByteText();
        var names = new ByteText();
        var procedures = new ByteText();
        foreach (var character in characters)
        {
            var glyph = _alphabet(character);
            var procedure = file.Reserve();
            file.WriteStream(procedure, ProcedureOf(glyph));
            widths.Append(" "u8).Append(glyph.Advance * UnitsPerHeight, GlyphDecimals);
            AppendGlyphName(names.Append(" "u8), character);
            AppendGlyphName(procedures.Append(" "u8), character).Append(" "u8).AppendReference(procedure);
            foreach (var stroke in glyph.Strokes)
            {
                bounds = bounds.Joined(stroke.Bounds);
            }
        }

        var toUnicode = file.Reserve();
        file.WriteStream(toUnicode, CharacterMap.Of(characters));
        var text = file.Begin(number);
        text.Append("<< /Type /Font /Subtype /Type3 /FontMatrix [0.001 0 0 0.001 0 0] /FontBBox "u8);
        AppendBounds(text, bounds.IsEmpty ? default : bounds.Grown(PenUnits / UnitsPerHeight / 2));
        text.Append("\n/FirstChar 1 /LastChar "u8).Append(characters.Length).Append(" /Widths ["u8).Append(widths.Written)
            .Append(" ]\n/Encoding << /Type /Encoding /Differences [ 1"u8).Append(names.Written)
            .Append(" ] >>\n/CharProcs <<"u8).Append(procedures.Written)
            .Append(" >>\n/Resources << >> /ToUnicode "u8).AppendReference(toUnicode).Append(" >>"u8);
        file.End();
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

        text.Append(PenUnits, GlyphDecimals).Append(" w 1 J 1 j [] 0 d\n"u8);
        var path = new PdfPath(text, GlyphDecimals, GlyphTolerance);
        foreach (var stroke in glyph.Strokes)
        {
            path.Append(stroke, UnitsPerHeight);
        }

        return text.Append("S\n"u8).Written;
    }

    /// <summary>Letters keep their names, by which some readers judge the size of a font; the others are named by number.</summary>
    private static ByteText AppendGlyphName(ByteText text, char character) => char.IsAsciiLetter(character)
        ? text.Append("/"u8).Append((byte)character)
        : text.Append("/uni"u8).AppendHex(character, digits: 4);

    private static void AppendBounds(ByteText text, Bounds2 bounds)
    {
        text.Append("["u8).Append(bounds.MinX * UnitsPerHeight, GlyphDecimals);
        text.Append(" "u8).Append(bounds.MinY * UnitsPerHeight, GlyphDecimals);
        text.Append(" "u8).Append(bounds.MaxX * UnitsPerHeight, GlyphDecimals);
        text.Append(" "u8).Append(bounds.MaxY * UnitsPerHeight, GlyphDecimals).Append("]"u8);
    }
}
