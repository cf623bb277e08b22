using System.Globalization;
using PlanForge.Airframe;

namespace PlanForge.Parts.Wording;

/// <summary>Writes lengths and angles as a builder reads them, in the unit of the description; invariant in every culture.</summary>
/// <param name="unit">The description's unit.</param>
public sealed class MeasureText(DisplayUnit unit)
{
    /// <summary>Millimetres in an inch, exactly.</summary>
    public const double MillimetresPerInch = 25.4;

    // Drills, rulers and callipers in inches go down to 64ths.
    private const int Denominator = 64;

    /// <summary>The unit's short name: <c>mm</c>, <c>cm</c> or <c>in</c>.</summary>
    public string UnitName => unit switch
    {
        DisplayUnit.Inch => "in",
        DisplayUnit.Centimetre => "cm",
        _ => "mm",
    };

    /// <summary>
    /// A length for marking out: tenths of a millimetre, or the nearest 64th of an inch; no unit name.
    /// </summary>
    /// <param name="millimetres">The length, mm.</param>
    public string Coarse(double millimetres) => unit switch
    {
        DisplayUnit.Inch => Fraction(millimetres / MillimetresPerInch),
        DisplayUnit.Centimetre => Rounded(millimetres / 10, 2),
        _ => Rounded(millimetres, 1),
    };

    /// <summary>A length for fitting: hundredths of a millimetre, or thousandths of an inch; no unit name.</summary>
    /// <param name="millimetres">The length, mm.</param>
    public string Fine(double millimetres) => unit switch
    {
        DisplayUnit.Inch => Rounded(millimetres / MillimetresPerInch, 3),
        DisplayUnit.Centimetre => Rounded(millimetres / 10, 3),
        _ => Rounded(millimetres, 2),
    };

    /// <summary>A length for marking out with its unit name.</summary>
    public string CoarseWithUnit(double millimetres) => $"{Coarse(millimetres)} {UnitName}";

    /// <summary>A length for fitting with its unit name.</summary>
    public string FineWithUnit(double millimetres) => $"{Fine(millimetres)} {UnitName}";

    /// <summary>An angle in degrees to a hundredth, such as <c>2.75°</c>.</summary>
    public static string Angle(double radians) => Rounded(radians * 180 / Math.PI, 2) + "°";

    /// <summary>A number with at most so many decimals, trailing zeros dropped, never <c>-0</c>.</summary>
    public static string Rounded(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    private static string Fraction(double inches)
    {
        var parts = (long)Math.Round(Math.Abs(inches) * Denominator, MidpointRounding.AwayFromZero);
        var (whole, numerator) = (parts / Denominator, parts % Denominator);
        var sign = inches < 0 && parts > 0 ? "-" : "";
        if (numerator == 0)
        {
            return sign + whole.ToString(CultureInfo.InvariantCulture);
        }

        var divisor = numerator & -numerator;
        var fraction = FormattableString.Invariant($"{numerator / divisor}/{Denominator / divisor}");
        return whole == 0 ? sign + fraction : FormattableString.Invariant($"{sign}{whole} {fraction}");
    }
}
