using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of the wing and the tailplane.</summary>
internal static class WingFormat
{
    public static readonly Key<WordFormat> Placement = new("placement", new("high", "low"),
        "high: the wing lies on the saddles; low: the fuselage lies on the wing.", DefaultsTo("high"));

    public static readonly Key<QuantityFormat> Station = new("station", QuantityFormat.AnyLength,
        "Distance aft of the description's zero.", Required);

    public static readonly Key<QuantityFormat> Height = new("height", QuantityFormat.AnyLength,
        "Height above the datum line.", Required);

    public static readonly Key<MappingFormat> LeadingEdge = new("leading_edge", new("side-point", "a leading edge", Station, Height),
        "The leading edge of the root section on the centre line.", Required);

    public static readonly Key<ChoiceFormat> Section = new("section", SectionFormat.Section, "The section on the centre line.", Required);

    public static readonly Key<QuantityFormat> Chord = new("chord", QuantityFormat.PositiveLength,
        "The chord, from leading to trailing edge.", Required);

    public static readonly Key<MappingFormat> Root = new("root", new("root", "a root", Section, Chord),
        "Section and chord on the centre line.", Required);

    public static readonly Key<ChoiceFormat> TipSection = new("section", SectionFormat.Section,
        "The section at the outer end.", Otherwise("the inner end's"));

    public static readonly Key<QuantityFormat> TipChord = new("chord", QuantityFormat.PositiveLength,
        "The chord at the outer end.", Otherwise("the inner end's"));

    public static readonly Key<QuantityFormat> Sweep = new("sweep", QuantityFormat.AnyLength,
        "How far the leading edge of the outer end lies aft of that of the inner end.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> Twist = new("twist", QuantityFormat.Angle(Interval.Between(-45, 45)),
        "Twist of the outer end against the root about the quarter chord, leading edge up positive: washout is negative.",
        Otherwise("the inner end's"));

    public static readonly Key<QuantityFormat> PanelLength = new("length", QuantityFormat.PositiveLength,
        "Length along the panel.", Required);

    // Panels meet in the plane that halves their angle: near the upright there would be no such plane on the centre line.
    public static readonly Key<QuantityFormat> Dihedral = new("dihedral", QuantityFormat.Angle(Interval.Between(-80, 80)),
        "Angle of the panel to the horizontal, tip up positive; its own, not added to its neighbour's.", DefaultsTo("0"));

    public static readonly Key<MappingFormat> PanelTip = new("tip", new("panel-tip", "a panel's tip", TipSection, TipChord, Sweep, Twist),
        "The outer end.", AssumedEmpty);

    public static readonly MappingFormat Panel = new("panel", "a panel", PanelLength, Dihedral, PanelTip);

    public static readonly Key<ListFormat> Panels = new("panels", new(() => Panel, 1),
        "The straight pieces of the starboard half, outboard from the centre line.", Required);

    public static readonly Key<ChoiceFormat> Incidence = new("incidence", IncidenceFormat.Value,
        "The angle of the root section to the datum line, leading edge up positive.", DefaultsTo("0"));

    public static readonly MappingFormat Wing = new("wing", "the wing", Placement, LeadingEdge, Incidence, Root, Panels);

    public static readonly Key<QuantityFormat> Span = new("span", QuantityFormat.PositiveLength, "The whole span.", Required);

    public static readonly Key<MappingFormat> TailplaneTip = new("tip",
        new("tailplane-tip", "the tailplane's tip", TipSection, TipChord, Sweep),
        "The ends.", AssumedEmpty);

    public static readonly Key<QuantityFormat> SeatWidth = new("seat_width", QuantityFormat.PositiveLength,
        "Width of the seat the tailplane rests on.", DefaultsTo("20 mm"));

    public static readonly MappingFormat Tailplane = new("tailplane", "the tailplane",
        LeadingEdge, Incidence, Span, Root, TailplaneTip, SeatWidth);
}
