using PlanForge.Airframe;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Reports;

/// <summary>Writes figures for a person, in the unit of the description.</summary>
/// <param name="unit">The unit.</param>
internal sealed class FigureText(DisplayUnit unit)
{
    private const double MillimetresPerCentimetre = 10;
    private const int NumberDecimals = 3;
    private const int AreaDecimals = 1;

    private readonly MeasureText _measure = new(unit);

    // Areas of wings are spoken of in square centimetres also where lengths are in millimetres.
    private double AreaUnit => unit == DisplayUnit.Inch ? MeasureText.MillimetresPerInch : MillimetresPerCentimetre;

    /// <summary>A figure's number.</summary>
    public string ValueOf(FigureQuantity quantity, double value) => quantity switch
    {
        FigureQuantity.Length => _measure.Fine(value),
        FigureQuantity.Area => MeasureText.Rounded(value / (AreaUnit * AreaUnit), AreaDecimals),
        FigureQuantity.Angle => MeasureText.Angle(value).TrimEnd('°'),
        _ => MeasureText.Rounded(value, NumberDecimals),
    };

    /// <summary>What follows the number.</summary>
    /// <remarks>The degree sign alone follows its number without a space (SI brochure, 5.4.3; from memory).</remarks>
    public string UnitOf(FigureQuantity quantity) => quantity switch
    {
        FigureQuantity.Length => $" {_measure.UnitName}",
        FigureQuantity.Area => unit == DisplayUnit.Inch ? " in²" : " cm²",
        FigureQuantity.Angle => "°",
        _ => "",
    };

    /// <summary>A length with its unit, for fitting.</summary>
    public string Length(double length) => _measure.FineWithUnit(length);

    /// <summary>A figure's label under the title of its part, with which it need not begin again.</summary>
    public static string LabelOf(string label, string title) =>
        title.Length > 0 && label.StartsWith(title + ", ", StringComparison.Ordinal) ? label[(title.Length + 2)..] : label;
}
