using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Parts.Shapes;

/// <summary>Finds where fair curves pinch the body to nothing between its stations: a spline may swing past its points.</summary>
internal static class BodyCheck
{
    // A body narrower or lower than this, mm, is no body.
    private const double LeastExtent = 0.5;

    private const int ProbesPerBay = 16;

    /// <summary>Adds an error for the first such place; false when there is one.</summary>
    public static bool Check(AirframeDescription description, FuselageShape body, ICollection<Diagnostic> findings)
    {
        foreach (var bay in body.Bays)
        {
            for (var i = 0; i <= ProbesPerBay; i++)
            {
                var station = bay.From + ((bay.To - bay.From) * i / ProbesPerBay);
                var section = bay.At(station);
                var height = section.Upper.Value - section.Lower.Value;
                var breadth = 2 * Math.Min(section.UpperBreadth.Value, section.LowerBreadth.Value);
                if (!(Math.Min(height, breadth) >= LeastExtent))
                {
                    var text = new Wording.MeasureText(description.DisplayUnit);
                    findings.Add(Diagnostic.Error(
                        description.Fuselage.Stations[bay.Index].At,
                        $"the fair curves from here to the next station pinch the body to nothing at station {text.CoarseWithUnit(station)}: add a station between, or make this run straight"));
                    return false;
                }
            }
        }

        return true;
    }
}
