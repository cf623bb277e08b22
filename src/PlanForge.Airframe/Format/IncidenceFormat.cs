using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>How an incidence is written: an angle, an angle with its reference, or a rise over a length.</summary>
internal static class IncidenceFormat
{
    private static readonly QuantityFormat AnyIncidence = QuantityFormat.Angle(Interval.Between(-45, 45));

    public static readonly Key<WordFormat> Reference = new("reference", new("chord", "underside"),
        "What the angle is measured on: the chord line, or the flat of the lower surface or the line that touches it.",
        DefaultsTo("chord"));

    public static readonly Key<QuantityFormat> Angle = new("angle", AnyIncidence, "Leading edge up positive.", Required);

    public static readonly Key<QuantityFormat> Rise = new("rise", QuantityFormat.AnyLength,
        "How much higher the front end is than the rear end.", Required);

    // The word comes before a parameter of that name; `(chord)` means the parameter.
    private static readonly WordFormat OverChord = new("chord");

    public static readonly Key<ChoiceFormat> Over = new("over", new("rise-over", "a length", OverChord, QuantityFormat.PositiveLength),
        "What the rise is over: the chord, along which it is then measured, or a length along the datum line.", Required);

    public static readonly MappingFormat ByAngle = new("incidence-angle", "an incidence", Angle, Reference);

    public static readonly MappingFormat ByRise = new("incidence-rise", "an incidence", Rise, Over, Reference);

    public static readonly ChoiceFormat Value = new("incidence", "an incidence", AnyIncidence, ByAngle, ByRise);
}
