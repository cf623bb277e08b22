using PlanForge.Airframe;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Dowels;

/// <summary>A twist drill that is sold.</summary>
/// <remarks>
/// Metric: every tenth of a millimetre to 10 mm, every half above. Inch: every sixty-fourth, numbers 60 to 1 and letters A to Z.
/// Both series are from memory; the numbers and letters that shared/check-values.md section 6 lists are tested against it.
/// </remarks>
/// <param name="Name">What the shop calls it: <c>8.1 mm</c>, <c>5/16 in</c>, <c>#29</c>, <c>F</c>.</param>
/// <param name="Diameter">Its diameter, mm.</param>
public readonly record struct Drill(string Name, double Diameter)
{
    private const double FineSteps = 10;
    private const double CoarseSteps = 2;
    private const double LastFine = 10;

    // Diameters nearer than this, mm, are the same drill: a tenth of what a drill's own tolerance allows.
    private const double Same = 0.002;

    // Thousandths of an inch times ten, from number 60 to number 1.
    private static ReadOnlySpan<int> Numbers =>
    [
        400, 410, 420, 430, 465, 520, 550, 595, 635, 670, 700, 730, 760, 785, 810, 820, 860, 890, 935, 960,
        980, 995, 1015, 1040, 1065, 1100, 1110, 1130, 1160, 1200, 1285, 1360, 1405, 1440, 1470, 1495, 1520, 1540, 1570, 1590,
        1610, 1660, 1695, 1730, 1770, 1800, 1820, 1850, 1890, 1910, 1935, 1960, 1990, 2010, 2040, 2055, 2090, 2130, 2210, 2280,
    ];

    // The same, A to Z.
    private static ReadOnlySpan<int> Letters =>
    [
        2340, 2380, 2420, 2460, 2500, 2570, 2610, 2660, 2720, 2770, 2810, 2900, 2950,
        3020, 3160, 3230, 3320, 3390, 3480, 3580, 3680, 3770, 3860, 3970, 4040, 4130,
    ];

    /// <summary>True when the drill makes just the hole that is wanted.</summary>
    public bool Fits(double diameter) => Math.Abs(Diameter - diameter) < Same;

    /// <summary>The drill nearest to a diameter in the series of a unit; of two as near the larger, so that a dowel still enters.</summary>
    /// <param name="diameter">Wanted diameter, mm, over 0.</param>
    /// <param name="unit">Inch for the inch series, else the metric one.</param>
    public static Drill Nearest(double diameter, DisplayUnit unit) => unit == DisplayUnit.Inch ? NearestInch(diameter) : NearestMetric(diameter);

    private static Drill NearestMetric(double diameter)
    {
        // Half way counts up; a trace more keeps 8.05, which is a little less in binary, half way.
        const double Trace = 1e-9;
        var steps = diameter < LastFine ? FineSteps : CoarseSteps;
        var size = Math.Max(1, Math.Floor((diameter * steps) + 0.5 + Trace)) / steps;
        return new(MeasureText.Rounded(size, 1) + " mm", size);
    }

    private static Drill NearestInch(double diameter)
    {
        const double TenThousandths = MeasureText.MillimetresPerInch / 10_000;
        const double Denominator = 64;
        var inches = diameter / MeasureText.MillimetresPerInch;
        var sixtyFourth = Math.Max(1, Math.Round(inches * Denominator, MidpointRounding.AwayFromZero)) / Denominator;
        var best = new Drill(MeasureText.Inches(sixtyFourth) + " in", sixtyFourth * MeasureText.MillimetresPerInch);
        for (var i = 0; i < Numbers.Length; i++)
        {
            best = Nearer(best, new(FormattableString.Invariant($"#{Numbers.Length - i}"), Numbers[i] * TenThousandths), diameter);
        }

        for (var i = 0; i < Letters.Length; i++)
        {
            best = Nearer(best, new(((char)('A' + i)).ToString(), Letters[i] * TenThousandths), diameter);
        }

        return best;
    }

    private static Drill Nearer(Drill best, Drill other, double diameter) =>
        Math.Abs(other.Diameter - diameter) < Math.Abs(best.Diameter - diameter) ? other : best;
}
