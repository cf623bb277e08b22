using System.Globalization;
using System.Numerics;

namespace PlanForge.Drafting.Lettering;

/// <summary>
/// Makes fractions of sentences that were written on one line (<c>2 1/4 in</c>) fractions of the lettering (<c>2 1⁄4 in</c>).
/// </summary>
internal static class InchText
{
    private const int FinestDenominator = 64;

    /// <summary>The text with U+2044 in every fraction of an inch rule: halves to sixty-fourths, below one. Other slashes stay.</summary>
    public static string WithFractions(string text)
    {
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            return text;
        }

        var letters = text.ToCharArray();
        for (; slash >= 0; slash = text.IndexOf('/', slash + 1))
        {
            if (IsRuleFraction(text, slash))
            {
                letters[slash] = Fraction.Slash;
            }
        }

        return new(letters);
    }

    private static bool IsRuleFraction(string text, int slash)
    {
        var start = slash;
        while (start > 0 && char.IsAsciiDigit(text[start - 1]))
        {
            start--;
        }

        var end = slash + 1;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        var isRadius = start > 0 && text[start - 1] == 'R' && (start == 1 || !IsPartOfWord(text[start - 2]));
        var isAlone = (start == 0 || isRadius || !(IsPartOfWord(text[start - 1]) || text[start - 1] is '.' or ','))
            && (end == text.Length || !IsPartOfWord(text[end]));
        return isAlone
            && Number(text.AsSpan(start, slash - start)) is > 0 and var numerator
            && Number(text.AsSpan(slash + 1, end - slash - 1)) is <= FinestDenominator and var denominator
            && numerator < denominator && BitOperations.IsPow2(denominator);
    }

    /// <summary>A number of one or two figures, or 0.</summary>
    private static int Number(ReadOnlySpan<char> figures) =>
        figures.Length is 1 or 2 ? int.Parse(figures, NumberStyles.None, CultureInfo.InvariantCulture) : 0;

    private static bool IsPartOfWord(char character) => char.IsLetterOrDigit(character) || character == '/';
}
