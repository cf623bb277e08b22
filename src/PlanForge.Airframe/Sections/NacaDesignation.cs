using System.Globalization;

namespace PlanForge.Airframe.Sections;

/// <summary>What the digits of a NACA designation mean.</summary>
/// <param name="MeanLine">The mean line.</param>
/// <param name="Thickness">Greatest thickness, in chords.</param>
internal readonly record struct NacaDesignation(MeanLine MeanLine, double Thickness)
{
    /// <summary>Reads four or five digits, or says what is wrong with them.</summary>
    public static NacaDesignation? TryRead(string digits, out string? fault)
    {
        fault = FaultOfText(digits) ?? (digits.Length == 4 ? FaultOfFour(digits) : FaultOfFive(digits));
        if (fault is not null)
        {
            return null;
        }

        var thickness = int.Parse(digits.AsSpan(digits.Length - 2), NumberStyles.None, CultureInfo.InvariantCulture) / 100.0;
        return new(digits.Length == 4 ? FourDigitLine(digits) : FiveDigitLine(digits), thickness);
    }

    private static string? FaultOfText(string digits)
    {
        if (digits.Length is not (4 or 5) || digits.AsSpan().ContainsAnyExceptInRange('0', '9'))
        {
            return $"'{digits}' is not the designation of a NACA section read here: write four digits (2412) or five (23012)";
        }

        return digits.EndsWith("00", StringComparison.Ordinal)
            ? $"NACA {digits} has no thickness: the last two digits are its thickness in percent of the chord"
            : null;
    }

    private static string? FaultOfFour(string digits) => (digits[0], digits[1]) switch
    {
        ('0', not '0') => $"NACA {digits} gives a place of greatest camber but no camber: a symmetrical section is written 00{digits[2..]}",
        (not '0', '0') => $"NACA {digits} gives camber but no place for it: the second digit is the place of greatest camber "
            + "in tenths of the chord, 1 to 9",
        _ => null,
    };

    private static string? FaultOfFive(string digits)
    {
        if (digits[2] == '1')
        {
            return $"NACA {digits} has a reflexed mean line ({digits[..3]}); of the five-digit sections only those with the "
                + "plain mean lines 210, 220, 230, 240 and 250 are read: give this one as a coordinate file";
        }

        if (digits[2] != '0' || digits[1] is < '1' or > '5')
        {
            return $"NACA {digits} has no standard mean line: the second and third digit are 10, 20, 30, 40 or 50";
        }

        return digits[0] == '0'
            ? $"NACA {digits} has no camber: the first digit, 1 to 9, sets its design lift coefficient"
            : null;
    }

    private static MeanLine FourDigitLine(string digits) =>
        digits[0] == '0' ? MeanLine.Straight : MeanLine.FourDigit((digits[0] - '0') / 100.0, (digits[1] - '0') / 10.0);

    // r and k1 for a design lift coefficient of 0.3, the first digit 2: NACA Report 537, table; k1 scales with the first digit.
    private static MeanLine FiveDigitLine(string digits)
    {
        var (junction, k1) = digits[1] switch
        {
            '1' => (0.0580, 361.4),
            '2' => (0.1260, 51.64),
            '3' => (0.2025, 15.957),
            '4' => (0.2900, 6.643),
            _ => (0.3910, 3.230),
        };
        return MeanLine.FiveDigit(junction, k1 * (digits[0] - '0') / 2);
    }
}
