using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of the set-up on the building board.</summary>
internal static class BenchFormat
{
    public static readonly Key<QuantityFormat> OutboardOfSide = new("outboard_of_side", QuantityFormat.LengthFromZero,
        "How far outside the body sides the pins stand.", DefaultsTo("10 mm"));

    public static readonly Key<MappingFormat> Pins = new("pins", new("pins", "the pins", OutboardOfSide),
        "Points to measure from.", AssumedEmpty);

    public static readonly Key<QuantityFormat> Clearance = new("clearance", QuantityFormat.LengthFromZero,
        "Height above the board of whatever hangs lowest: the body, a former left long, the wing.", DefaultsTo("50 mm"));

    public static readonly Key<QuantityFormat> CradleStation = new("station", QuantityFormat.AnyLength,
        "Station of its front face.", Required);

    private static readonly MappingFormat Cradle = new("cradle", "a cradle", CradleStation);

    public static readonly Key<MappingFormat> FrontCradle = new("front", Cradle,
        "The front cradle.", Otherwise("near a quarter of the body's length, clear of a low wing"));

    public static readonly Key<MappingFormat> RearCradle = new("rear", Cradle,
        "The rear cradle.", Otherwise("near three quarters of the body's length, clear of a low wing"));

    public static readonly Key<TextFormat> CradleMaterial = new("material", TextFormat.Line,
        "What cradles, level rests and drilling guides are cut from.", DefaultsTo("light ply"));

    public static readonly Key<QuantityFormat> CradleThickness = new("thickness", QuantityFormat.PositiveLength,
        "Measured thickness; the slots of the feet are cut to it.", DefaultsTo("4 mm"));

    public static readonly Key<QuantityFormat> Foot = new("foot", QuantityFormat.PositiveLength,
        "Length of a foot fore and aft.", DefaultsTo("60 mm"));

    public static readonly Key<MappingFormat> Cradles = new("cradles",
        new("cradles", "the cradles", FrontCradle, RearCradle, CradleMaterial, CradleThickness, Foot),
        "What holds the body with its datum line parallel to the board.", AssumedEmpty);

    public static readonly Key<QuantityFormat> RootRest = new("root", QuantityFormat.PositiveLength,
        "Distance of the inner one from the centre line.", Otherwise("at the pins"));

    public static readonly Key<QuantityFormat> TipRest = new("tip", QuantityFormat.PositiveLength,
        "Distance of the outer one from the centre line.", Otherwise("nine tenths of the half span"));

    public static readonly Key<MappingFormat> LevelRests = new("level_rests",
        new("level-rests", "the level rests", RootRest, TipRest), "Where on the wing the level rests stand.", AssumedEmpty);

    public static readonly Key<QuantityFormat> CordStation = new("station", QuantityFormat.AnyLength,
        "Station of the pin on the centre line.", Required);

    public static readonly Key<MappingFormat> Cord = new("cord", new("cord", "the cord", CordStation),
        "The pin at the tail from which both tips must be equally far.", Otherwise("at the body's last station"));

    public static readonly MappingFormat Bench = new("bench", "the bench", Pins, Clearance, Cradles, LevelRests, Cord);
}
