using System.Collections.Immutable;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Building;

/// <summary>What the builder measured on the wood, and the design before it was taken over.</summary>
/// <param name="Designed">The airframe as designed; nothing is measured in it.</param>
/// <param name="Measurements">What was measured, each thing once: stock, skin, fuselage, formers, wing, each in the order of the file.</param>
public sealed record AsBuiltDescription(AirframeDescription Designed, ImmutableArray<Measurement> Measurements)
{
    /// <summary>What was measured, each thing once; the list as a whole is all of what the description says about it.</summary>
    public ImmutableArray<Measurement> Measurements { get => Origin.Read(field, AirframeFormat.AsBuilt); init; } = Measurements;

    internal Origin Origin { get; init; }

    internal AsBuiltDescription Watched(InputLog log) => new(Designed.Watched(log), Measurements.Watched(log)) { Origin = Origin.Watched(log) };

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
            Formers = [.. built.Formers.Select(former => FormerAsBuilt(former, measurements))],
            Wing = WingAsBuilt.Apply(built.Wing, measurements),
            AsBuilt = new(designed, measurements) { Origin = designed.Origin },
        };
    }

    private static FormerDescription FormerAsBuilt(FormerDescription former, ImmutableArray<Measurement> measurements)
    {
        if (measurements.Of(new FormerStation(former.Name)) is { } station)
        {
            former = former with { Station = station.Built, Origin = station.InsteadOf(former.Origin, FormerFormat.Station) };
        }

        return measurements.Of(new FormerThickness(former.Name)) is { } thickness
            ? former with { Thickness = thickness.Built, Origin = thickness.InsteadOf(former.Origin, FormerFormat.Thickness) }
            : former;
    }
}
