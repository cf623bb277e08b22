namespace PlanForge.Airframe.Diagnostics;

/// <summary>Finds the word somebody probably meant.</summary>
public static class Spelling
{
    // One slip for every three letters, none but case below three: more would suggest unrelated words (M3 for M7), fewer would
    // miss two slips in a long key.
    private const int LettersPerSlip = 3;

    /// <summary>
    /// The known word nearest to the written one, or null when none is near. Case does not count; the first of equals wins.
    /// </summary>
    public static string? Near(string written, IEnumerable<string> known)
    {
        string? best = null;
        var least = int.MaxValue;
        foreach (var word in known)
        {
            var longer = Math.Max(word.Length, written.Length);
            var limit = longer < LettersPerSlip ? 0 : Math.Max(1, longer / LettersPerSlip);
            if (Math.Abs(word.Length - written.Length) > limit)
            {
                continue;
            }

            var distance = Distance(written, word);
            if (distance <= limit && distance < least)
            {
                (best, least) = (word, distance);
            }
        }

        return best;
    }

    /// <summary>
    /// The known word nearest to the written one, however far it is. Words that begin with the same letter come first:
    /// abbreviations, which units are, keep it.
    /// </summary>
    public static string Nearest(string written, IEnumerable<string> known)
    {
        var best = string.Empty;
        var least = int.MaxValue;
        foreach (var word in known)
        {
            var distance = Distance(written, word);
            if (char.ToLowerInvariant(word[0]) != char.ToLowerInvariant(written[0]))
            {
                distance += written.Length + word.Length;
            }

            if (distance < least)
            {
                (best, least) = (word, distance);
            }
        }

        return best;
    }

    /// <summary>
    /// The number of single-letter insertions, deletions, replacements and exchanges of neighbours between two words
    /// (optimal string alignment distance), without regard to case.
    /// </summary>
    private static int Distance(string a, string b)
    {
        var beforeLast = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var current = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = last[j - 1] + (Same(a[i - 1], b[j - 1]) ? 0 : 1);
                current[j] = Math.Min(replaced, Math.Min(last[j], current[j - 1]) + 1);
                if (i > 1 && j > 1 && Same(a[i - 1], b[j - 2]) && Same(a[i - 2], b[j - 1]))
                {
                    current[j] = Math.Min(current[j], beforeLast[j - 2] + 1);
                }
            }

            (beforeLast, last, current) = (last, current, beforeLast);
        }

        return last[b.Length];
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
