using System.Collections.Immutable;
using PlanForge.Drafting.Model;

namespace PlanForge.Drafting.Tiles;

/// <summary>Cuts sheets into pages for a small printer, with all it takes to join them again.</summary>
public static class TilePlan
{
    /// <summary>
    /// A page of instructions, then the tiles of each sheet. The paper lies the way that takes the fewest pages, upright if both
    /// take as many; a sheet that the paper holds whole is shown whole.
    /// </summary>
    /// <param name="set">The sheets; none make no pages.</param>
    /// <param name="options">Paper, margin and overlap.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    /// <returns>The pages, or what is wrong with the options.</returns>
    public static TilePlanResult Of(SheetSet set, TileOptions options, KeptDrawings? kept = null)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(options);
        if (options.Fault() is { } fault)
        {
            return new(null, fault);
        }

        kept ??= new();
        var sheets = TileLayout.For(options).Select(layout => Cut(set, layout, options, kept)).MinBy(PagesOf)!;
        var pages = ImmutableArray.CreateBuilder<Page>();
        pages.AddRange(InstructionPages.Of(set, options, [.. sheets.OfType<TiledSheet>()], kept));
        for (var i = 0; i < sheets.Length; i++)
        {
            AddPages(set, set.Sheets[i], sheets[i], options, pages, kept);
        }

        return new(new(set.Title, set.Language, set.Sheets.IsEmpty ? [] : pages.DrainToImmutable()), null);
    }

    /// <summary>Each sheet cut up; null for one that goes on the paper whole.</summary>
    private static TiledSheet?[] Cut(SheetSet set, TileLayout layout, TileOptions options, KeptDrawings kept) =>
    [
        .. set.Sheets.Select(sheet => TiledSheet.WholeOn(sheet, options.Paper) is null
            ? kept.Tiled.Of((new(sheet), layout, options.Overlap), () => new TiledSheet(sheet, layout, options.Overlap))
            : null),
    ];

    private static int PagesOf(TiledSheet?[] sheets) => sheets.Sum(sheet => sheet?.Count ?? 1);

    private static void AddPages(
        SheetSet set, Sheet sheet, TiledSheet? tiled, TileOptions options, ImmutableArray<Page>.Builder pages, KeptDrawings kept)
    {
        if (tiled is null)
        {
            pages.Add(TilePage.OfWhole(sheet, TiledSheet.WholeOn(sheet, options.Paper)!));
            return;
        }

        pages.AddRange(kept.TilePages.Of((new(tiled), set.Title, set.Sheets.Length), () => PagesOf(set, tiled)));
    }

    private static ImmutableArray<Page> PagesOf(SheetSet set, TiledSheet tiled)
    {
        var pages = ImmutableArray.CreateBuilder<Page>(tiled.Count);
        for (var row = 0; row < tiled.Grid.Rows; row++)
        {
            for (var column = 0; column < tiled.Grid.Columns; column++)
            {
                if (tiled.IsKept(row, column))
                {
                    pages.Add(TilePage.Of(set, tiled, row, column));
                }
            }
        }

        return pages.ToImmutable();
    }
}
