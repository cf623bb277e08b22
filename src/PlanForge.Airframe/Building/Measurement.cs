using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Building;

/// <summary>A length measured on the wood.</summary>
/// <param name="Thing">What was measured.</param>
/// <param name="Designed">What the design has there, mm.</param>
/// <param name="Built">What was measured, mm.</param>
/// <param name="At">Where it stands in the description.</param>
public sealed record Measurement(MeasuredThing Thing, double Designed, double Built, SourcePosition At)
{
    // Apart from what conversion between units leaves, mm.
    private const double Rounding = 1e-9;

    /// <summary>True when it measures otherwise than designed.</summary>
    public bool IsOff => Math.Abs(Built - Designed) > Rounding;
}

/// <summary>Looks up measurements.</summary>
internal static class Measurements
{
    /// <summary>What a thing measures, mm, or null when it was not measured.</summary>
    public static double? BuiltOf(this ImmutableArray<Measurement> measurements, MeasuredThing thing)
    {
        foreach (var measurement in measurements)
        {
            if (measurement.Thing == thing)
            {
                return measurement.Built;
            }
        }

        return null;
    }
}
