using System.Collections.Immutable;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

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
            Stock = [.. designed.Stock.Select(sheet => SheetOf(sheet.Name, measurements) is not { } built ? sheet : sheet with
            {
                Thickness = built.Built,
                Origin = built.InsteadOf(sheet.Origin, WorkshopFormat.StockThickness),
            })],
            Formers = [.. designed.Formers.Select(former => former with
            {
                Thickness = OfPart(former.Material, former.Thickness, designed.Stock, measurements),
                Slots = [.. former.Slots.Select(slot => Slot(slot, designed, measurements))],
                Tabs = [.. former.Tabs.Select(tab => SheetOf(tab.DepthSheet, measurements) is not { } built ? tab : tab with
                {
                    Depth = built.Built,
                    Origin = built.Into(tab.Origin.Alone(FormerFormat.TabThrough), FormerFormat.TabThrough),
                })],
                Origin = OriginOfPart(former.Origin, FormerFormat.Thickness, FormerFormat.Material, former.Material, designed.Stock, measurements),
            })],
            Bolts = designed.Bolts is not { } bolts ? null : bolts with
            {
                Plate = bolts.Plate with
                {
                    Thickness = OfPart(bolts.Plate.Material, bolts.Plate.Thickness, designed.Stock, measurements),
                    Origin = OriginOfPart(
                        bolts.Plate.Origin, FittingFormat.PlateThickness, FittingFormat.PlateMaterial, bolts.Plate.Material, designed.Stock, measurements),
                },
            },
            Bench = designed.Bench with
            {
                Cradles = cradles with
                {
                    Thickness = OfPart(cradles.Material, cradles.Thickness, designed.Stock, measurements),
                    Origin = OriginOfPart(
                        cradles.Origin, BenchFormat.CradleThickness, BenchFormat.CradleMaterial, cradles.Material, designed.Stock, measurements),
                },
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

    private static Measurement? SheetOf(string? name, ImmutableArray<Measurement> measurements) =>
        name is null ? null : measurements.Of(new SheetThickness(name));

    // As it was read: the sheet's thickness and the fit.
    private static SlotDescription Slot(SlotDescription slot, AirframeDescription designed, ImmutableArray<Measurement> measurements)
    {
        if (SheetOf(slot.WidthSheet ?? slot.DepthSheet, measurements) is not { } built)
        {
            return slot;
        }

        var size = built.Built + designed.Cutter.Fit;
        var origin = built.Into(slot.Origin.Alone(FormerFormat.SlotSheet), FormerFormat.SlotSheet)
            .From(FormerFormat.SlotSheet, designed.Cutter.Origin, WorkshopFormat.SlotFit);
        return slot.WidthSheet is null ? slot with { Depth = size, Origin = origin } : slot with { Width = size, Origin = origin };
    }

    // Which sheets a part could be cut from is decided by what it and they are made of, and by their designed thicknesses.
    private static Origin OriginOfPart(
        Origin origin, Key thickness, Key ownMaterial, string material, ImmutableArray<StockDescription> stock, ImmutableArray<Measurement> measurements)
    {
        foreach (var sheet in stock)
        {
            origin = origin.From(thickness, sheet.Origin, WorkshopFormat.StockMaterial);
        }

        origin = origin.From(thickness, origin, ownMaterial);
        if (!stock.Any(sheet => sheet.IsOf(material) && SheetOf(sheet.Name, measurements) is not null))
        {
            return origin;
        }

        foreach (var sheet in stock.Where(sheet => sheet.IsOf(material)))
        {
            origin = origin.From(thickness, sheet.Origin, WorkshopFormat.StockThickness);
            origin = SheetOf(sheet.Name, measurements)?.Into(origin, thickness) ?? origin;
        }

        return origin;
    }
}
