using System.Globalization;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Reading.Yaml;

/// <summary>Finds characters that no description needs and that would hide text from the reader or from its author.</summary>
/// <remarks>
/// A NUL ends the text for the YAML parser, U+0085, U+2028 and U+2029 end lines for it and for no editor, and direction marks
/// show a text other than the one that is read.
/// </remarks>
internal static class ForbiddenCharacters
{
    /// <summary>Reports the first of them; false when there is one.</summary>
    public static bool AreAbsent(SourceText source, DiagnosticList diagnostics)
    {
        var text = source.Text;
        for (var i = 0; i < text.Length; i++)
        {
            if (IsForbidden(text, i))
            {
                diagnostics.Error(source.At(i, i + 1), string.Create(
                    CultureInfo.InvariantCulture, $"the character U+{(int)text[i]:X4} cannot stand in a description"));
                return false;
            }

            i += char.IsHighSurrogate(text[i]) ? 1 : 0;
        }

        return true;
    }

    private static bool IsForbidden(string text, int at)
    {
        var character = text[at];
        if (character is >= ' ' and <= '~' or '\n' or '\r' or '\t')
        {
            return false;
        }

        return char.IsSurrogate(character)
            ? !char.IsSurrogatePair(text, at)
            : Quote.IsUnprintable(character) || character >= '\uFFFE';
    }
}
