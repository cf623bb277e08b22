namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>The text of an SVG file with its lines, to find places in it.</summary>
internal sealed class SvgText
{
    private readonly List<int> _lines = [0];

    public SvgText(string text)
    {
        Text = text;
        for (var i = text.IndexOf('\n'); i >= 0; i = text.IndexOf('\n', i + 1))
        {
            _lines.Add(i + 1);
        }
    }

    public string Text { get; }

    /// <summary>The line and column of a character.</summary>
    public TextPlace PlaceOf(int offset)
    {
        var line = _lines.BinarySearch(offset);
        line = line < 0 ? ~line - 1 : line;
        return new(line + 1, offset - _lines[line] + 1);
    }

    /// <summary>Where the value of an attribute begins whose name stands at a place.</summary>
    public int ValueAfter(int line, int column)
    {
        var start = Math.Min(Text.Length, _lines[Math.Clamp(line - 1, 0, _lines.Count - 1)] + column - 1);
        var equals = Text.IndexOf('=', start);
        var quote = equals < 0 ? -1 : Text.AsSpan(equals).IndexOfAny('"', '\'');
        return quote < 0 ? start : equals + quote + 1;
    }
}
