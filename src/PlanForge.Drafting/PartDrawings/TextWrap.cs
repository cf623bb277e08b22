using System.Collections.Immutable;
using PlanForge.Drafting.Lettering;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Breaks sentences into lines and fits words into fields.</summary>
internal static class TextWrap
{
    private const char Ellipsis = '…';

    /// <summary>The lines of a text no wider than a width, broken at spaces; a word wider than that has a line of its own.</summary>
    public static ImmutableArray<string> Lines(string text, double width, double height)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && StrokeAlphabet.WidthOf(longer, height) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines.ToImmutable();
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
