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

    public static readonly MappingFormat Cutter = new("cutter", "the cutter", Kerf);
}
