using PlanForge.Airframe;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Reports;

/// <summary>Writes figures for a person, in the units of the description.</summary>
internal sealed class FigureText(DisplayUnit unit)
{
    private const double MillimetresPerInch = MeasureText.MillimetresPerInch;
    private const double MillimetresPerCentimetre = 10;
    private const int NumberDecimals = 3;
    private const int AreaDecimals = 1;

    private readonly MeasureText _measure = new(unit);

    /// <summary>A value without its unit.</summary>
    /// <param name="quantity">What kind of value it is.</param>
    /// <param name="value">The value, in the unit of figures.</param>
    public string ValueOf(FigureQuantity quantity, double value) => quantity switch
    {
        FigureQuantity.Length => _measure.Fine(value),
        FigureQuantity.Area => MeasureText.Rounded(value / (AreaUnit * AreaUnit), AreaDecimals),
        FigureQuantity.Angle => MeasureText.Angle(value).TrimEnd('°'),
        _ => MeasureText.Rounded(value, NumberDecimals),
    };

    /// <summary>What stands behind the number.</summary>
    // The degree sign alone follows its number without a space (SI brochure, 5.4.3; from memory).
    public string UnitOf(FigureQuantity quantity) => quantity switch
    {
        FigureQuantity.Length => $" {_measure.UnitName}",
        FigureQuantity.Area => unit == DisplayUnit.Inch ? " in²" : " cm²",
        FigureQuantity.Angle => "°",
        _ => "",
    };

    /// <summary>A length with its unit, for fitting.</summary>
    public string Length(double length) => _measure.FineWithUnit(length);

    // Areas of wings are spoken of in square centimetres also where lengths are in millimetres.
    private double AreaUnit => unit == DisplayUnit.Inch ? MillimetresPerInch : MillimetresPerCentimetre;
}
