namespace PlanForge.Airframe.Diagnostics;

/// <summary>A file's text with its lines: turns offsets into positions. Lines end with LF, CR LF or CR.</summary>
internal sealed class SourceText
{
    private const char ByteOrderMark = '\uFEFF';
    private readonly List<int> _lineStarts = [0];

    /// <param name="file">The file's name as the user gave it.</param>
    /// <param name="text">The text; a byte order mark in front is not part of it.</param>
    public SourceText(string file, string text)
    {
        File = file;
        Text = text.StartsWith(ByteOrderMark) ? text[1..] : text;
        for (var i = 0; i < Text.Length; i++)
        {
            if (Text[i] == '\n' || (Text[i] == '\r' && (i + 1 == Text.Length || Text[i + 1] != '\n')))
            {
                _lineStarts.Add(i + 1);
            }
        }
    }

    public string File { get; }

    public string Text { get; }

    /// <summary>The position of the characters from one offset to another; what runs over the end of the line is left out.</summary>
    public SourcePosition At(int start, int end)
    {
        start = Math.Clamp(start, 0, Text.Length);
        var line = LineIndex(start);
        var length = Math.Min(end, LineEnd(line)) - start;
        return new(File, line + 1, start - _lineStarts[line] + 1, Math.Max(1, length));
    }

    /// <summary>All lines without their ends.</summary>
    public string[] Lines()
    {
        var lines = new string[_lineStarts.Count];
        for (var i = 0; i < lines.Length; i++)
        {
            lines[i] = Text[_lineStarts[i]..LineEnd(i)];
        }

        return lines;
    }

    /// <summary>The offset at which the line that holds an offset begins.</summary>
    public int LineStart(int offset) => _lineStarts[LineIndex(Math.Clamp(offset, 0, Text.Length))];

    private int LineIndex(int offset)
    {
        var index = _lineStarts.BinarySearch(offset);
        return index >= 0 ? index : ~index - 1;
    }

    private int LineEnd(int line)
    {
        var end = line + 1 < _lineStarts.Count ? _lineStarts[line + 1] : Text.Length;
        while (end > _lineStarts[line] && Text[end - 1] is '\n' or '\r')
        {
            end--;
        }

        return end;
    }
}
