using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Quantities;

/// <summary>What each unit is called, measures and is worth.</summary>
/// <remarks>
/// Inch and pound are exact by definition: 25.4 mm and 453.59237 g (international yard and pound agreement of 1959, from memory;
/// the tests hold all of them against UnitsNet).
/// </remarks>
internal static class UnitTable
{
    private const double PoundInGrams = 453.59237;

    /// <summary>The units spelled with letters.</summary>
    public static readonly string[] Words = ["mm", "cm", "m", "in", "ft", "deg", "rad", "g", "kg", "oz", "lb"];

    /// <summary>Every spelling, for messages.</summary>
    public const string KnownSpellings = "mm, cm, m, in, ft, ', \", deg, °, rad, g, kg, oz, lb, %";

    /// <summary>The unit of a word, or null. Case counts: <c>Mm</c> is no millimetre.</summary>
    public static Unit? FromWord(ReadOnlySpan<char> word) => word switch
    {
        "mm" => Unit.Millimetre,
        "cm" => Unit.Centimetre,
        "m" => Unit.Metre,
        "in" => Unit.Inch,
        "ft" => Unit.Foot,
        "deg" => Unit.Degree,
        "rad" => Unit.Radian,
        "g" => Unit.Gram,
        "kg" => Unit.Kilogram,
        "oz" => Unit.Ounce,
        "lb" => Unit.Pound,
        _ => null,
    };

    /// <summary>The unit somebody who wrote another word probably meant: one written out, or else the nearest spelling.</summary>
    public static string Nearest(string word) => word.ToLowerInvariant() switch
    {
        "millimetre" or "millimetres" or "millimeter" or "millimeters" => "mm",
        "centimetre" or "centimetres" or "centimeter" or "centimeters" => "cm",
        "metre" or "metres" or "meter" or "meters" => "m",
        "inch" or "inches" => "in",
        "foot" or "feet" => "ft",
        "degree" or "degrees" => "deg",
        "radian" or "radians" => "rad",
        "gram" or "grams" or "gramme" or "grammes" => "g",
        "ounce" or "ounces" => "oz",
        "pound" or "pounds" or "lbs" => "lb",
        _ => Spelling.Nearest(word, Words),
    };

    /// <summary>The unit of a sign, or null. The primes U+2032 and U+2033 are as good as the typewriter's quotes.</summary>
    public static Unit? FromSign(char sign) => sign switch
    {
        '\'' or '′' => Unit.Foot,
        '"' or '″' => Unit.Inch,
        '°' => Unit.Degree,
        '%' => Unit.Percent,
        _ => null,
    };

    /// <summary>The word for a unit as messages write it.</summary>
    public static string Symbol(this Unit unit) => unit switch
    {
        Unit.None => "",
        Unit.Percent => "%",
        _ => Words[(int)unit - (int)Unit.Millimetre],
    };

    /// <summary>What a unit measures.</summary>
    public static Powers PowersOf(this Unit unit) => unit switch
    {
        Unit.Millimetre or Unit.Centimetre or Unit.Metre or Unit.Inch or Unit.Foot => Powers.Length,
        Unit.Degree or Unit.Radian => Powers.Angle,
        Unit.Gram or Unit.Kilogram or Unit.Ounce or Unit.Pound => Powers.Mass,
        _ => Powers.Number,
    };

    /// <summary>A number of units in millimetres, radians, grams or as a plain number.</summary>
    public static double ToBase(this Unit unit, double number) => unit switch
    {
        Unit.Centimetre => number * 10,
        Unit.Metre => number * 1000,
        Unit.Inch => number * 25.4,
        Unit.Foot => number * 304.8,
        Unit.Degree => number * (Math.PI / 180),
        Unit.Kilogram => number * 1000,
        Unit.Ounce => number * (PoundInGrams / 16),
        Unit.Pound => number * PoundInGrams,
        Unit.Percent => number / 100,
        _ => number,
    };

    /// <summary>The unit a bare number has where a dimension is expected.</summary>
    public static Unit OfBareNumber(Dimension dimension, DisplayUnit lengths) => dimension switch
    {
        Dimension.Length => lengths switch
        {
            DisplayUnit.Centimetre => Unit.Centimetre,
            DisplayUnit.Inch => Unit.Inch,
            _ => Unit.Millimetre,
        },
        Dimension.Angle => Unit.Degree,
        Dimension.Mass => Unit.Gram,
        _ => Unit.None,
    };
}
