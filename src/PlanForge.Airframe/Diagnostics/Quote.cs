using System.Globalization;
using System.Text;

namespace PlanForge.Airframe.Diagnostics;

/// <summary>Puts words of the description into messages so that a message stays one short, printable line.</summary>
internal static class Quote
{
    // Longer than any sensible key, shorter than a terminal line.
    private const int Longest = 40;

    /// <summary>The text between back quotes, shortened, with what cannot be printed replaced.</summary>
    public static string Text(string text) => $"`{Printable(text)}`";

    /// <summary>A list such as <c>`a`, `b` or `c`</c>.</summary>
    public static string Alternatives(IReadOnlyList<string> words) => Joined(words, "or");

    /// <summary>A list such as <c>`a`, `b` and `c`</c>.</summary>
    public static string List(IReadOnlyList<string> words) => Joined(words, "and");

    /// <summary>True for characters that have no picture of their own: controls, formats, lone surrogates.</summary>
    public static bool IsUnprintable(char character) => char.GetUnicodeCategory(character) is
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator;

    private static string Printable(string text)
    {
        var result = new StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            if (result.Length >= Longest)
            {
                return result.Append('…').ToString();
            }

            if (char.IsSurrogatePair(text, i))
            {
                result.Append(text[i]).Append(text[++i]);
            }
            else
            {
                result.Append(char.IsSurrogate(text[i]) || IsUnprintable(text[i]) ? '\uFFFD' : text[i]);
            }
        }

        return result.ToString();
    }

    private static string Joined(IReadOnlyList<string> words, string last)
    {
        var result = new StringBuilder();
        for (var i = 0; i < words.Count; i++)
        {
            result.Append(i == 0 ? "" : i == words.Count - 1 ? $" {last} " : ", ").Append('`').Append(words[i]).Append('`');
        }

        return result.ToString();
    }
}
