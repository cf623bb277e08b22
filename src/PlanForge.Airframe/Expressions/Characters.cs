using System.Globalization;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Expressions;

/// <summary>The characters values are made of, and what to say about those they are not.</summary>
internal static class Characters
{
    /// <summary>Space, tab and the line ends of a value folded over several lines.</summary>
    public static bool IsBlank(char character) => character is ' ' or '\t' or '\n' or '\r';

    public static bool IsDigit(char character) => char.IsAsciiDigit(character);

    /// <summary>True when a number begins at an offset: a digit, or a decimal point before one.</summary>
    public static bool BeginsNumber(string text, int at) =>
        at < text.Length && (IsDigit(text[at]) || (text[at] == '.' && at + 1 < text.Length && IsDigit(text[at + 1])));

    public static bool BeginsWord(char character) => char.IsAsciiLetter(character);

    public static bool IsInWord(char character) => char.IsAsciiLetterOrDigit(character) || character == '_';

    /// <summary>The offset of the first character from <paramref name="at"/> on that is no blank, or the length of the text.</summary>
    public static int AfterBlanks(string text, int at)
    {
        while (at < text.Length && IsBlank(text[at]))
        {
            at++;
        }

        return at;
    }

    /// <summary>The offset after the word that begins at an offset.</summary>
    public static int AfterWord(string text, int at)
    {
        while (at < text.Length && IsInWord(text[at]))
        {
            at++;
        }

        return at;
    }

    public static int AfterDigits(string text, int at)
    {
        while (at < text.Length && IsDigit(text[at]))
        {
            at++;
        }

        return at;
    }

    /// <summary>Says why a character cannot stand in a value and, where it is known, what was meant.</summary>
    public static string Refusal(string text, int at) => text[at] switch
    {
        ',' => "a comma only parts the values of min and max; decimals are written with a point",
        '−' or '–' or '—' => $"`{text[at]}` is not the minus sign `-`",
        '×' or '·' => $"`{text[at]}` is not understood here; multiply with `*`",
        '÷' or ':' => $"`{text[at]}` is not understood here; divide with `/`",
        '^' => "there is no sign for powers; write the product out, such as `a * a`",
        'º' => "`º` is not the degree sign `°`; `deg` does as well",
        '½' or '¼' or '¾' or '⅛' or '⅜' or '⅝' or '⅞' => $"`{text[at]}` is written with a slash, such as `1/2`",
        '’' or '‘' or '“' or '”' => $"`{text[at]}` is not understood; feet and inches are written ' and \"",
        ')' => "`)` closes no parenthesis",
        '=' or '<' or '>' => $"`{text[at]}` cannot stand in a value; there are no comparisons",
        var character when char.IsWhiteSpace(character) || Quote.IsUnprintable(character) =>
            string.Create(CultureInfo.InvariantCulture, $"the character U+{(int)character:X4} cannot stand in a value"),
        _ => $"{Quote.Text(text.Substring(at, char.IsSurrogatePair(text, at) ? 2 : 1))} cannot stand in a value",
    };
}
