using System.Text;

namespace PlanForge.Airframe.Sections;

/// <summary>The name of a section as its file gives it.</summary>
internal static class SectionTitle
{
    // Titles go into title blocks and file listings; a longer one is a remark. Shorter would cut real names.
    private const int GreatestLength = 60;

    /// <summary>The title line with its blanks made single and what cannot be printed left out.</summary>
    public static string Of(string line)
    {
        var remark = line.IndexOf('#', StringComparison.Ordinal);
        var title = new StringBuilder();
        foreach (var rune in (remark < 0 ? line : line[..remark]).EnumerateRunes())
        {
            if (title.Length >= GreatestLength)
            {
                break;
            }

            if (!Rune.IsWhiteSpace(rune))
            {
                title.Append(Rune.IsControl(rune) ? "" : rune.ToString());
            }
            else if (title.Length > 0 && title[^1] != ' ')
            {
                title.Append(' ');
            }
        }

        return title.ToString().TrimEnd();
    }
}
