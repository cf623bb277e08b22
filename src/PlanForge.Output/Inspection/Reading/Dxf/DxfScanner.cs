using System.Globalization;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>Reads a DXF text group by group, with one group to look back at.</summary>
internal sealed class DxfScanner(string text, FindingList findings)
{
    // Group codes run from -5 to 1071 (DXF reference, group code ranges; from memory).
    private const int LeastCode = -5;
    private const int GreatestCode = 1071;

    private int _position;
    private int _line = 1;
    private bool _isBack;

    /// <summary>The group read last.</summary>
    public DxfTag Tag { get; private set; }

    /// <summary>True when the text broke off or holds what is no group.</summary>
    public bool IsBroken { get; private set; }

    /// <summary>Goes on to the next group.</summary>
    /// <returns>False at the end of the text, or where it is at fault; that is said then.</returns>
    public bool Read()
    {
        if (_isBack)
        {
            _isBack = false;
            return true;
        }

        if (IsBroken || _position >= text.Length)
        {
            return false;
        }

        var line = _line;
        var code = NextLine();
        if (!int.TryParse(code.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) || number is < LeastCode or > GreatestCode)
        {
            IsBroken = true;
            if (_position < text.Length || !code.Trim().IsEmpty)
            {
                findings.Fault(FindingCode.Syntax, new(line, 1), $"{Words.Quote(code.Trim())} is no group code: a whole number from -5 to 1071 has to stand here");
            }

            return false;
        }

        if (_position >= text.Length)
        {
            IsBroken = true;
            findings.Fault(FindingCode.Syntax, new(line, 1), "the file breaks off after a group code: its value is missing");
            return false;
        }

        Tag = new(number, NextLine().Trim().ToString(), line);
        return true;
    }

    /// <summary>The group read last is to be read again.</summary>
    public void GoBack() => _isBack = true;

    /// <summary>Goes on to the next group of a section.</summary>
    /// <returns>False at its end, which is read over; where another section or the file's end stands instead, that is said.</returns>
    public bool ReadInSection()
    {
        if (!Read())
        {
            return false;
        }

        if (Tag.Is(0, "EOF") || Tag.Is(0, "SECTION"))
        {
            findings.Fault(FindingCode.Syntax, Tag.At, "the section before this is not closed; 0 ENDSEC is missing");
            GoBack();
            return false;
        }

        return !Tag.Is(0, "ENDSEC");
    }

    private ReadOnlySpan<char> NextLine()
    {
        var rest = text.AsSpan(_position);
        var end = rest.IndexOf('\n');
        var line = end < 0 ? rest : rest[..end];
        _position = end < 0 ? text.Length : _position + end + 1;
        _line++;
        return line.EndsWith("\r") ? line[..^1] : line;
    }
}
