using System.Collections.Immutable;

namespace PlanForge.Drafting.Nests;

/// <summary>Lays out the parts of one stock.</summary>
internal static class StockNest
{
    /// <summary>The sheets that hold the parts.</summary>
    /// <param name="match">The parts and their stock, of which there is some.</param>
    /// <param name="options">How to lay out.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    public static LaidStock Lay(StockMatch match, NestOptions options, KeptDrawings kept)
    {
        var blanks = Blank.Of(match.Stocks);
        var clearance = match.Stocks.Max(stock => stock.Spacing) + options.Kerf;
        var grid = CellGrid.For(blanks.Max(blank => blank.Width), clearance);
        var tooLarge = ImmutableArray.CreateBuilder<PartShape>();
        var (items, copies) = (new List<PartShape>(), new List<int>());
        foreach (var part in match.Parts)
        {
            var shape = kept.Shapes.Of((new(part), grid), () => PartShape.Of(part, grid));
            if (!Array.Exists(blanks, blank => !blank.IsRemnant && blank.Fits(shape)))
            {
                tooLarge.Add(shape);
                continue;
            }

            for (var copy = 1; copy <= part.Quantity; copy++)
            {
                items.Add(shape);
                copies.Add(copy);
            }
        }

        if (items.Count == 0)
        {
            return new([], tooLarge.ToImmutable());
        }

        PartShape[] shapes = [.. items];
        var layout = new OrderSearch(new(blanks, grid, shapes), shapes).Best(options.Effort);
        return new([.. Sheets(layout, grid, shapes, copies)], tooLarge.ToImmutable());
    }

    private static IEnumerable<NestedSheet> Sheets(Layout layout, CellGrid grid, PartShape[] items, List<int> copies)
    {
        var counts = new Dictionary<Blank, int>();
        for (var i = 0; i < layout.Sheets.Length; i++)
        {
            var blank = layout.Sheets[i];
            var parts = ImmutableArray.CreateBuilder<NestedPart>();
            foreach (var spot in layout.Spots)
            {
                if (spot.Sheet == i)
                {
                    var (x, y) = (blank.Stock.Margin + (spot.Column * grid.Cell), blank.Stock.Margin + (spot.Row * grid.Cell));
                    var shape = items[spot.Item];
                    parts.Add(new(shape.Part, copies[spot.Item], shape.Turns[spot.Angle].At(x, y)));
                }
            }

            if (parts.Count > 0)
            {
                var number = counts[blank] = counts.GetValueOrDefault(blank) + 1;
                yield return new(
                    blank.Stock, blank.IsRemnant ? blank.Number : number, blank.IsRemnant, blank.Width, blank.Length, parts.ToImmutable());
            }
        }
    }
}

/// <summary>What came of laying out the parts of one stock.</summary>
/// <param name="Sheets">The sheets that hold parts.</param>
/// <param name="TooLarge">The parts that no sheet can hold.</param>
internal sealed record LaidStock(ImmutableArray<NestedSheet> Sheets, ImmutableArray<PartShape> TooLarge);
