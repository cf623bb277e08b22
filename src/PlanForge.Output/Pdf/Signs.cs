namespace PlanForge.Output.Pdf;

/// <summary>
/// Splits a text into the signs that get a code each: its characters, but a fraction is one sign. The lettering sets a
/// fraction small, raised and lowered and draws the space before it together; as one sign it is copied from the page as
/// written, whatever a reader thinks of raised figures.
/// </summary>
internal static class Signs
{
    private const char FractionSlash = '\u2044';

    /// <summary>The places of the signs, which together are the whole text.</summary>
    /// <remarks>The rules are those of <see cref="Drafting.Lettering.TextLayout"/>; a test holds the two together.</remarks>
    public static IEnumerable<(int Start, int End)> Of(string text)
    {
        var fractionEnd = -1;
        for (var start = 0; start < text.Length;)
        {
            var end = start + 1;
            var digits = text[start] == ' ' && start > 0 && start != fractionEnd && char.IsAsciiDigit(text[start - 1]) ? end : start;
            if (FractionFrom(text, digits) is { } found)
            {
                end = fractionEnd = found;
            }

            yield return (start, end);
            start = end;
        }
    }

    /// <summary>Where the fraction that begins at an index ends, or null.</summary>
    private static int? FractionFrom(string text, int start)
    {
        var slash = EndOfDigits(text, start);
        if (slash == start || slash == text.Length || text[slash] != FractionSlash)
        {
            return null;
        }

        var end = EndOfDigits(text, slash + 1);
        return end > slash + 1 ? end : null;
    }

    private static int EndOfDigits(string text, int index)
    {
        while (index < text.Length && char.IsAsciiDigit(text[index]))
        {
            index++;
        }

        return index;
    }
}
