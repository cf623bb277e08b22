using System.Globalization;

namespace PlanForge.Airframe.Quantities;

/// <summary>Writes values for messages, in the units of the description.</summary>
internal static class QuantityText
{
    /// <summary>A value such as <c>12.5 mm</c>, <c>-3 deg</c> or <c>0.09</c>, to six decimals.</summary>
    public static string Of(double value, Dimension dimension, DisplayUnit lengths)
    {
        var unit = UnitTable.OfBareNumber(dimension, lengths);
        var number = Number(value / unit.ToBase(1));
        return unit == Unit.None ? number : $"{number} {unit.Symbol()}";
    }

    /// <summary>A number to six decimals; what would read as zero and is not keeps its first digits.</summary>
    public static string Number(double number)
    {
        var rounded = Math.Round(number, 6);
        return (rounded == 0 && number != 0) || Math.Abs(number) >= 1e9
            ? number.ToString("G4", CultureInfo.InvariantCulture)
            : rounded.ToString("0.######", CultureInfo.InvariantCulture);
    }
}
