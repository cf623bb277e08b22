using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes stock and sheets from their values.</summary>
internal static class WorkshopReader
{
    // The defaults of the format, for tiles that are given by their paper alone.
    private const double UsualMargin = 10;

    /// <summary>The sheets of material that can be made.</summary>
    public static ImmutableArray<StockDescription> Stock(List<ReadValue> items, Findings findings)
    {
        var stock = ImmutableArray.CreateBuilder<StockDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            var (width, length) = values.Size(WorkshopFormat.StockSize);
            var margin = values.Number(WorkshopFormat.StockMargin);
            CheckMargin(width, length, margin, values.AtValue(WorkshopFormat.StockSize), findings);
            stock.Add(new(
                values.Text(WorkshopFormat.StockName),
                values.Text(WorkshopFormat.StockMaterial),
                values.Number(WorkshopFormat.StockThickness),
                width,
                length,
                OnHand(values, findings),
                margin,
                values.Number(WorkshopFormat.StockSpacing),
                Remnants(values.List(WorkshopFormat.StockRemnants), margin, findings),
                values.At)
            { Origin = values.Origin });
        }

        findings.AreNamesDifferent(items, WorkshopFormat.StockName, "a sheet of stock");
        return stock.ToImmutable();
    }

    private static int? OnHand(MappingValues values, Findings findings)
    {
        if (values.OptionalNumber(WorkshopFormat.StockOnHand) is not { } count || double.IsNaN(count))
        {
            return null;
        }

        if (count != Math.Round(count))
        {
            findings.Error(
                values.AtValue(WorkshopFormat.StockOnHand),
                string.Create(CultureInfo.InvariantCulture, $"`on_hand` is {count}; sheets are counted in whole numbers"));
        }

        return (int)count;
    }

    private static ImmutableArray<StockRemnant> Remnants(List<ReadValue> items, double margin, Findings findings)
    {
        var remnants = ImmutableArray.CreateBuilder<StockRemnant>(items.Count);
        foreach (var item in items)
        {
            if (item is SizeValue size)
            {
                CheckMargin(size.First, size.Second, margin, size.At, findings);
                remnants.Add(new(size.First, size.Second, size.At));
            }
        }

        return remnants.ToImmutable();
    }

    private static void CheckMargin(double width, double length, double margin, SourcePosition at, Findings findings)
    {
        if (2 * margin >= Math.Min(width, length))
        {
            findings.Error(
                at,
                $"a sheet of {findings.Length(width)} x {findings.Length(length)} has no room inside margins of {findings.Length(margin)}");
        }
    }

    /// <summary>What to draw on; null when it failed.</summary>
    /// <param name="values">The mapping.</param>
    /// <param name="units">The description's units.</param>
    public static SheetsDescription? Sheets(MappingValues? values, DisplayUnit units) => values is null
        ? null
        : values.Paper(WorkshopFormat.Paper) is not { } paper ? null
        : new(
            paper,
            values.WordText(WorkshopFormat.Orientation) == "portrait",
            values.WordText(WorkshopFormat.Projection) == "third angle",
            values.WordText(WorkshopFormat.Lengths) == "both units",
            values.Has(WorkshopFormat.Tiles) ? Tiles(values.List(WorkshopFormat.Tiles)) : [UsualTile(units, values.At)],
            values.At)
        { Origin = values.Origin };

    private static ImmutableArray<TileDescription> Tiles(List<ReadValue> items)
    {
        var tiles = ImmutableArray.CreateBuilder<TileDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is PaperValue { Paper: var name })
            {
                tiles.Add(new(name, UsualMargin, UsualMargin, item.At));
            }
            else if (item is MappingValues values && values.Paper(WorkshopFormat.TilePaper) is { } paper)
            {
                tiles.Add(new(paper, values.Number(WorkshopFormat.TileMargin), values.Number(WorkshopFormat.TileOverlap), values.At));
            }
        }

        return tiles.ToImmutable();
    }

    private static TileDescription UsualTile(DisplayUnit units, SourcePosition at) =>
        new(new(units == DisplayUnit.Inch ? "Letter" : "A4", null, null), UsualMargin, UsualMargin, at);
}
