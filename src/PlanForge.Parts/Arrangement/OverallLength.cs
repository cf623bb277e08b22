using PlanForge.Parts.Rigging;

namespace PlanForge.Parts.Arrangement;

/// <summary>The airframe's extent along the datum line: body, wing and tailplane; dowels and shafts are left out.</summary>
/// <param name="From">Station of the foremost point, mm.</param>
/// <param name="To">Station of the rearmost point, mm.</param>
public readonly record struct OverallLength(double From, double To)
{
    /// <summary>The length over all, mm.</summary>
    public double Length => To - From;

    /// <summary>The extent of an airframe.</summary>
    public static OverallLength Of(RiggedAirframe airframe)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        var wing = ArrangedWing.Of(airframe.Wing);
        var (from, to) = (Math.Min(airframe.Body.From, wing.Foremost), Math.Max(airframe.Body.To, wing.Rearmost));
        if (TailplaneShape.Of(airframe.Description.Tailplane) is not { } shape)
        {
            return new(from, to);
        }

        var tail = ArrangedWing.Of(shape);
        return new(Math.Min(from, tail.Foremost), Math.Max(to, tail.Rearmost));
    }
}
