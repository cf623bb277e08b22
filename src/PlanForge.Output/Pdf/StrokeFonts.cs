using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>The fonts of a repertoire of signs, 255 to a font, as many as the byte codes 1 to 255 can name.</summary>
internal sealed class StrokeFonts
{
    /// <summary>Most signs in a font: code 0 stays free, as some readers take it for the end of a text.</summary>
    public const int SignsPerFont = 255;

    private readonly Repertoire _repertoire;
    private readonly int[] _numbers;

    /// <summary>Reserves the fonts that a repertoire needs.</summary>
    public StrokeFonts(PdfFile file, Repertoire repertoire)
    {
        _repertoire = repertoire;
        _numbers = new int[(_repertoire.Signs.Length + SignsPerFont - 1) / SignsPerFont];
        for (var font = 0; font < _numbers.Length; font++)
        {
            _numbers[font] = file.Reserve();
        }
    }

    /// <summary>Appends its fonts to the resource entry of a page or form.</summary>
    public void AppendEntries(ByteText text)
    {
        for (var font = 0; font < _numbers.Length; font++)
        {
            _repertoire.AppendResourceName(text.Append(" "u8), font).Append(" "u8).AppendReference(_numbers[font]);
        }
    }

    /// <summary>Writes the fonts with their glyphs.</summary>
    public void Write(PdfFile file, KeptPages kept)
    {
        for (var font = 0; font < _numbers.Length; font++)
        {
            var from = font * SignsPerFont;
            var count = Math.Min(SignsPerFont, _repertoire.Signs.Length - from);
            StrokeFont.Write(file, _numbers[font], _repertoire.Signs.AsSpan(from, count), kept);
        }
    }
}
