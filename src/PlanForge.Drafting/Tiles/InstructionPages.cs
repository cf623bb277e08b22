using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Drafting.Printing;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tiles;

/// <summary>The first page of a tiled set: how to print, measure and join the tiles, and a map of them. It may run on.</summary>
internal static class InstructionPages
{
    private const double Body = LetteringSizes.Least;
    private const double BlockGap = 5;
    private const int MostMapsAcross = 4;
    private const int RowsOfTable = 18;

    /// <summary>Draws the pages.</summary>
    public static ImmutableArray<Page> Of(SheetSet set, TileOptions options, ImmutableArray<TiledSheet> sheets, KeptDrawings kept)
    {
        var flow = new BlockFlow(TileLayout.For(options)[0]);
        AddTitle(flow, set, options);
        AddSteps(flow, options, sheets);
        AddInchBar(flow);
        AddTable(flow, ShrinkCause.TableFor(options.Paper));
        foreach (var rows in RowsOf(set, sheets).Chunk(RowsOfTable))
        {
            AddTable(flow, new("", ["Sheet", "Shows", "Pages", "Size in mm", "From cross to opposite cross"], [.. rows]));
        }

        AddMaps(flow, sheets, kept);
        return flow.Pages(set);
    }

    private static void AddTitle(BlockFlow flow, SheetSet set, TileOptions options)
    {
        var sketch = new Sketch();
        var (title, height) = TextWrap.Fitted($"{set.Title}, tiles on {options.Paper.Name}", flow.Width, [5, 3.5, Body]);
        sketch.Text(Layer.Notes, title, new(0, 0), height);
        flow.Add(sketch, BlockGap);
    }

    private static void AddSteps(BlockFlow flow, TileOptions options, ImmutableArray<TiledSheet> sheets)
    {
        var half = Measure.Number(options.Overlap / 2, 1);
        var steps = ImmutableArray.CreateBuilder<string>();
        steps.Add("Print at 100 % (dialogs also say actual size); switch off every kind of fitting, shrinking or borderless printing.");
        steps.Add("Let the page rest, then measure both bars along its edges with a rule. They must measure 100 mm within 0.2 mm; "
            + "if one does not, do not use the pages: the table below names the likely cause. The edge of the paper is no reference.");
        if (!sheets.IsEmpty)
        {
            steps.Add($"Long ticks outside a drawing stand in line with the joint lines; the drawing runs {half} mm past them. Trim one of two "
                + "neighbours along its joint line, lay it on the other so that ticks and drawing meet, and tape. Or trim both and butt them.");
            steps.Add("Join the tiles of a row first, then the rows. Triangles at the sides of a drawing point at the neighbours. "
                + "Leave the outer edges of the sheet untrimmed: the crosses for the last check stand there."
                + (sheets.Any(sheet => sheet.HasGaps) ? " Tiles that a map crosses out are empty and have no page." : ""));
            steps.Add("Measure from cross to opposite cross, both ways; the list below has the true length. "
                + "If the two differ from each other, the tiles are joined askew.");
        }

        steps.Add("Caution: paper grows and shrinks with the moisture of the air, by 0.1 to 0.2 % along its grain and 0.2 to 0.4 % across. "
            + "Measure again before wood is cut if the pages were printed another day.");
        for (var i = 0; i < steps.Count; i++)
        {
            var step = NumberedStep.Draw(i + 1, steps[i], flow.Width, out var below);
            flow.Add(step, below + (i == steps.Count - 1 ? BlockGap : NumberedStep.Gap));
        }
    }

    private static void AddInchBar(BlockFlow flow)
    {
        var inches = (int)Math.Clamp(Math.Floor((flow.Width - PrintedEdges.BarLabel) / Measure.Inch), 1, 4);
        var sketch = new Sketch();
        CheckBars.Draw(
            sketch, new(0, 0), new(1, 0), inches * Measure.Inch, 2 * inches, 2, $"{Measure.Number(inches, 0)} in");
        flow.Add(sketch, BlockGap);
    }

    private static void AddTable(BlockFlow flow, PartTable table)
    {
        if (!table.Rows.IsEmpty)
        {
            flow.Add(TableDrawing.Draw(table, Body), BlockGap);
        }
    }

    private static IEnumerable<ImmutableArray<string>> RowsOf(SheetSet set, ImmutableArray<TiledSheet> sheets)
    {
        foreach (var sheet in set.Sheets)
        {
            var tiled = sheets.FirstOrDefault(tiled => ReferenceEquals(tiled.Sheet, sheet));
            var (title, _) = TextWrap.Fitted(sheet.Title, 60, [Body]);
            yield return
            [
                Measure.Number(sheet.Number, 0),
                title,
                tiled is null ? "1, whole" : Measure.Number(tiled.Count, 0) + (tiled.HasGaps ? $" of {Measure.Number(tiled.Grid.Rows * tiled.Grid.Columns, 0)}" : ""),
                $"{Measure.Number(sheet.Width, 1)} × {Measure.Number(sheet.Height, 1)}",
                tiled?.Diagonal is { } diagonal ? DiagonalText(diagonal) : "",
            ];
        }
    }

    /// <summary>A length to 0.1 mm and to 1/64 in.</summary>
    private static string DiagonalText(double millimetres)
    {
        var sixtyfourths = Math.Round(millimetres / Measure.Inch * 64) / 64;
        return $"{Measure.Number(millimetres, 1)} mm = {Measure.InchFraction(sixtyfourths)} in";
    }

    /// <summary>Draws a map of each sheet: as large as they all have room for on this page, else two in a row on the pages after it.</summary>
    private static void AddMaps(BlockFlow flow, ImmutableArray<TiledSheet> sheets, KeptDrawings kept)
    {
        var rows = Enumerable.Range(1, MostMapsAcross)
            .Select(across => MapRows(flow.Width, sheets, across, kept))
            .FirstOrDefault(rows => rows.Sum(row => row.Sketch.Bounds.Height + BlockGap) <= flow.Room + BlockGap)
            ?? MapRows(flow.Width, sheets, 2, kept);
        foreach (var (sketch, views) in rows)
        {
            flow.Add(sketch, BlockGap, views);
        }
    }

    private static List<(Sketch Sketch, ImmutableArray<ScaledView> Views)> MapRows(
        double fullWidth, ImmutableArray<TiledSheet> sheets, int across, KeptDrawings kept)
    {
        const double Caption = 6;
        var width = (fullWidth - ((across - 1) * BlockGap)) / across;
        var rows = new List<(Sketch, ImmutableArray<ScaledView>)>();
        foreach (var row in sheets.Chunk(across))
        {
            var sketch = new Sketch();
            var views = ImmutableArray.CreateBuilder<ScaledView>(row.Length);
            for (var i = 0; i < row.Length; i++)
            {
                var left = i * (width + BlockGap);
                var room = new Bounds2(left, 0, left + width, width * Math.Min(0.8, row.Max(sheet => sheet.Grid.Height / sheet.Grid.Width)));
                var title = TilePage.TitleOf(row[i].Sheet);
                var tiled = row[i];
                var map = kept.Maps.Of((new(tiled), room), () => PageMap.Large(tiled, room, "Map of sheet " + title));
                sketch.Add(map.Sketch);
                views.Add(map.View);
                var (caption, height) = TextWrap.Fitted("Sheet " + title, width, [Body]);
                sketch.Text(Layer.Notes, caption, new(left, -Caption + 1), height);
            }

            rows.Add((sketch, views.ToImmutable()));
        }

        return rows;
    }
}
