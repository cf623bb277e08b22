using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of the fuselage.</summary>
internal static class FuselageFormat
{
    public static readonly Key<QuantityFormat> SkinSide = new("side", QuantityFormat.LengthFromZero, "The sides.", DefaultsTo("0"));

    public static readonly Key<QuantityFormat> SkinTop = new("top", QuantityFormat.LengthFromZero, "The top.", Otherwise("as the sides"));

    public static readonly Key<QuantityFormat> SkinBottom = new("bottom", QuantityFormat.LengthFromZero,
        "The bottom.", Otherwise("as the sides"));

    public static readonly MappingFormat Skins = new("skins", "the skin", SkinSide, SkinTop, SkinBottom);

    public static readonly Key<ChoiceFormat> Skin = new("skin", new("skin", "the skin", QuantityFormat.LengthFromZero, Skins),
        "Thickness of the skins along the surface normal, one for all or each.", DefaultsTo("0"));

    private static readonly WordFormat Runs = new("straight", "fair");

    public static readonly Key<WordFormat> Run = new("run", Runs,
        "How the outside runs between stations: straight, or fair as a batten bends.", DefaultsTo("straight"));

    public static readonly Key<QuantityFormat> Station = new("station", QuantityFormat.AnyLength,
        "Distance aft of the description's zero; more than the station before.", Required);

    public static readonly Key<QuantityFormat> UpperHalfBreadth = new("upper", QuantityFormat.PositiveLength,
        "At the upper edge.", Required);

    public static readonly Key<QuantityFormat> LowerHalfBreadth = new("lower", QuantityFormat.PositiveLength,
        "At the lower edge.", Required);

    public static readonly MappingFormat HalfBreadths = new("half-breadths", "a half-breadth", UpperHalfBreadth, LowerHalfBreadth);

    public static readonly Key<ChoiceFormat> HalfBreadth = new("half_breadth",
        new("half-breadth", "a half-breadth", QuantityFormat.PositiveLength, HalfBreadths),
        "Half the width; two where the sides lean.", Required);

    public static readonly Key<QuantityFormat> Upper = new("upper", QuantityFormat.AnyLength,
        "Height of the top on the centre line.", Required);

    public static readonly Key<QuantityFormat> Lower = new("lower", QuantityFormat.AnyLength,
        "Height of the bottom on the centre line, below the top.", Required);

    public static readonly WordFormat NamedShape = new("box", "ellipse");

    public static readonly Key<QuantityFormat> Rounded = new("rounded", QuantityFormat.LengthFromZero,
        "Radius of all corners, at most half the width and half the height.", Required);

    public static readonly Key<QuantityFormat> UpperRadius = new("upper", QuantityFormat.LengthFromZero,
        "Radius of the upper corners.", Required);

    public static readonly Key<QuantityFormat> LowerRadius = new("lower", QuantityFormat.LengthFromZero,
        "Radius of the lower corners.", Required);

    public static readonly MappingFormat RoundedShape = new("shape-rounded", "a shape", Rounded);

    public static readonly MappingFormat ShapeOfRadii = new("shape-radii", "a shape", UpperRadius, LowerRadius);

    public static readonly Key<ChoiceFormat> Shape = new("shape", new("shape", "a shape", NamedShape, RoundedShape, ShapeOfRadii),
        "The shape of the cross-section: a box, an ellipse, or a box with rounded corners.", DefaultsTo("box"));

    public static readonly Key<WordFormat> RunAft = new("run", Runs,
        "How the outside runs from here to the next station.", Otherwise("as the fuselage"));

    public static readonly MappingFormat CrossSection = new("fuselage-station", "a fuselage station",
        Station, HalfBreadth, Upper, Lower, Shape, RunAft);

    public static readonly Key<ListFormat> Stations = new("stations", new(() => CrossSection, 2),
        "Cross-sections of the finished outside, from the nose aft.", Required);

    public static readonly Key<TextFormat> LongeronName = new("name", TextFormat.Line, "Its name.", Required);

    public static readonly Key<WordFormat> Place = new("place", new("upper corner", "lower corner", "side", "keel", "crown"),
        "Where it runs inside the skin.", Required);

    public static readonly Key<QuantityFormat> SideHeight = new("height", QuantityFormat.AnyLength,
        "Height of its middle line; for a longeron on the side, and only there.");

    public static readonly Key<SizeFormat> LongeronSize = new("size", new(true),
        "Across x up, such as 6 x 3 mm; one length for a square.", Required);

    public static readonly MappingFormat Longeron = new("longeron", "a longeron", LongeronName, Place, SideHeight, LongeronSize);

    public static readonly Key<ListFormat> Longerons = new("longerons", new(() => Longeron),
        "Longerons and stringers the formers are notched for.");

    public static readonly MappingFormat Fuselage = new("fuselage", "the fuselage", Skin, Run, Stations, Longerons);
}
