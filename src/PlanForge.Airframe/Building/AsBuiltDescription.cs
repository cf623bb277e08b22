using System.Collections.Immutable;

namespace PlanForge.Airframe.Building;

/// <summary>What the builder measured on the wood, and the design before it was taken over.</summary>
/// <param name="Designed">The airframe as designed; nothing is measured in it.</param>
/// <param name="Measurements">What was measured, each thing once: stock, skin, fuselage, formers, wing, each in the order of the file.</param>
public sealed record AsBuiltDescription(AirframeDescription Designed, ImmutableArray<Measurement> Measurements)
{
    /// <summary>The airframe as built: the designed one with everything measured taken over.</summary>
    /// <remarks>What measures exactly as designed changes nothing, not even by rounding.</remarks>
    /// <param name="designed">A checked airframe with nothing measured.</param>
    /// <param name="measurements">What was measured on it, each thing once; names, panels and stations are the airframe's.</param>
    public static AirframeDescription Apply(AirframeDescription designed, ImmutableArray<Measurement> measurements)
    {
        ArgumentNullException.ThrowIfNull(designed);
        if (measurements.IsEmpty)
        {
            return designed;
        }

        var built = StockAsBuilt.Apply(designed, measurements);
        return built with
        {
            Fuselage = BodyAsBuilt.Apply(built.Fuselage, measurements),
            Formers = [.. built.Formers.Select(former => Former(former, measurements))],
            Wing = WingAsBuilt.Apply(built.Wing, measurements),
            AsBuilt = new(designed, measurements),
        };
    }

    private static FormerDescription Former(FormerDescription former, ImmutableArray<Measurement> measurements) => former with
    {
        Station = measurements.BuiltOf(new FormerStation(former.Name)) ?? former.Station,
        Thickness = measurements.BuiltOf(new FormerThickness(former.Name)) ?? former.Thickness,
    };
}
