using PlanForge.Airframe;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>A former in the side view: its front face on the centre line, within the outside of the body and clear of the wing.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Station">Station of its front face, mm.</param>
/// <param name="Lower">Height of its lower end, mm.</param>
/// <param name="Upper">Height of its upper end, mm.</param>
public sealed record FormerStation(string Name, double Station, double Lower, double Upper)
{
    internal static FormerStation Of(FormerDescription former, RiggedAirframe airframe)
    {
        var (lower, upper) = At(former.Station, airframe);
        return new(former.Name, former.Station, lower, upper);
    }

    /// <summary>The heights between which a plane square to the datum line meets body clear of the wing, on the centre line.</summary>
    internal static (double Lower, double Upper) At(double station, RiggedAirframe airframe)
    {
        double lower = airframe.Body.LowerAt(station), upper = airframe.Body.UpperAt(station);
        var cut = airframe.WingCutHeightAt(station, 0);
        return airframe.WingSide == WingSide.Lower
            ? (lower, Math.Max(lower, Math.Min(upper, cut ?? upper)))
            : (Math.Min(upper, Math.Max(lower, cut ?? lower)), upper);
    }
}
