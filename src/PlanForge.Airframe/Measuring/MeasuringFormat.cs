using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Measuring;

/// <summary>The keys of a file of measurements.</summary>
internal static class MeasuringFormat
{
    /// <summary>Readings of one length: a list, or a single one.</summary>
    private static readonly ListFormat Readings = new(() => QuantityFormat.PositiveLength, least: 1, isSingleAllowed: true);

    public static readonly Key<ListFormat> Port = new("port", Readings, "Readings on the left side.");

    public static readonly Key<ListFormat> Starboard = new("starboard", Readings, "Readings on the right side.");

    public static readonly MappingFormat Pair = new("pin-pair", "a pair of pins", Port, Starboard);

    public static readonly Key<MappingFormat> Front = new("front", Pair, "Heights of the pins at the leading edge above the board.");

    public static readonly Key<MappingFormat> Rear = new("rear", Pair, "Heights of the pins at the trailing edge above the board.");

    public static readonly Key<QuantityFormat> PortAcross = new("port", QuantityFormat.PositiveLength, "Of the left pins.", Required);

    public static readonly Key<QuantityFormat> StarboardAcross = new("starboard", QuantityFormat.PositiveLength, "Of the right pins.", Required);

    public static readonly Key<ChoiceFormat> Across = new("across",
        new("pins-across", "the distance of the pins", QuantityFormat.PositiveLength, new MappingFormat("sides-across", "the distance of the pins", PortAcross, StarboardAcross)),
        "Distance of the pins from the centre line.", Otherwise("as planned"));

    public static readonly MappingFormat PinSet = new("pins", "the pins", Across, Front, Rear);

    public static readonly Key<WordFormat> TipEdge = new("to", new("leading edge", "trailing edge"),
        "The edge of the tips that was measured to.", DefaultsTo("leading edge"));

    public static readonly MappingFormat TipSet = new("tips", "the tips", TipEdge, Port, Starboard);

    public static readonly Key<QuantityFormat> Station = new("station", QuantityFormat.AnyLength, "Its station.", Required);

    public static readonly Key<QuantityFormat> Height = new("height", QuantityFormat.AnyLength,
        "Its height above the datum line.", DefaultsTo("0"));

    public static readonly Key<MappingFormat> From = new("from", new("cord-start", "the start of the cord", Station, Height),
        "Where the cord starts, on the centre line.", Required);

    public static readonly MappingFormat CordSet = new("cord", "the cord", From, Port, Starboard);

    public static readonly Key<TextFormat> RoundName = new("name", TextFormat.Line, "What the round is called.", Required);

    public static readonly Key<MappingFormat> Pins = new("pins", PinSet, "Heights of the pins.");

    public static readonly Key<MappingFormat> Tips = new("tips", TipSet, "Heights of the tips.", AssumedEmpty);

    public static readonly Key<MappingFormat> Cord = new("cord", CordSet, "Lengths of the cord to both tips.");

    // A start on the centre line needs a station; `wing tips` is the usual way and the default.
    public static readonly Key<ChoiceFormat> TailFrom = new("from",
        new("tail-cord-start", "the start of the lengths", new WordFormat("wing tips"), From.Format),
        "Where they start: at the wing's tips, each on its own side, or at a place on the centre line.", DefaultsTo("wing tips"));

    public static readonly Key<WordFormat> TailTipEdge = new("to", TipEdge.Format,
        "The edge of the tailplane's tips that was measured to.", DefaultsTo("leading edge"));

    public static readonly MappingFormat TailCordSet = new("tail-cord", "the lengths to the tailplane's tips", TailFrom, TailTipEdge, Port, Starboard);

    public static readonly Key<MappingFormat> TailPins = new("pins", PinSet, "Heights of the tailplane's pins, T1 to T4.");

    public static readonly Key<MappingFormat> TailCord = new("cord", TailCordSet, "Lengths to both tips of the tailplane.");

    public static readonly Key<MappingFormat> Tailplane = new("tailplane", new("tail-readings", "a reading of the tailplane", TailPins, TailCord),
        "What was read at the tailplane.");

    private static readonly ListFormat Rises = new(() => QuantityFormat.AnyLength, least: 1, isSingleAllowed: true);

    public static readonly Key<QuantityFormat> ThrustOver = new("over", QuantityFormat.PositiveLength,
        "Distance of the two places of the stick, along the datum line.", Required);

    public static readonly Key<ListFormat> ThrustDown = new("down", Rises, "How much lower the front place stands than the rear one.");

    public static readonly Key<ListFormat> ThrustRight = new("right", Rises, "How much farther to the right (starboard) it stands.");

    public static readonly Key<MappingFormat> Thrust = new("thrust", new("thrust-readings", "a reading of the thrust line", ThrustOver, ThrustDown, ThrustRight),
        "What was read at a stick on the motor's shaft.");

    public static readonly WordFormat BoardWords = new("unknown", "as drawn");

    public static readonly Key<ChoiceFormat> Board = new("board_offset",
        new("board-offset", "the height of the datum line above the board", BoardWords, QuantityFormat.PositiveLength),
        "Height of the datum line above the board.", DefaultsTo("unknown"));

    public static readonly Key<QuantityFormat> Resolution = new("resolution", QuantityFormat.PositiveLength,
        "Step of the rule that was read.", DefaultsTo("0.25 mm"));

    public static readonly Key<QuantityFormat> Scatter = new("scatter", QuantityFormat.LengthFromZero,
        "Standard deviation of one reading, besides the step of the rule.", Otherwise("from repeated readings, where there are any"));

    public static readonly MappingFormat Round = new("round", "a round", RoundName, Pins, Tips, Cord, Tailplane, Thrust, Board, Resolution, Scatter);

    public static readonly Key<TextFormat> Design = new("design", TextFormat.Line, "The description that was built from.");

    public static readonly Key<WordFormat> Units = new("units", new("mm", "cm", "in"), "The unit of bare numbers.", Otherwise("the design's"));

    public static readonly Key<QuantityFormat> AcrossTolerance = new("across", QuantityFormat.PositiveLength,
        "One side against the other.", DefaultsTo("0.25 mm"));

    public static readonly Key<QuantityFormat> RiseTolerance = new("rise", QuantityFormat.PositiveLength,
        "Front over rear.", DefaultsTo("0.1 mm"));

    public static readonly Key<QuantityFormat> SquareTolerance = new("square", QuantityFormat.PositiveLength,
        "One cord against the other.", DefaultsTo("1 mm"));

    public static readonly Key<QuantityFormat> ThrustTolerance = new("thrust", QuantityFormat.Angle(Interval.PositiveUnder(45)),
        "Thrust line, down or sideways.", DefaultsTo("0.25 deg"));

    public static readonly Key<MappingFormat> Tolerance = new("tolerance",
        new("tolerance", "the tolerance", AcrossTolerance, RiseTolerance, SquareTolerance, ThrustTolerance), "What is still in order.", AssumedEmpty);

    public static readonly Key<ListFormat> Rounds = new("rounds", new(() => Round, least: 1), "The rounds, oldest first.", Required);

    public static readonly MappingFormat Root = new("measurements", "a file of measurements", Design, Units, Tolerance, Rounds);
}
