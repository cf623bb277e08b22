using System.Globalization;
using PlanForge.Airframe;

namespace PlanForge.Parts.Wording;

/// <summary>Writes lengths and angles as a builder reads them, in the unit of the description; invariant in every culture.</summary>
/// <remarks>
/// Sentences and leaders give both units where both are wanted; tables keep to the unit in their heads, for a second figure in
/// every cell would make the column hard to read down.
/// </remarks>
/// <param name="unit">The description's unit.</param>
/// <param name="showsBoth">True to add the other unit in brackets where a unit is named.</param>
public sealed class MeasureText(DisplayUnit unit, bool showsBoth = false)
{
    /// <summary>Millimetres in an inch, exactly.</summary>
    public const double MillimetresPerInch = 25.4;

    // Drills and steel rules in inches go down to 64ths.
    private const int Denominator = 64;

    // A fraction on a plan is taken for the size itself, so one is written only where it is: nearer than this, in inches, to a
    // sixty-fourth. Anything else is thousandths, to be set on a caliper. Wider would misplace saws and drills by more than they
    // cut, and print two figures for one size; narrower would let the rounding of millimetres show.
    private const double FractionTolerance = 0.002;

    private readonly MeasureText? _other = showsBoth ? new(new ShownUnits(unit).Other) : null;

    /// <summary>The unit's short name: <c>mm</c>, <c>cm</c> or <c>in</c>.</summary>
    public string UnitName => unit switch
    {
        DisplayUnit.Inch => "in",
        DisplayUnit.Centimetre => "cm",
        _ => "mm",
    };

    /// <summary>The unit lengths are written in.</summary>
    public DisplayUnit Unit => unit;

    /// <summary>
    /// A length for marking out: tenths of a millimetre, or inches as <see cref="Inches"/> writes them; no unit name.
    /// </summary>
    /// <param name="millimetres">The length, mm.</param>
    public string Coarse(double millimetres) => unit switch
    {
        DisplayUnit.Inch => Inches(millimetres / MillimetresPerInch),
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
    public string CoarseWithUnit(double millimetres) => Bracketed($"{Coarse(millimetres)} {UnitName}", _other?.CoarseWithUnit(millimetres));

    /// <summary>A length for fitting with its unit name.</summary>
    public string FineWithUnit(double millimetres) => Bracketed($"{Fine(millimetres)} {UnitName}", _other?.FineWithUnit(millimetres));

    /// <summary>
    /// A size as a dimension on the drawing shows it: hundredths of a millimetre without a sign, or inches with ″; both where both
    /// are wanted.
    /// </summary>
    public string Size(double millimetres)
    {
        var size = unit == DisplayUnit.Inch ? Inches(millimetres / MillimetresPerInch) + "″" : Fine(millimetres);
        return Bracketed(size, _other?.Size(millimetres));
    }

    /// <summary>The same with its unit name, for sentences: <c>8.05 mm</c>, <c>3/16 in</c>.</summary>
    public string SizeWithUnit(double millimetres)
    {
        var size = unit == DisplayUnit.Inch ? Inches(millimetres / MillimetresPerInch) : Fine(millimetres);
        return Bracketed($"{size} {UnitName}", _other?.SizeWithUnit(millimetres));
    }

    /// <summary>
    /// A length in a column of a table: tenths of a millimetre, or thousandths of an inch also where a fraction would do, for a
    /// column that mixes both cannot be read down.
    /// </summary>
    public string Column(double millimetres) => unit == DisplayUnit.Inch ? Fine(millimetres) : Coarse(millimetres);

    /// <summary>The diameter of a hole: <c>⌀8.1</c>.</summary>
    public string Diameter(double millimetres) => "⌀" + Size(millimetres);

    /// <summary>The radius of a corner: <c>R8</c>.</summary>
    public string Radius(double millimetres) => "R" + Size(millimetres);

    /// <summary>An angle in degrees to a hundredth, such as <c>2.75°</c>.</summary>
    public static string Angle(double radians) => Rounded(radians * 180 / Math.PI, 2) + "°";

    /// <summary>A number with at most so many decimals, trailing zeros dropped, never <c>-0</c>.</summary>
    public static string Rounded(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero) + 0.0;
        return rounded.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>
    /// Inches as whole number and fraction in lowest terms (<c>2 1/4</c>, halves to sixty-fourths) where one lies within 0.002 in,
    /// else in thousandths (<c>2.257</c>); the one rule for all sheets, reports and messages.
    /// </summary>
    public static string Inches(double inches)
    {
        var parts = (long)Math.Round(Math.Abs(inches) * Denominator, MidpointRounding.AwayFromZero);
        if (Math.Abs(((double)parts / Denominator) - Math.Abs(inches)) > FractionTolerance)
        {
            return Rounded(inches, 3);
        }

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

    private static string Bracketed(string main, string? other) => other is null ? main : $"{main} [{other}]";
}
