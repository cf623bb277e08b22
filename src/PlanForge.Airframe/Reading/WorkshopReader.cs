using System.Collections.Immutable;
using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes stock, sheets and cutter from their values.</summary>
internal static class WorkshopReader
{
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
            stock.Add(new(
                values.Text(WorkshopFormat.StockName),
                values.Text(WorkshopFormat.StockMaterial),
                values.Number(WorkshopFormat.StockThickness),
                width,
                length,
                values.At));
        }

        findings.AreNamesDifferent(items, WorkshopFormat.StockName, "a sheet of stock");
        return stock.ToImmutable();
    }

    /// <summary>What to draw on; null when it failed.</summary>
    public static SheetsDescription? Sheets(MappingValues? values) => values is null
        ? null
        : new(values.WordText(WorkshopFormat.Paper), values.WordText(WorkshopFormat.Orientation) == "portrait", values.At);

    /// <summary>What the cutter needs; null when it failed.</summary>
    public static CutterDescription? Cutter(MappingValues? values) => values is null
        ? null
        : new(values.OptionalNumber(WorkshopFormat.Kerf), values.At);
}
