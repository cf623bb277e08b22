using System.Globalization;

namespace PlanForge.Airframe.Sections;

/// <summary>A word of a line of a coordinate file, between blanks, tabs, commas or semicolons.</summary>
/// <param name="Text">The word.</param>
/// <param name="Column">Where it starts, counted from 1.</param>
internal sealed record CoordinateToken(string Text, int Column)
{
    // Coordinates are fractions, percents or millimetres of a chord: what is larger is a slip, and its square must not overflow.
    private const double Greatest = 1e6;

    /// <summary>Whether the word sets out to be a number, well-formed or not: the title of a section seldom does.</summary>
    public bool LooksNumeric
    {
        get
        {
            var bare = Text.AsSpan().TrimStart("+-.");
            return bare.Length == 0 ? Text.Length > 1 : char.IsAsciiDigit(bare[0]) || IsNotFiniteWord(bare);
        }
    }

    /// <summary>The words of a line up to a remark, which starts with #.</summary>
    public static List<CoordinateToken> Split(string line)
    {
        var tokens = new List<CoordinateToken>();
        var remark = line.IndexOf('#', StringComparison.Ordinal);
        var end = remark < 0 ? line.Length : remark;
        for (var i = 0; i < end; i++)
        {
            var start = i;
            while (i < end && !IsSeparator(line[i]))
            {
                i++;
            }

            if (i > start)
            {
                tokens.Add(new(line[start..i], start + 1));
            }
        }

        return tokens;
    }

    /// <summary>The number, or what is wrong with it.</summary>
    /// <remarks>Exponents may be written with D, as old programs did.</remarks>
    public (double Value, string? Fault) Read()
    {
        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        var bare = Text.AsSpan().TrimStart("+-");
        if (IsNotFiniteWord(bare))
        {
            return (0, $"'{Text}' is not a finite number");
        }

        var plain = Text.Replace('D', 'E').Replace('d', 'e');
        if (!IsWrittenInDigits(bare) || !double.TryParse(plain, Style, CultureInfo.InvariantCulture, out var value))
        {
            return (0, $"'{Text}' is not a number");
        }

        return Math.Abs(value) <= Greatest
            ? (value, null)
            : (0, FormattableString.Invariant($"'{Text}' is too large for a coordinate: at most {Greatest:F0} is read"));
    }

    // double.TryParse also takes words and signs of infinity, and spaces in places.
    private static bool IsWrittenInDigits(ReadOnlySpan<char> word)
    {
        foreach (var c in word)
        {
            if (!char.IsAsciiDigit(c) && c is not ('.' or 'e' or 'E' or 'd' or 'D' or '+' or '-'))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsSeparator(char c) => char.IsWhiteSpace(c) || c is ',' or ';' or '\0' or '\x1a';

    private static bool IsNotFiniteWord(ReadOnlySpan<char> word) =>
        word.Equals("nan", StringComparison.OrdinalIgnoreCase)
        || word.Equals("inf", StringComparison.OrdinalIgnoreCase)
        || word.Equals("infinity", StringComparison.OrdinalIgnoreCase)
        || word is "∞";
}
