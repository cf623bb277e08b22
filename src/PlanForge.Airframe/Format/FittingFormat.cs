using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of saddles, dowels, bolts, shims and thrust line.</summary>
internal static class FittingFormat
{
    public static readonly Key<QuantityFormat> SeatTape = new("seat_tape", QuantityFormat.LengthFromZero,
        "Thickness of the tape between wing and saddle.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> Sanding = new("sanding_allowance", QuantityFormat.LengthFromZero,
        "How far a second line lies in the wing's side of the saddle line.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> SaddleDepth = new("depth", QuantityFormat.PositiveLength,
        "Depth of the template away from the saddle line.", DefaultsTo("25 mm"));

    public static readonly Key<QuantityFormat> Abrasive = new("abrasive", QuantityFormat.LengthFromZero,
        "Thickness of the abrasive on the sanding form.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> FormHeight = new("form_height", QuantityFormat.PositiveLength,
        "Height of the sanding form.", DefaultsTo("40 mm"));

    public static readonly Key<QuantityFormat> SaddleFrom = new("from", QuantityFormat.AnyLength,
        "Station where the saddle begins.", Otherwise("at the leading edge"));

    public static readonly Key<QuantityFormat> SaddleTo = new("to", QuantityFormat.AnyLength,
        "Station where the saddle ends.", Otherwise("at the trailing edge"));

    public static readonly MappingFormat Saddle = new("saddle", "the saddle",
        SeatTape, Sanding, SaddleDepth, Abrasive, FormHeight, SaddleFrom, SaddleTo);

    public static readonly Key<QuantityFormat> DowelDiameter = new("diameter", QuantityFormat.PositiveLength,
        "Measured diameter.", Required);

    public static readonly Key<QuantityFormat> Spacing = new("spacing", QuantityFormat.LengthFromZero,
        "Distance between the two axes; 0 for a single one on the centre line.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> AboveChord = new("above_chord", QuantityFormat.AnyLength,
        "Height of the axes above the root chord line.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> Protrusion = new("protrusion", QuantityFormat.PositiveLength,
        "How far they stand out ahead of the leading edge of the root.", Required);

    public static readonly Key<QuantityFormat> Fit = new("fit", QuantityFormat.LengthFromZero,
        "How much wider than the dowel the hole is.", DefaultsTo("0.1 mm"));

    public static readonly Key<MappingFormat> Dowels = new("dowels",
        new("dowels", "the dowels", DowelDiameter, Spacing, AboveChord, Protrusion, Fit),
        "Wing dowels at the leading edge, parallel to the root chord line.");

    public static readonly Key<WordFormat> Thread = new("thread",
        new("M3", "M4", "M5", "M6", "M8", "4-40", "6-32", "8-32", "10-24", "10-32", "1/4-20"),
        "Thread designation.", Required);

    public static readonly Key<QuantityFormat> AheadOfTrailingEdge = new("ahead_of_trailing_edge", QuantityFormat.PositiveLength,
        "Distance of the axes from the root trailing edge along the chord.", Required);

    public static readonly Key<TextFormat> PlateMaterial = new("material", TextFormat.Line, "What it is cut from.");

    public static readonly Key<QuantityFormat> PlateThickness = new("thickness", QuantityFormat.PositiveLength,
        "Measured thickness.", Required);

    public static readonly Key<QuantityFormat> PlateLength = new("length", QuantityFormat.PositiveLength,
        "Size fore and aft, centred on the bolts.", DefaultsTo("40 mm"));

    public static readonly Key<QuantityFormat> Gap = new("gap", QuantityFormat.LengthFromZero,
        "Clear distance between the wing's surface at the bolts and the near face of the plate.", DefaultsTo("0"));

    public static readonly Key<MappingFormat> Plate = new("plate",
        new("plate", "the plate", PlateMaterial, PlateThickness, PlateLength, Gap),
        "The plate across the body that takes the thread.", Required);

    public static readonly Key<MappingFormat> Bolts = new("bolts",
        new("bolts", "the bolts", Thread, Spacing, AheadOfTrailingEdge, Plate),
        "Wing bolts near the trailing edge, square to the root chord line.");

    public static readonly MappingFormat Retention = new("retention", "the retention", Dowels, Bolts);

    private static readonly QuantityFormat ShimAngle = QuantityFormat.Angle(Interval.Between(-10, 10));

    public static readonly Key<QuantityFormat> ShimsFrom = new("from", ShimAngle, "Least change of incidence.", DefaultsTo("-1 deg"));

    public static readonly Key<QuantityFormat> ShimsTo = new("to", ShimAngle, "Greatest change of incidence.", DefaultsTo("1 deg"));

    public static readonly Key<QuantityFormat> ShimStep = new("step", QuantityFormat.Angle(Interval.PositiveUpTo(10)),
        "Step between shims.", DefaultsTo("0.5 deg"));

    public static readonly Key<QuantityFormat> ShimWidth = new("width", QuantityFormat.PositiveLength,
        "Width of a strip.", DefaultsTo("12 mm"));

    public static readonly MappingFormat Shims = new("shims", "the shims", ShimsFrom, ShimsTo, ShimStep, ShimWidth);

    private static readonly QuantityFormat ThrustAngle = QuantityFormat.Angle(Interval.Between(-45, 45));

    public static readonly Key<QuantityFormat> Down = new("down", ThrustAngle,
        "Down-thrust, nose of the shaft down positive.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> Right = new("right", ThrustAngle, "Side-thrust, to starboard positive.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> MountAcross = new("across", QuantityFormat.PositiveLength,
        "Distance of the bolts across.", Required);

    public static readonly Key<QuantityFormat> MountUp = new("up", QuantityFormat.PositiveLength, "Distance of the bolts up.", Required);

    public static readonly Key<MappingFormat> Mount = new("mount", new("mount", "the mount", MountAcross, MountUp),
        "The four bolts of the motor mount, for the washers that turn it.");

    public static readonly MappingFormat ThrustLine = new("thrust-line", "the thrust line", Down, Right, Mount);
}
