using System.Text;

namespace PlanForge.Airframe.Diagnostics;

/// <summary>Writes a finding for a reader at a terminal: the message, the line it speaks of, and carets below the place.</summary>
public static class DiagnosticText
{
    // Fits beside nothing else on a terminal of 100 columns; longer lines show a window around the place.
    private const int WindowWidth = 96;

    // How much of a long line is shown before the place; less would hide the key, more would hide the value.
    private const int WindowLead = 32;

    /// <summary>
    /// <c>file:line:column: error: text</c>, then the source line, then a line of carets; lines are parted by <c>\n</c> and the
    /// last has none. Only the message when it speaks of the file as a whole or of a line that is not there.
    /// </summary>
    /// <remarks>
    /// Tabs are kept in front of the carets, so that they stand right whatever the tab width. Characters that cannot be
    /// printed are shown as U+FFFD: a description must not be able to drive the terminal.
    /// </remarks>
    /// <param name="diagnostic">The finding.</param>
    /// <param name="lines">The lines of the file the finding is about, as <see cref="Lines"/> gives them.</param>
    public static string Render(Diagnostic diagnostic, IReadOnlyList<string> lines)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        ArgumentNullException.ThrowIfNull(lines);
        if (diagnostic.At.Line < 1 || diagnostic.At.Line > lines.Count)
        {
            return diagnostic.ToString();
        }

        var line = lines[diagnostic.At.Line - 1];
        var start = Math.Clamp(diagnostic.At.Column - 1, 0, line.Length);
        var end = Math.Clamp(start + diagnostic.At.Length, start, line.Length);
        var first = line.Length <= WindowWidth ? 0 : Math.Clamp(start - WindowLead, 0, line.Length - WindowWidth);
        var last = Math.Min(line.Length, first + WindowWidth);

        // A window must not cut a character of two units apart.
        first -= first > 0 && char.IsLowSurrogate(line[first]) ? 1 : 0;
        last -= last < line.Length && char.IsLowSurrogate(line[last]) ? 1 : 0;

        var result = new StringBuilder(diagnostic.ToString()).Append('\n');
        var carets = new StringBuilder();
        if (first > 0)
        {
            result.Append('…');
            carets.Append(' ');
        }

        for (var i = first; i < last; i++)
        {
            var character = line[i];
            result.Append(character != '\t' && Quote.IsUnprintable(character) ? '\uFFFD' : character);
            if (IsDrawnOverTheOneBefore(character))
            {
                continue;
            }

            if (i < start)
            {
                carets.Append(character == '\t' ? '\t' : ' ');
            }
            else if (i < end)
            {
                carets.Append('^');
            }
        }

        result.Append(last < line.Length ? "…" : "");
        if (start >= end)
        {
            carets.Append('^');
        }

        return result.Append('\n').Append(carets).ToString();
    }

    /// <summary>The lines of a text as findings count them: they end with LF, CR LF or CR; a byte order mark is no part of the first.</summary>
    public static IReadOnlyList<string> Lines(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new SourceText("", text).Lines();
    }

    private static bool IsDrawnOverTheOneBefore(char character) => char.IsLowSurrogate(character)
        || char.GetUnicodeCategory(character) is System.Globalization.UnicodeCategory.NonSpacingMark
            or System.Globalization.UnicodeCategory.EnclosingMark;
}
