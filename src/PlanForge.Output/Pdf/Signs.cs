using PlanForge.Drafting.Lettering;

namespace PlanForge.Output.Pdf;

/// <summary>
/// Splits a text into the signs that get a code each: its characters, but a fraction is one sign. The lettering sets a
/// fraction small, raised and lowered and draws the space before it together; as one sign it is copied from the page as
/// written, whatever a reader thinks of raised figures.
/// </summary>
internal static class Signs
{
    /// <summary>The places of the signs, which together are the whole text.</summary>
    /// <remarks>The rules are those of <see cref="TextLayout"/>; a test holds the two together.</remarks>
    public static IEnumerable<(int Start, int End)> Of(string text)
    {
        var fractionEnd = -1;
        for (var start = 0; start < text.Length;)
        {
            var end = start + 1;
            var digits = text[start] == ' ' && start > 0 && start != fractionEnd && char.IsAsciiDigit(text[start - 1]) ? end : start;
            if (Fraction.At(text, digits) is { } fraction)
            {
                end = fractionEnd = fraction.End;
            }

            yield return (start, end);
            start = end;
        }
    }
}
