using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Building;

/// <summary>A length measured on the wood.</summary>
/// <param name="Thing">What was measured.</param>
/// <param name="Designed">What the design has there, mm.</param>
/// <param name="Built">What was measured, mm.</param>
/// <param name="At">Where it stands in the description.</param>
public sealed record Measurement(MeasuredThing Thing, double Designed, double Built, SourcePosition At) : IDescribed<Measurement>
{
    /// <summary>What was measured, mm.</summary>
    public double Built { get => Key is null ? field : Origin.Read(field, Key); init; } = Built;

    /// <summary>What the design has there, mm.</summary>
    public double Designed { get => Key is null ? field : DesignedOrigin.Read(field, Key); init; } = Designed;

    /// <summary>What was measured: its name, station or number.</summary>
    public MeasuredThing Thing { get => ThingKey is null ? field : Origin.Read(field, ThingKey); init; } = Thing;

    /// <summary>The entry that it stands in.</summary>
    internal Origin Origin { get; init; }

    /// <summary>Its key there; null where it was made by hand.</summary>
    internal Key? Key { get; init; }

    /// <summary>The key of what names the thing there, or <see cref="Key"/> where the place alone does; null where it was made by hand.</summary>
    internal Key? ThingKey { get; init; }

    /// <summary>What the designed value comes from, behind <see cref="Key"/>.</summary>
    internal Origin DesignedOrigin { get; init; }

    // Apart from what conversion between units leaves, mm.
    private const double Rounding = 1e-9;

    /// <summary>True when it measures otherwise than designed.</summary>
    public bool IsOff => Math.Abs(Built - Designed) > Rounding;

    /// <inheritdoc/>
    public Measurement Watched(InputLog log) => this with { Origin = Origin.Watched(log), DesignedOrigin = DesignedOrigin.Watched(log) };

    /// <summary>An origin of which what stands behind a key is this measurement and no longer what was designed.</summary>
    internal Origin InsteadOf(Origin designed, Key key) => Key is null ? designed : designed.Instead(key, Origin, Key);

    /// <summary>An origin of which what stands behind a key comes from this measurement too, and from what says what was measured.</summary>
    internal Origin Into(Origin designed, Key key)
    {
        if (Key is null)
        {
            return designed;
        }

        var origin = designed.From(key, Origin, Key);
        return ThingKey is null ? origin : origin.From(key, Origin, ThingKey);
    }
}

/// <summary>Looks up measurements.</summary>
internal static class Measurements
{
    /// <summary>What a thing measures, mm, or null when it was not measured.</summary>
    public static double? BuiltOf(this ImmutableArray<Measurement> measurements, MeasuredThing thing) => measurements.Of(thing)?.Built;

    /// <summary>The measurement of a thing, or null when it was not measured.</summary>
    public static Measurement? Of(this ImmutableArray<Measurement> measurements, MeasuredThing thing)
    {
        foreach (var measurement in measurements)
        {
            if (measurement.Thing == thing)
            {
                return measurement;
            }
        }

        return null;
    }
}
