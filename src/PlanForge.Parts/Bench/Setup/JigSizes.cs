using PlanForge.Airframe;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>Sizes of the jigs that nothing of the airframe decides, round in the description's unit; mm.</summary>
/// <param name="FootHeight">Height of a cradle's foot: with a half-lap of half of it the cradle stands square by itself.</param>
/// <param name="PlatesApart">Clear distance between the plates of a drilling guide: a block of wood between them.</param>
/// <param name="GaugeLength">Length of a drilling gauge's lower edge.</param>
/// <param name="GaugeHeight">Height of a drilling gauge.</param>
/// <param name="Stick">Length of the stick held to the motor's shaft.</param>
internal readonly record struct JigSizes(double FootHeight, double PlatesApart, double GaugeLength, double GaugeHeight, double Stick)
{
    private const double Inch = MeasureText.MillimetresPerInch;

    /// <summary>The sizes for a unit. Common practice, no source.</summary>
    public static JigSizes Of(DisplayUnit unit) => unit == DisplayUnit.Inch
        ? new(1.25 * Inch, 0.75 * Inch, 1.5 * Inch, 2.5 * Inch, 4 * Inch)
        : new(30, 20, 40, 60, 100);
}
