using System.Globalization;
using PlanForge.Airframe;
using PlanForge.Drafting.Lettering;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Measures;

/// <summary>How numbers are written on the sheets; always with the invariant culture, never with a minus zero.</summary>
public static class Measure
{
    /// <summary>Millimetres in an inch, exactly.</summary>
    public const double Inch = MeasureText.MillimetresPerInch;

    /// <summary>A length as the sheets show it: mm and cm without a sign (the title strip names the unit), inches with ″.</summary>
    /// <param name="millimetres">The length, mm.</param>
    /// <param name="unit">The unit to show.</param>
    /// <param name="decimals">Decimals of the millimetre to keep at most, 0 to 3; trailing zeros are left out.</param>
    public static string Length(double millimetres, DisplayUnit unit, int decimals = 1) => unit switch
    {
        DisplayUnit.Centimetre => Number(millimetres / 10, decimals + 1),
        DisplayUnit.Inch => InchFraction(millimetres / Inch) + "″",
        _ => Number(millimetres, decimals),
    };

    /// <summary>A length as a dimension shows it: <c>92</c>, or with both units <c>92 [3 5⁄8″]</c> and <c>3 5⁄8″ [92.1]</c>.</summary>
    /// <param name="millimetres">The length, mm.</param>
    /// <param name="units">The units to show.</param>
    public static string Dimension(double millimetres, ShownUnits units) => units.IsBoth
        ? $"{Length(millimetres, units.Main)} [{Length(millimetres, units.Other)}]"
        : Length(millimetres, units.Main);

    /// <summary>A length with its unit, for sentences: <c>4 mm</c>, <c>0.4 cm</c>, <c>5⁄32″</c>.</summary>
    /// <param name="millimetres">The length, mm.</param>
    /// <param name="unit">The unit to show.</param>
    /// <param name="decimals">Decimals of the millimetre to keep at most, 0 to 3.</param>
    public static string LengthWithUnit(double millimetres, DisplayUnit unit, int decimals = 1) => unit switch
    {
        DisplayUnit.Centimetre => Length(millimetres, unit, decimals) + " cm",
        DisplayUnit.Inch => Length(millimetres, unit, decimals),
        _ => Length(millimetres, unit, decimals) + " mm",
    };

    /// <summary>A length with its unit, and in both units where both are wanted: <c>4 mm [5⁄32″]</c>.</summary>
    /// <param name="millimetres">The length, mm.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="decimals">Decimals of the millimetre to keep at most, 0 to 3.</param>
    public static string LengthWithUnit(double millimetres, ShownUnits units, int decimals = 1) => units.IsBoth
        ? $"{LengthWithUnit(millimetres, units.Main, decimals)} [{LengthWithUnit(millimetres, units.Other, decimals)}]"
        : LengthWithUnit(millimetres, units.Main, decimals);

    /// <summary>The plural name of a unit for the title strip.</summary>
    public static string NameOf(DisplayUnit unit) => unit switch
    {
        DisplayUnit.Centimetre => "cm",
        DisplayUnit.Inch => "inches",
        _ => "mm",
    };

    /// <summary>Inches as <see cref="MeasureText.Inches"/> writes them, the fraction lettered as one: <c>2 1⁄4</c>, <c>2.257</c>.</summary>
    public static string InchFraction(double inches) => InchText.WithFractions(MeasureText.Inches(inches));

    /// <summary>An angle in degrees: <c>1.25°</c>.</summary>
    /// <param name="radians">The angle, radians.</param>
    /// <param name="decimals">Decimals of the degree to keep at most.</param>
    public static string Angle(double radians, int decimals = 2) => Number(double.RadiansToDegrees(radians), decimals) + "°";

    /// <summary>An angle in degrees and whole minutes: <c>1° 15′</c>.</summary>
    /// <param name="radians">The angle, radians.</param>
    public static string AngleInMinutes(double radians)
    {
        var minutes = (long)Math.Round(Math.Abs(double.RadiansToDegrees(radians)) * 60);
        var sign = radians < 0 && minutes > 0 ? "-" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{sign}{minutes / 60}° {minutes % 60:00}′");
    }

    /// <summary>A bevel as the angle from square and the step it makes in a sheet: <c>3.43°, 0.18 over 3 mm</c>.</summary>
    /// <param name="radians">The angle from square, radians.</param>
    /// <param name="thickness">Thickness of the sheet, mm.</param>
    /// <param name="unit">The unit to show.</param>
    public static string Bevel(double radians, double thickness, DisplayUnit unit) =>
        $"{Angle(radians)}, {Length(Math.Tan(radians) * thickness, unit, 2)} over {LengthWithUnit(thickness, unit, 2)}";

    /// <summary>A plain number.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals to keep at most; trailing zeros are left out.</param>
    public static string Number(double value, int decimals) => MeasureText.Rounded(value, decimals);
}
