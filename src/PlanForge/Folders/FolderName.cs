using System.Globalization;
using System.Text;

namespace PlanForge.Folders;

/// <summary>Makes the name of a design's folder from the design's name.</summary>
internal static class FolderName
{
    /// <summary>
    /// Lower-case ASCII letters and digits, everything between them one hyphen: <c>Oxbow 1420</c> gives <c>oxbow-1420</c>. Accents
    /// are dropped; any other letter or digit is written as <c>u</c> and its code, so that different names stay different.
    /// </summary>
    /// <param name="name">The design's name.</param>
    /// <returns>The folder's name; empty when the name holds neither letter nor digit.</returns>
    public static string Of(string name)
    {
        var result = new StringBuilder();
        foreach (var rune in name.Normalize(NormalizationForm.FormD).EnumerateRunes())
        {
            if (rune.IsAscii && Rune.IsLetterOrDigit(rune))
            {
                result.Append(char.ToLowerInvariant((char)rune.Value));
            }
            else if (Rune.IsLetterOrDigit(rune))
            {
                result.Append('u').Append(rune.Value.ToString("x4", CultureInfo.InvariantCulture));
            }
            else if (Rune.GetUnicodeCategory(rune) is not UnicodeCategory.NonSpacingMark && result.Length > 0 && result[^1] != '-')
            {
                result.Append('-');
            }
        }

        return result.ToString().TrimEnd('-');
    }
}
