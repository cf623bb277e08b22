using PlanForge.Geometry;
using PlanForge.Parts.Rigging;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>The pins at the tailplane's edges, starboard ones; port mirrors them. Its incidence is their rise over their distance.</summary>
/// <param name="Front">The leading edge at the pins.</param>
/// <param name="Rear">The trailing edge at the pins.</param>
internal readonly record struct TailPins(Point3 Front, Point3 Rear)
{
    /// <summary>How much higher the front pin stands than the rear one, mm.</summary>
    public double Rise => Front.Z - Rear.Z;

    /// <summary>Distance of the pins along the datum line, mm.</summary>
    public double Over => Rear.X - Front.X;

    /// <summary>The tailplane's pins: as far outside the body's side as the wing's, at most at its tips; null without tailplane.</summary>
    public static TailPins? Of(RiggedAirframe airframe)
    {
        if (airframe.Description.Tailplane is not { } tail || TailplaneShape.Of(tail) is not { } shape)
        {
            return null;
        }

        var body = airframe.Body;
        var station = Math.Clamp(tail.LeadingEdge.Station, body.From, body.To);
        var side = Math.Max(body.HalfBreadthAt(station, tail.LeadingEdge.Height), tail.SeatWidth / 2);
        var across = Math.Min(side + airframe.Description.Bench.PinsOutboardOfSide, tail.Span / 2);
        return new(PinPoints.EdgeAt(shape, across, 0), PinPoints.EdgeAt(shape, across, 1));
    }
}
