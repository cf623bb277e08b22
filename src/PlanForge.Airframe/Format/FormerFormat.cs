using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of a former.</summary>
internal static class FormerFormat
{
    public static readonly Key<TextFormat> Name = new("name", TextFormat.Name,
        "Its name, no other former's; its files are called after it.", Required);

    public static readonly Key<QuantityFormat> Station = new("station", QuantityFormat.AnyLength, "Station of its front face.", Required);

    public static readonly Key<QuantityFormat> Thickness = new("thickness", QuantityFormat.PositiveLength,
        "Measured thickness of the sheet.", Required);

    public static readonly Key<TextFormat> Material = new("material", TextFormat.Line, "What it is cut from.");

    public static readonly Key<WordFormat> Grain = new("grain", new("across", "upright"),
        "Direction of the wood's grain.", DefaultsTo("across"));

    public static readonly Key<WordFormat> Role = new("role", new("former", "cross-former"),
        "A cross-former is the former that takes the wing dowels.", DefaultsTo("former"));

    public static readonly Key<QuantityFormat> UpperAllowance = new("upper", QuantityFormat.LengthFromZero,
        "On the upper edge.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> LowerAllowance = new("lower", QuantityFormat.LengthFromZero,
        "On the lower edge.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> SideAllowance = new("side", QuantityFormat.LengthFromZero,
        "On both sides.", DefaultsTo("0"));

    public static readonly Key<MappingFormat> Allowance = new("allowance",
        new("allowance", "an allowance", UpperAllowance, LowerAllowance, SideAllowance),
        "Extra wood left on purpose outside the finished edge.", AssumedEmpty);

    public static readonly Key<WordFormat> BevelEdge = new("edge", new("upper", "lower"), "The edge that is bevelled.", Required);

    public static readonly Key<WordFormat> BevelFace = new("face", new("front", "rear"), "The face on which wood is taken off.", Required);

    public static readonly Key<QuantityFormat> BevelAngle = new("angle", QuantityFormat.Angle(Interval.PositiveUnder(80)),
        "Angle between the bevel and the square edge.", Required);

    public static readonly Key<MappingFormat> Bevel = new("bevel", new("bevel", "a bevel", BevelEdge, BevelFace, BevelAngle),
        "An edge cut at an angle.");

    public static readonly Key<QuantityFormat> Diameter = new("diameter", QuantityFormat.PositiveLength,
        "Diameter of a round opening.", Required);

    public static readonly Key<QuantityFormat> Width = new("width", QuantityFormat.PositiveLength, "Size across.", Required);

    public static readonly Key<QuantityFormat> Depth = new("depth", QuantityFormat.PositiveLength, "Size up.", Required);

    public static readonly Key<QuantityFormat> Height = new("height", QuantityFormat.AnyLength,
        "Height of its middle above the datum line.", Required);

    public static readonly Key<QuantityFormat> Across = new("across", QuantityFormat.AnyLength,
        "Distance of its middle from the centre line; off the centre line it is made on both sides.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> CornerRadius = new("corner_radius", QuantityFormat.LengthFromZero,
        "Radius of the corners, at most half the smaller size.", DefaultsTo("0"));

    public static readonly MappingFormat RoundOpening = new("opening-round", "an opening", Diameter, Height, Across);

    public static readonly MappingFormat SquareOpening = new("opening-square", "an opening", Width, Depth, Height, Across, CornerRadius);

    public static readonly ChoiceFormat Opening = new("opening", "an opening", RoundOpening, SquareOpening);

    public static readonly Key<ListFormat> Openings = new("openings", new(() => Opening), "Openings cut through it.");

    public static readonly Key<QuantityFormat> Rim = new("rim", QuantityFormat.PositiveLength, "Width of the rim that remains.", Required);

    public static readonly Key<QuantityFormat> InsideRadius = new("corner_radius", QuantityFormat.LengthFromZero,
        "Radius of the inside corners.", DefaultsTo("0"));

    public static readonly Key<MappingFormat> Lightening = new("lightening", new("lightening", "a lightening opening", Rim, InsideRadius),
        "A large opening that follows the outline.");

    public static readonly MappingFormat PlainSlot = new("slot-plain", "a slot", Width, Depth, Height, Across);

    public static readonly Key<TextFormat> SlotSheet = new("sheet", TextFormat.Name,
        "Name of the sheet of stock that goes through it: the slot is as wide as that is thick, and the cutter's fit.", Required);

    public static readonly Key<QuantityFormat> SlotLength = new("length", QuantityFormat.PositiveLength, "Its long side.", Required);

    public static readonly Key<WordFormat> SlotRuns = new("runs", new("across", "upright"), "Which way its long side runs.", DefaultsTo("upright"));

    public static readonly MappingFormat SheetSlot = new("slot-sheet", "a slot", SlotSheet, SlotLength, SlotRuns, Height, Across);

    public static readonly ChoiceFormat Slot = new("slot", "a slot", PlainSlot, SheetSlot);

    public static readonly Key<ListFormat> Slots = new("slots", new(() => Slot), "Slots cut through it or into its edge.");

    public static readonly Key<WordFormat> TabEdge = new("edge", new("side", "upper", "lower"),
        "The edge it stands on; side means both sides.", Required);

    public static readonly Key<QuantityFormat> TabPosition = new("position", QuantityFormat.AnyLength,
        "Middle of the tab along the edge: height on a side, distance from the centre line on the others.", Required);

    public static readonly Key<QuantityFormat> TabWidth = new("width", QuantityFormat.PositiveLength, "Size along the edge.", Required);

    public static readonly Key<QuantityFormat> TabDepth = new("depth", QuantityFormat.PositiveLength, "How far it stands out.", Required);

    public static readonly MappingFormat PlainTab = new("tab-plain", "a tab", TabEdge, TabPosition, TabWidth, TabDepth);

    public static readonly Key<TextFormat> TabThrough = new("through", TextFormat.Name,
        "Name of the sheet of stock it goes through: it stands out as far as that is thick.", Required);

    public static readonly MappingFormat SheetTab = new("tab-sheet", "a tab", TabEdge, TabPosition, TabWidth, TabThrough);

    public static readonly ChoiceFormat Tab = new("tab", "a tab", PlainTab, SheetTab);

    public static readonly Key<ListFormat> Tabs = new("tabs", new(() => Tab), "Tabs standing out from its edge.");

    public static readonly MappingFormat Former = new("former", "a former", Name, Station, Thickness, Material, Grain, Role,
        Allowance, Bevel, Openings, Lightening, Slots, Tabs);
}
