using PlanForge.Airframe.Diagnostics;
using YamlDotNet.Core;

namespace PlanForge.Airframe.Reading.Yaml;

/// <summary>Turns what stopped the YAML parser into a finding with the best place for it.</summary>
internal static class SyntaxFault
{
    // A backslash, U and eight digits: the one escape that can miss all characters.
    private const int LongEscapeLength = 10;

    /// <summary>Reports a fault.</summary>
    /// <param name="fault">What the parser threw.</param>
    /// <param name="source">The description.</param>
    /// <param name="lastIndex">The offset up to which the parser had given events.</param>
    /// <param name="openBrackets">The offsets of the brackets open there, innermost first.</param>
    /// <param name="diagnostics">Receives the finding.</param>
    public static void Report(
        Exception fault, SourceText source, int lastIndex, IEnumerable<int> openBrackets, DiagnosticList diagnostics)
    {
        var (start, end) = fault is YamlException { Start.Index: var from, End.Index: var to }
            ? ((int?)from, (int)to)
            : (null, source.Text.Length);
        if (fault.Message.Contains("tab", StringComparison.Ordinal) && IndentingTab(source, lastIndex) is { } tab)
        {
            diagnostics.Error(source.At(tab, tab + 1), "a tab cannot indent; YAML indents with spaces");
            return;
        }

        if (start is not { } place || IsEndOfText(source, place))
        {
            foreach (var bracket in openBrackets.Prepend(LastBracket(source, lastIndex, start ?? source.Text.Length)))
            {
                if (bracket >= 0)
                {
                    diagnostics.Error(source.At(bracket, bracket + 1), $"`{source.Text[bracket]}` is opened here and never closed");
                    return;
                }
            }
        }

        if (fault is ArgumentException && source.Text.IndexOf("\\U", lastIndex, StringComparison.Ordinal) is >= 0 and var escape)
        {
            diagnostics.Error(source.At(escape, escape + LongEscapeLength), "this escape stands for no character");
            return;
        }

        place = start ?? lastIndex;
        diagnostics.Error(source.At(place, Math.Max(end, place + 1)), Wording(fault.Message, source, place));
    }

    private static string Wording(string message, SourceText source, int place)
    {
        if (message.Contains("quoted scalar, found unexpected end", StringComparison.Ordinal)
            || message.Contains("found wrong indentation", StringComparison.Ordinal))
        {
            return "the quotation mark is opened here and not closed in its line";
        }

        if (message.Contains("found invalid mapping", StringComparison.Ordinal))
        {
            return "a second `:` where a value stands; put a value with a colon in quotes, or begin a key in its own column";
        }

        if (message.Contains("expected ',' or", StringComparison.Ordinal))
        {
            return $"a comma or the closing `{(message.Contains('}', StringComparison.Ordinal) ? '}' : ']')}` is missing before this";
        }

        if (message.Contains("did not find expected key", StringComparison.Ordinal))
        {
            return "a key with a colon is expected here, in the column of the keys before it";
        }

        if (message.Contains("entries are not allowed", StringComparison.Ordinal))
        {
            return "a list begins on a line of its own or stands in square brackets";
        }

        if (message.Contains("unknown escape", StringComparison.Ordinal))
        {
            return "there is an unknown escape between these quotation marks; between single ones a backslash stands for itself";
        }

        if (message.Contains("cannot start any token", StringComparison.Ordinal) && place < source.Text.Length)
        {
            return $"a value cannot begin with `{source.Text[place]}` unless it stands in quotes";
        }

        var text = message.TrimEnd('.');
        return $"this is not valid YAML: {(text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..])}";
    }

    /// <summary>The first tab among the blanks that begin a line, from the line the parser had come to; null when there is none.</summary>
    private static int? IndentingTab(SourceText source, int lastIndex)
    {
        var text = source.Text;
        var at = source.LineStart(lastIndex);
        while (at < text.Length)
        {
            while (at < text.Length && text[at] == ' ')
            {
                at++;
            }

            if (at < text.Length && text[at] == '\t')
            {
                return at;
            }

            while (at < text.Length && text[at] is not ('\n' or '\r'))
            {
                at++;
            }

            while (at < text.Length && text[at] is '\n' or '\r')
            {
                at++;
            }
        }

        return null;
    }

    /// <summary>
    /// The last bracket opened and not closed after the last event: the parser reads ahead and may not have given it.
    /// Minus one when there is none.
    /// </summary>
    private static int LastBracket(SourceText source, int from, int to)
    {
        var open = new Stack<int>();
        var text = source.Text;
        for (var i = from; i < to && i < text.Length; i++)
        {
            switch (text[i])
            {
                case '[' or '{':
                    open.Push(i);
                    break;
                case ']' or '}' when open.Count > 0:
                    open.Pop();
                    break;
                case '#' when i == 0 || text[i - 1] is ' ' or '\t' or '\n' or '\r':
                    while (i < text.Length && text[i] is not ('\n' or '\r'))
                    {
                        i++;
                    }

                    break;
                default:
                    break;
            }
        }

        return open.Count > 0 ? open.Pop() : -1;
    }

    private static bool IsEndOfText(SourceText source, int place) => source.Text.AsSpan(Math.Min(place, source.Text.Length)).IsWhiteSpace();
}
