using System.Collections.Immutable;

namespace PlanForge.Airframe.Building;

/// <summary>Takes over measured sheets of stock: the sheets themselves, and all that is made to their thickness.</summary>
/// <remarks>
/// A slot or tab follows the sheet it names. A part names no sheet but a material and a thickness: where these are exactly those
/// a sheet was designed with, the part is cut from that sheet and is as thick as it. A part that states another thickness
/// has been measured by itself and keeps it, and so does one that several sheets of different measured thickness would fit.
/// </remarks>
internal static class StockAsBuilt
{
    // Apart from what conversion between units leaves, mm.
    private const double Rounding = 1e-9;

    /// <summary>The airframe with measured sheets.</summary>
    public static AirframeDescription Apply(AirframeDescription designed, ImmutableArray<Measurement> measurements)
    {
        if (!measurements.Any(measurement => measurement.Thing is SheetThickness))
        {
            return designed;
        }

        var cradles = designed.Bench.Cradles;
        return designed with
        {
            Stock = [.. designed.Stock.Select(sheet => sheet with { Thickness = Built(sheet, measurements) })],
            Formers = [.. designed.Formers.Select(former => former with
            {
                Thickness = OfPart(former.Material, former.Thickness, designed.Stock, measurements),
                Slots = [.. former.Slots.Select(slot => slot with
                {
                    Width = slot.Width + Growth(slot.WidthSheet, designed.Stock, measurements),
                    Depth = slot.Depth + Growth(slot.DepthSheet, designed.Stock, measurements),
                })],
                Tabs = [.. former.Tabs.Select(tab => tab with { Depth = tab.Depth + Growth(tab.DepthSheet, designed.Stock, measurements) })],
            })],
            Bolts = designed.Bolts is not { } bolts ? null : bolts with
            {
                Plate = bolts.Plate with { Thickness = OfPart(bolts.Plate.Material, bolts.Plate.Thickness, designed.Stock, measurements) },
            },
            Bench = designed.Bench with
            {
                Cradles = cradles with { Thickness = OfPart(cradles.Material, cradles.Thickness, designed.Stock, measurements) },
            },
        };
    }

    /// <summary>Sheets that parts of one material and thickness could all be cut from, though they measure differently; the first two.</summary>
    public static (StockDescription First, StockDescription Other)? Undecided(
        string material, double thickness, ImmutableArray<StockDescription> stock, ImmutableArray<Measurement> measurements)
    {
        ImmutableArray<StockDescription> sheets = [.. SheetsOf(material, thickness, stock)];
        foreach (var sheet in sheets)
        {
            if (Math.Abs(Built(sheet, measurements) - Built(sheets[0], measurements)) > Rounding)
            {
                return (sheets[0], sheet);
            }
        }

        return null;
    }

    private static double OfPart(
        string material, double thickness, ImmutableArray<StockDescription> stock, ImmutableArray<Measurement> measurements) =>
        SheetsOf(material, thickness, stock).FirstOrDefault() is not { } sheet || Undecided(material, thickness, stock, measurements) is not null
            ? thickness
            : thickness + (Built(sheet, measurements) - sheet.Thickness);

    private static IEnumerable<StockDescription> SheetsOf(string material, double thickness, ImmutableArray<StockDescription> stock) =>
        stock.Where(sheet => sheet.IsOf(material) && Math.Abs(sheet.Thickness - thickness) <= Rounding);

    private static double Built(StockDescription sheet, ImmutableArray<Measurement> measurements) =>
        measurements.BuiltOf(new SheetThickness(sheet.Name)) ?? sheet.Thickness;

    // Added to what follows the sheet, so that a fit stays what it is; nothing is added where it measures as designed.
    private static double Growth(string? name, ImmutableArray<StockDescription> stock, ImmutableArray<Measurement> measurements) =>
        name is not null && stock.FirstOrDefault(sheet => sheet.Name == name) is { } named ? Built(named, measurements) - named.Thickness : 0;
}
