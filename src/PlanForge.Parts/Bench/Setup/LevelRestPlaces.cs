namespace PlanForge.Parts.Bench.Setup;

/// <summary>Distances of the level rests from the centre line, mm.</summary>
/// <param name="Root">On the wing, beside the body.</param>
/// <param name="Tip">On the wing, near its tip.</param>
/// <param name="Tailplane">On the tailplane: half way out.</param>
internal readonly record struct LevelRestPlaces(double Root, double Tip, double Tailplane)
{
    // Of the half span: so near the tip that the twist shows, on the full section still.
    private const double TipShare = 0.9;

    /// <summary>The places as described, else at the pins and at nine tenths of the half span.</summary>
    public static LevelRestPlaces Of(RiggedAirframe airframe) =>
        new(RootOf(airframe), TipOf(airframe), TailplaneOf(airframe));

    /// <summary>The place on the wing beside the body.</summary>
    public static double RootOf(RiggedAirframe airframe) =>
        airframe.Description.Bench.LevelRests.Root ?? Math.Min(PinPoints.AcrossOf(airframe), airframe.Wing.HalfSpan);

    /// <summary>The place on the wing near its tip.</summary>
    public static double TipOf(RiggedAirframe airframe) => airframe.Description.Bench.LevelRests.Tip ?? TipShare * airframe.Wing.HalfSpan;

    /// <summary>The place on the tailplane; 0 where there is none.</summary>
    public static double TailplaneOf(RiggedAirframe airframe) => (airframe.Description.Tailplane?.Span ?? 0) / 4;
}
