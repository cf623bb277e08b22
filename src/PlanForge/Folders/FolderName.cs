using System.Globalization;
using System.Text;

namespace PlanForge.Folders;

/// <summary>Makes the name of a design's folder from the design's name.</summary>
internal static class FolderName
{
    private const char FirstAccented = '\u00C0';

    // The letters of Latin-1 and Latin Extended-A, U+00C0 to U+017F, without what is over, under or through them. A table of our
    // own because the system's normalisation does nothing on some systems when globalisation is invariant.
    private const string Plain =
        "aaaaaaaceeeeiiiidnooooo-ouuuuyts" + "aaaaaaaceeeeiiiidnooooo-ouuuuyty" +
        "aaaaaaccccccccddddeeeeeeeeeegggg" + "gggghhhhiiiiiiiiiiiijjkkklllllll" +
        "lllnnnnnnnnnoooooooorrrrrrssssss" + "ssttttttuuuuuuuuuuuuwwyyyzzzzzzs";

    /// <summary>
    /// Lower-case ASCII letters and digits, everything between them one hyphen: <c>Oxbow 1420</c> gives <c>oxbow-1420</c>. Latin
    /// letters lose their accents; any other letter or digit is written as <c>u</c> and its code, so that names stay different.
    /// </summary>
    /// <param name="name">The design's name.</param>
    /// <returns>The folder's name; empty when the name holds neither letter nor digit.</returns>
    public static string Of(string name)
    {
        var result = new StringBuilder();
        foreach (var rune in name.EnumerateRunes())
        {
            var accented = rune.Value - FirstAccented;
            var plain = rune.IsAscii ? char.ToLowerInvariant((char)rune.Value)
                : accented >= 0 && accented < Plain.Length ? Plain[accented] : '\0';
            if (char.IsAsciiLetterOrDigit(plain))
            {
                result.Append(plain);
            }
            else if (plain == '\0' && Rune.IsLetterOrDigit(rune))
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
