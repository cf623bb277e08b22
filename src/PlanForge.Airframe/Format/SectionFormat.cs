using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>How an aerofoil section is written.</summary>
internal static class SectionFormat
{
    public static readonly Key<TextFormat> Digits = new("naca", TextFormat.Line,
        "The four or five digits of an NACA section, in quotes.", Required);

    public static readonly Key<WordFormat> TrailingEdge = new("trailing_edge", new("open", "closed"),
        "Whether the trailing edge keeps the gap of the published formula or is closed.", DefaultsTo("open"));

    public static readonly Key<TextFormat> File = new("file", TextFormat.Line,
        "A file of section coordinates, relative to the description.", Required);

    public static readonly Key<QuantityFormat> Thickness = new("thickness", QuantityFormat.Proportion(Interval.PositiveUpTo(0.5)),
        "Maximum thickness to scale to, in chords.", Otherwise("the section's own"));

    public static readonly Key<QuantityFormat> Camber = new("camber", QuantityFormat.Proportion(Interval.Between(-0.2, 0.2)),
        "Maximum camber to scale to, in chords.", Otherwise("the section's own"));

    public static readonly Key<ListFormat> Blend = new("blend", new(() => Section!, 2, 2), "Two sections to blend.", Required);

    public static readonly Key<QuantityFormat> At = new("at", QuantityFormat.Proportion(Interval.Between(0, 1)),
        "How far from the first to the second section: 0 is the first, 1 the second.", Required);

    public static readonly MappingFormat ByDigits = new("section-naca", "an NACA section", Digits, TrailingEdge, Thickness, Camber);

    public static readonly MappingFormat ByFile = new("section-file", "a section from a file", File, Thickness, Camber);

    public static readonly MappingFormat ByBlend = new("section-blend", "a blended section", Blend, At);

    public static readonly ChoiceFormat Section = new("section", "a section", new SectionNameFormat(), ByDigits, ByFile, ByBlend);
}
