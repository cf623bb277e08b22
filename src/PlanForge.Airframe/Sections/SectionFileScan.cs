using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Sections;

/// <summary>The lines of a coordinate file told apart: title, then pairs of numbers; remarks and blank lines fall away.</summary>
internal sealed class SectionFileScan
{
    // After so many faults of one kind the file is of another kind altogether.
    private const int GreatestFaultCount = 20;

    private readonly string _fileName;
    private readonly List<Diagnostic> _findings;

    private SectionFileScan(string fileName, List<Diagnostic> findings)
    {
        _fileName = fileName;
        _findings = findings;
    }

    /// <summary>The text of the first line that is not numbers, or empty.</summary>
    public string Title { get; private set; } = "";

    /// <summary>The pairs in the order of the file, the faulty ones left out.</summary>
    public List<ListedPoint> Rows { get; } = [];

    /// <summary>How many lines were meant as pairs of numbers but are not.</summary>
    public int FaultyRowCount { get; private set; }

    /// <summary>Reads the lines, adding what is wrong with them to the findings.</summary>
    public static SectionFileScan Of(string fileName, string text, List<Diagnostic> findings)
    {
        var scan = new SectionFileScan(fileName, findings);
        var number = 0;
        foreach (var line in Lines(text.TrimStart('\uFEFF')))
        {
            number++;
            var tokens = CoordinateToken.Split(line);
            if (tokens.Count > 0)
            {
                scan.Take(line, number, tokens);
            }
        }

        return scan;
    }

    // Line ends of all systems: LF, CR LF and CR alone.
    private static IEnumerable<string> Lines(string text)
    {
        var start = 0;
        while (start <= text.Length)
        {
            var length = text.AsSpan(start).IndexOfAny('\r', '\n');
            var end = length < 0 ? text.Length : start + length;
            yield return text[start..end];
            start = end + (end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n' ? 2 : 1);
        }
    }

    private void Take(string line, int number, List<CoordinateToken> tokens)
    {
        if (Rows.Count + FaultyRowCount == 0 && IsTitle(tokens))
        {
            Title = Title.Length == 0 ? SectionTitle.Of(line) : Title;
            return;
        }

        var fault = tokens.Count == 2 ? null : FaultOfCount(line, number, tokens);
        if (fault is null)
        {
            var (x, xFault) = tokens[0].Read();
            var (y, yFault) = tokens[1].Read();
            if ((xFault ?? yFault) is null)
            {
                var end = tokens[1].Column + tokens[1].Text.Length;
                Rows.Add(new(new(x, y), new(_fileName, number, tokens[0].Column, end - tokens[0].Column)));
                return;
            }

            var bad = tokens[xFault is null ? 1 : 0];
            fault = Diagnostic.Error(new(_fileName, number, bad.Column, bad.Text.Length), xFault ?? yFault ?? "");
        }

        FaultyRowCount++;
        if (FaultyRowCount <= GreatestFaultCount)
        {
            _findings.Add(fault);
        }
        else if (FaultyRowCount == GreatestFaultCount + 1)
        {
            _findings.Add(Diagnostic.Error(fault.At, "this and the following lines are not read: too many are no pairs of numbers"));
        }
    }

    // A title may hold digits, even be a number, but not two numbers that could be the first point or the counts. A point with
    // a slip in it must not pass for a title, or it would be lost without a word: a decimal point gives it away.
    private static bool IsTitle(List<CoordinateToken> tokens)
    {
        var first = tokens[0];
        var isDecimal = first.Text.Contains('.', StringComparison.Ordinal) && first.Read().Fault is null;
        var looksNumeric = tokens.TrueForAll(token => token.LooksNumeric);
        return !(isDecimal && tokens.Count <= 2)
            && !(looksNumeric && tokens.Exists(token => token.Text.Contains('.', StringComparison.Ordinal)))
            && !(looksNumeric && tokens.Count > 1 && tokens.TrueForAll(token => token.Read().Fault is null));
    }

    private Diagnostic FaultOfCount(string line, int number, List<CoordinateToken> tokens)
    {
        if (tokens.Count == 1)
        {
            var only = tokens[0];
            var (_, fault) = only.Read();
            return Diagnostic.Error(
                new(_fileName, number, only.Column, only.Text.Length),
                fault is null ? "one number where x and y are expected" : $"'{only.Text}' is not a point: x and y are expected");
        }

        var third = tokens[2];
        var end = tokens[^1].Column + tokens[^1].Text.Length;
        var isDecimalComma = tokens.Count == 4 && line.Contains(',', StringComparison.Ordinal);
        var hint = isDecimalComma ? "; decimals are written with a point, not a comma" : "";
        return Diagnostic.Error(
            new(_fileName, number, third.Column, end - third.Column),
            FormattableString.Invariant($"{tokens.Count} columns where x and y are expected{hint}"));
    }
}
