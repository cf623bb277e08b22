namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Spoils texts: characters, tokens and lines are deleted, doubled, swapped or replaced.</summary>
internal static class Mutation
{
    private static readonly char[] Separators = [' ', '\n', ',', ':', '{', '}', '[', ']', '(', ')', '"', '\''];

    private static readonly string[] Fragments =
    [
        "{", "}", "[", "]", ":", ",", "- ", "? ", "\"", "'", "#", "&a ", "*a", "!!str ", "<<: ", "|\n", ">\n", "%", "@", "`", "\t", "\r", "\r\n",
        "\\", "\\x", "\"\\U99999999\"", "---\n", "...\n", "(", ")", "+", "-", "*", "/", "1/0", "1e999", "-0", "sqrt(", "max(", "1,5", "'' ", "°",
        "½", "naca ", ".dat", "body_width", "null", "~", "\0", "\uFEFF", "\u0085", "\u2028", "\uD800", "\uDC00", "🙂", "é", "\u202E", "mm", " in",
    ];

    /// <summary>A text spoiled a number of times.</summary>
    public static string Of(string text, int count, Random random)
    {
        for (var i = 0; i < count; i++)
        {
            text = Mutated(text, random);
        }

        return text;
    }

    private static string Mutated(string text, Random random)
    {
        if (text.Length == 0)
        {
            return Fragments[random.Next(Fragments.Length)];
        }

        var (from, to) = Stretch(text, random);
        var at = random.Next(text.Length + 1);
        return random.Next(7) switch
        {
            0 => text.Remove(from, to - from),
            1 => text.Insert(at, text[from..to]),
            2 => text.Insert(at, Fragments[random.Next(Fragments.Length)]),
            3 => text[..from] + Fragments[random.Next(Fragments.Length)] + text[to..],
            4 => text[..from] + (char)random.Next(0x10000) + text[to..],
            5 => text[..at],
            _ => Swapped(text, from, to, random),
        };
    }

    private static string Swapped(string text, int from, int to, Random random)
    {
        var (otherFrom, otherTo) = Stretch(text, random);
        return otherFrom < to ? text : text[..from] + text[otherFrom..otherTo] + text[to..otherFrom] + text[from..to] + text[otherTo..];
    }

    /// <summary>A character, a token or a line.</summary>
    private static (int From, int To) Stretch(string text, Random random)
    {
        var at = random.Next(text.Length);
        return random.Next(3) switch
        {
            0 => (at, at + 1),
            1 => (text.LastIndexOfAny(Separators, at) + 1, After(text.IndexOfAny(Separators, at), at)),
            _ => (text.LastIndexOf('\n', at) + 1, After(text.IndexOf('\n', at) + 1, at)),
        } is var (from, to) && from <= to ? (from, to) : (at, at + 1);

        int After(int found, int least) => found <= 0 ? text.Length : Math.Max(found, least);
    }
}
