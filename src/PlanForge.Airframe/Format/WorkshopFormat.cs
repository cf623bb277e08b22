using static PlanForge.Airframe.Format.Presence;

namespace PlanForge.Airframe.Format;

/// <summary>The keys of stock, sheets and cutter.</summary>
internal static class WorkshopFormat
{
    public static readonly Key<TextFormat> StockName = new("name", TextFormat.Name, "Its name, no other sheet's.", Required);

    public static readonly Key<TextFormat> StockMaterial = new("material", TextFormat.Line, "What it is.", Required);

    public static readonly Key<QuantityFormat> StockThickness = new("thickness", QuantityFormat.PositiveLength,
        "Measured thickness.", Required);

    public static readonly Key<SizeFormat> StockSize = new("size", new(false),
        "Across x along the grain, such as 100 x 1000 mm.", Required);

    public static readonly MappingFormat Stock = new("stock-sheet", "a sheet of stock",
        StockName, StockMaterial, StockThickness, StockSize);

    public static readonly Key<WordFormat> Paper = new("paper", new("A4", "A3", "A2", "A1", "A0", "Letter", "Legal", "Tabloid"),
        "The paper.", DefaultsTo("A3"));

    public static readonly Key<WordFormat> Orientation = new("orientation", new("portrait", "landscape"),
        "Which way round the paper is used.", DefaultsTo("landscape"));

    public static readonly MappingFormat Sheets = new("sheets", "the sheets", Paper, Orientation);

    public static readonly Key<QuantityFormat> Kerf = new("kerf", QuantityFormat.LengthFromZero,
        "Full width the cutter burns away, as measured; without it nothing is compensated.");

    public static readonly MappingFormat Cutter = new("cutter", "the cutter", Kerf);
}
