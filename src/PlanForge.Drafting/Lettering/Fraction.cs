namespace PlanForge.Drafting.Lettering;

/// <summary>How a fraction such as <c>3⁄64</c> is lettered: small figures left above and right below a slanted line.</summary>
public static class Fraction
{
    /// <summary>The character between numerator and denominator, U+2044.</summary>
    public const char Slash = '\u2044';

    /// <summary>Height of the figures of a fraction in heights of a capital: the next smaller size of ISO 3098 (2.5 beside 3.5).</summary>
    public const double Scale = 5.0 / 7;

    /// <summary>How high the numerator stands above the baseline, in heights of a capital.</summary>
    public const double Raise = 0.45;

    /// <summary>How deep the denominator stands below the baseline, in heights of a capital.</summary>
    public const double Drop = 0.15;

    // From the end of the numerator back to the foot of the line, and from the foot of the line on to the denominator. Smaller
    // would let figures touch the line where they come nearest to it, at half height; larger would tear the fraction apart.
    private const double FootBack = 0.08;
    private const double FootAhead = 0.42;

    /// <summary>The fraction that begins at an index: where its slash stands and where it ends; null when none begins there.</summary>
    public static (int Slash, int End)? At(string text, int start)
    {
        var slash = EndOfDigits(text, start);
        if (slash == start || slash == text.Length || text[slash] != Slash)
        {
            return null;
        }

        var end = EndOfDigits(text, slash + 1);
        return end > slash + 1 ? (slash, end) : null;
    }

    /// <summary>Lays a fraction out from a place on the baseline and returns where its middle lines end.</summary>
    internal static double Place(string text, int start, (int Slash, int End) fraction, double x, TextLayout.Builder layout)
    {
        var numeratorEnd = PlaceDigits(text, start, fraction.Slash, x, Raise, layout);
        var foot = Math.Max(x, numeratorEnd - FootBack);
        layout.Add(Slash, new(foot, 0), 1);
        return PlaceDigits(text, fraction.Slash + 1, fraction.End, foot + FootAhead, -Drop, layout);
    }

    private static double PlaceDigits(string text, int start, int end, double x, double y, TextLayout.Builder layout)
    {
        for (var i = start; i < end; i++)
        {
            x += layout.Add(text[i], new(x, y), Scale);
        }

        return x - (StrokeAlphabet.Spacing * Scale);
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
