using System.Globalization;
using PlanForge.Airframe;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Varying;

/// <summary>The unit in which a person reads a figure: that of the description.</summary>
/// <param name="Name">Its name, or empty.</param>
/// <param name="Factor">What a value of the report, in mm, mm² or degrees, is multiplied by.</param>
/// <param name="Decimals">How many decimals are worth reading.</param>
internal readonly record struct ShownUnit(string Name, double Factor, int Decimals)
{
    /// <summary>The unit of a figure.</summary>
    public static ShownUnit Of(FigureQuantity quantity, DisplayUnit unit) => quantity switch
    {
        FigureQuantity.Length => OfLength(unit),
        FigureQuantity.Area => unit == DisplayUnit.Inch ? new("in²", 1 / (MeasureText.MillimetresPerInch * MeasureText.MillimetresPerInch), 2) : new("cm²", 0.01, 1),
        FigureQuantity.Angle => new("°", 1, 3),
        _ => new("", 1, 3),
    };

    /// <summary>The unit of a parameter, and the factor from mm, radians, grams or a plain number.</summary>
    public static ShownUnit Of(Dimension dimension, DisplayUnit unit) => dimension switch
    {
        Dimension.Length => OfLength(unit),
        Dimension.Angle => new("°", 180 / Math.PI, 3),
        Dimension.Mass => new("g", 1, 2),
        _ => new("", 1, 3),
    };

    /// <summary>A value in this unit, without its name; all of a row have the same decimals, so that a column can be read downward.</summary>
    public string Text(double value) =>
        (Math.Round(value * Factor, Decimals) + 0.0).ToString(FormattableString.Invariant($"F{Decimals}"), CultureInfo.InvariantCulture);

    private static ShownUnit OfLength(DisplayUnit unit) => unit switch
    {
        DisplayUnit.Inch => new("in", 1 / MeasureText.MillimetresPerInch, 4),
        DisplayUnit.Centimetre => new("cm", 0.1, 3),
        _ => new("mm", 1, 2),
    };
}
