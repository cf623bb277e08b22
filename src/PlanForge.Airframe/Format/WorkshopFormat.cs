using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of stock, sheets and cutter.</summary>
internal static class WorkshopFormat
{
    private static readonly SizeFormat StockRemnantSize = new(false);

    public static readonly Key<TextFormat> StockName = new("name", TextFormat.Name, "Its name, no other sheet's.", Required);

    public static readonly Key<TextFormat> StockMaterial = new("material", TextFormat.Line, "What it is.", Required);

    public static readonly Key<QuantityFormat> StockThickness = new("thickness", QuantityFormat.PositiveLength,
        "Measured thickness.", Required);

    public static readonly Key<SizeFormat> StockSize = new("size", new(false),
        "Across x along the grain, such as 100 x 1000 mm.", Required);

    public static readonly Key<QuantityFormat> StockOnHand = new("on_hand", QuantityFormat.Proportion(Interval.Between(0, 1000)),
        "How many whole sheets there are.", Otherwise("as many as are needed"));

    public static readonly Key<QuantityFormat> StockMargin = new("margin", QuantityFormat.LengthFromZero,
        "Edge of the sheet that is left free of parts.", DefaultsTo("3 mm"));

    public static readonly Key<QuantityFormat> StockSpacing = new("spacing", QuantityFormat.LengthFromZero,
        "Least distance between the cut lines of two parts.", DefaultsTo("3 mm"));

    public static readonly Key<ListFormat> StockRemnants = new("remnants", new(() => StockRemnantSize),
        "Rectangles left over of this stock, used before whole sheets; each across x along the grain.");

    public static readonly MappingFormat Stock = new("stock-sheet", "a sheet of stock",
        StockName, StockMaterial, StockThickness, StockSize, StockOnHand, StockMargin, StockSpacing, StockRemnants);

    public static readonly Key<PaperFormat> Paper = new("paper", PaperFormat.Any, "The paper.", DefaultsTo("A3"));

    public static readonly Key<WordFormat> Orientation = new("orientation", new("portrait", "landscape"),
        "Which way round the paper is used.", DefaultsTo("landscape"));

    public static readonly Key<WordFormat> Projection = new("projection", new("first angle", "third angle"),
        "How the views of the general arrangement are set out.", DefaultsTo("first angle"));

    public static readonly Key<WordFormat> Lengths = new("lengths", new("own units", "both units"),
        "Whether dimensions are in the description's units alone, or with the other system's beside them.", DefaultsTo("own units"));

    public static readonly Key<PaperFormat> TilePaper = new("paper", PaperFormat.Cut, "The paper of the tiles.", Required);

    public static readonly Key<QuantityFormat> TileMargin = new("margin", QuantityFormat.LengthFromZero,
        "The edge that the printer leaves white.", DefaultsTo("10 mm"));

    public static readonly Key<QuantityFormat> TileOverlap = new("overlap", QuantityFormat.LengthFromZero,
        "How much two neighbouring tiles show of each other.", DefaultsTo("10 mm"));

    public static readonly MappingFormat Tile = new("tile", "a tile's paper", TilePaper, TileMargin, TileOverlap);

    public static readonly ChoiceFormat TileChoice = new("tile-paper", "a tile's paper", PaperFormat.Cut, Tile);

    public static readonly Key<ListFormat> Tiles = new("tiles", new(() => TileChoice),
        "Small papers that the sheets are printed on in tiles, each into a file of its own.",
        Otherwise("A4, or Letter where units are in"));

    public static readonly MappingFormat Sheets = new("sheets", "the sheets", Paper, Orientation, Projection, Lengths, Tiles);

    public static readonly Key<QuantityFormat> Kerf = new("kerf", QuantityFormat.LengthFromZero,
        "Full width the cutter burns away, as measured; without it nothing is compensated.");

    public static readonly Key<TextFormat> KerfMaterial = new("material", TextFormat.Line, "What is cut, as parts and stock say it.", Required);

    public static readonly Key<QuantityFormat> KerfThickness = new("thickness", QuantityFormat.PositiveLength,
        "Thickness of the sheet.", Otherwise("in any thickness that has no entry of its own"));

    public static readonly Key<QuantityFormat> KerfWidth = new("kerf", QuantityFormat.LengthFromZero, "Kerf in it, as measured.", Required);

    public static readonly MappingFormat KerfEntry = new("kerf-entry", "a kerf", KerfMaterial, KerfThickness, KerfWidth);

    public static readonly Key<ListFormat> Kerfs = new("kerfs", new(() => KerfEntry),
        "Kerfs by material and thickness; the nearest description of a sheet wins over the plain kerf.");

    public static readonly Key<QuantityFormat> SlotFit = new("fit", new(Dimension.Length, Interval.Between(-1, 1)),
        "How much wider than the sheet a slot is that names one; under 0 for a press fit.");

    public static readonly Key<QuantityFormat> HoldingTabWidth = new("width", QuantityFormat.PositiveLength,
        "Width of the wood that is left, 0.5 mm to 2 mm as a rule.", DefaultsTo("1 mm"));

    public static readonly Key<QuantityFormat> HoldingTabCount = new("count", QuantityFormat.Proportion(Interval.Between(1, 24)),
        "How many on each outline, a whole number.", DefaultsTo("3"));

    public static readonly Key<MappingFormat> HoldingTabs = new("holding_tabs",
        new("holding-tabs", "holding tabs", HoldingTabWidth, HoldingTabCount), "Bridges that keep parts in their sheet.");

    public static readonly Key<TextFormat> CutterProfile = new("profile", TextFormat.Line,
        "File beside the description that says how the shop wants its layers.");

    private static readonly QuantityFormat Speed = QuantityFormat.Proportion(Interval.Positive);

    public static readonly Key<QuantityFormat> CutSpeed = new("cut_speed", Speed, "Speed of cutting, a plain number of millimetres in a second.");

    public static readonly Key<QuantityFormat> ScoreSpeed = new("score_speed", Speed, "Speed of scoring, a plain number of millimetres in a second.");

    public static readonly Key<QuantityFormat> EngraveSpeed = new("engrave_speed", Speed,
        "Speed of engraving, a plain number of millimetres in a second.");

    public static readonly MappingFormat Cutter = new("cutter", "the cutter", Kerf, Kerfs, SlotFit, HoldingTabs, CutterProfile,
        CutSpeed, ScoreSpeed, EngraveSpeed);
}
