using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>The fonts of a document: the signs it uses, 255 to a font, as many as the byte codes 1 to 255 can name.</summary>
internal sealed class StrokeFonts
{
    /// <summary>Most signs in a font: code 0 stays free, as some readers take it for the end of a text.</summary>
    public const int SignsPerFont = 255;

    private readonly Repertoire _repertoire;
    private readonly int[] _numbers;

    /// <summary>Collects the signs that the texts of all drawings use and reserves the fonts they need.</summary>
    public StrokeFonts(PdfFile file, IEnumerable<Drawing> drawings)
    {
        _repertoire = new(drawings);
        _numbers = new int[(_repertoire.Signs.Length + SignsPerFont - 1) / SignsPerFont];
        for (var font = 0; font < _numbers.Length; font++)
        {
            _numbers[font] = file.Reserve();
        }
    }

    /// <summary>The font of a sign, from 0, and its code there, 1 to 255. The sign must be one of the document's.</summary>
    public (int Font, int Code) Find(string text, (int Start, int End) sign)
    {
        var place = _repertoire.PlaceOf(text, sign);
        return (place / SignsPerFont, (place % SignsPerFont) + 1);
    }

    /// <summary>Appends the name by which content streams refer to a font.</summary>
    public static ByteText AppendResourceName(ByteText text, int font) => text.Append("/Letters"u8).Append(font);

    /// <summary>Appends the resource entry of a page or form.</summary>
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
            var from = font * SignsPerFont;
            var count = Math.Min(SignsPerFont, _repertoire.Signs.Length - from);
            StrokeFont.Write(file, _numbers[font], _repertoire.Signs.AsSpan(from, count));
        }
    }
}
