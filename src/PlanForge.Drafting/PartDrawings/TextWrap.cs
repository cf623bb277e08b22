using System.Collections.Immutable;
using PlanForge.Drafting.Lettering;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Breaks sentences into lines and fits words into fields.</summary>
internal static class TextWrap
{
    private const char Ellipsis = '…';

    /// <summary>
    /// The lines of a text no wider than a width, broken at spaces but never between a number and its unit or fraction; what
    /// is wider than that by itself has a line of its own.
    /// </summary>
    public static ImmutableArray<string> Lines(string text, double width, double height)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < words.Length;)
        {
            var piece = words[i++];
            while (i < words.Length && BelongsToNumber(words[i - 1], words[i]))
            {
                piece += " " + words[i++];
            }

            var longer = line.Length == 0 ? piece : line + " " + piece;
            if (line.Length > 0 && StrokeAlphabet.WidthOf(longer, height) > width)
            {
                lines.Add(line);
                longer = piece;
            }

            line = longer;
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines.ToImmutable();
    }

    private static bool BelongsToNumber(string before, string word)
    {
        if (!char.IsAsciiDigit(before[^1]))
        {
            return false;
        }

        var unit = word.AsSpan().TrimEnd(".,;:)]");
        return unit is "mm" or "cm" or "in" or "m" or "g" or "oz"
            || (char.IsAsciiDigit(word[0]) && word.Contains(Fraction.Slash, StringComparison.Ordinal));
    }

    /// <summary>The text and the greatest of some heights at which it fits; the end is replaced by … when it fits at none.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="width">The room, mm.</param>
    /// <param name="heights">Heights to try, falling.</param>
    public static (string Text, double Height) Fitted(string text, double width, ReadOnlySpan<double> heights)
    {
        foreach (var height in heights)
        {
            if (StrokeAlphabet.WidthOf(text, height) <= width)
            {
                return (text, height);
            }
        }

        var least = heights[^1];
        for (var length = text.Length - 1; length > 0; length--)
        {
            var shorter = text[..length].TrimEnd() + Ellipsis;
            if (StrokeAlphabet.WidthOf(shorter, least) <= width)
            {
                return (shorter, least);
            }
        }

        return ("", least);
    }
}
