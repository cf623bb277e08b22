using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>Draws the pages of a sheet.</summary>
internal static class TilePage
{
    private const double NameHeight = 7;
    private const double NameLift = 11;
    private const double TitleLift = 15.4;
    private const double WidestMap = 34;
    private const double NarrowestMap = 12;
    private const double Space = 3;

    /// <summary>The page of one tile.</summary>
    /// <param name="set">The set the sheet belongs to.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="row">Row of the tile.</param>
    /// <param name="column">Column of the tile.</param>
    public static Page Of(SheetSet set, TiledSheet sheet, int row, int column)
    {
        var (layout, name) = (sheet.Layout, TileGrid.NameOf(row, column));
        var shown = sheet.Grid.WindowOf(row, column);
        var move = layout.Area.Centre - shown.Centre;
        var sketch = new Sketch();
        TileMarks.Draw(sketch, sheet, row, column, move);
        DrawStrip(sketch, set, sheet, name, row, column);
        return new(
            $"{sheet.Sheet.Number}-{name}",
            $"Tile {name}",
            layout.Paper.Width,
            layout.Paper.Height,
            new(sketch.Items),
            [new(sheet.Sheet, shown, move)],
            [],
            Moved(sheet.Sheet.ScaledViews, shown, move))
        {
            Chapter = TitleOf(sheet.Sheet),
            FreeLine = layout.FreeLine,
        };
    }

    /// <summary>The page of a sheet that needs no cutting up, in the middle of the paper.</summary>
    public static Page OfWhole(Sheet sheet, Paper paper)
    {
        var page = Page.Of(sheet);
        var shown = new Bounds2(0, 0, sheet.Width, sheet.Height);
        var move = new Vector2((paper.Width - sheet.Width) / 2, (paper.Height - sheet.Height) / 2);
        return page with
        {
            Width = paper.Width,
            Height = paper.Height,
            Drawing = new([]),
            Windows = [new(sheet, shown, move)],
            Bookmarks = [.. sheet.Bookmarks.Select(mark => mark with { Place = mark.Place.MovedBy(move) })],
            ScaledViews = Moved(sheet.ScaledViews, shown, move),
            FreeLine = page.FreeLine.MovedBy(move),
        };
    }

    /// <summary>Number and title of a sheet as bookmarks and captions show them.</summary>
    public static string TitleOf(Sheet sheet) => $"{Measure.Number(sheet.Number, 0)}  {sheet.Title}";

    private static void DrawStrip(Sketch sketch, SheetSet set, TiledSheet sheet, string name, int row, int column)
    {
        var strip = sheet.Layout.Strip;
        var barRoom = CheckBars.MetricLength + PrintedEdges.BarLabel + Space;
        var map = new Bounds2(
            strip.MaxX - Math.Clamp(strip.Width - barRoom, NarrowestMap, WidestMap),
            strip.MinY + TileLayout.FreeLineHeight + 0.5,
            strip.MaxX - 0.2,
            strip.MaxY - 1);
        PrintedEdges.Draw(sketch, sheet.Layout, map.MinX - strip.MinX - Space);
        PageMap.DrawSmall(sketch, sheet, map, row, column);
        sketch.Text(Layer.Frame, name, new(strip.MinX + 0.5, strip.MinY + NameLift), NameHeight);
        var left = strip.MinX + StrokeAlphabet.WidthOf(name, NameHeight) + (2 * Space);
        var (what, height) = TextWrap.Fitted(
            $"Sheet {Measure.Number(sheet.Sheet.Number, 0)} of {Measure.Number(set.Sheets.Length, 0)}: {sheet.Sheet.Title}",
            map.MinX - Space - left,
            [3.5, LetteringSizes.Least]);
        sketch.Text(Layer.Frame, what, new(left, strip.MinY + TitleLift), height);
        var (whose, least) = TextWrap.Fitted(
            $"{set.Title}, tile {name} of {Measure.Number(sheet.Count, 0)} on {sheet.Layout.Paper.Name}; print at 100 %",
            map.MinX - Space - left,
            [LetteringSizes.Least]);
        sketch.Text(Layer.Frame, whose, new(left, strip.MinY + NameLift), least);
    }

    private static ImmutableArray<ScaledView> Moved(ImmutableArray<ScaledView> views, Bounds2 shown, Vector2 move)
    {
        var result = ImmutableArray.CreateBuilder<ScaledView>();
        foreach (var view in views)
        {
            var seen = new Bounds2(
                Math.Max(view.Place.MinX, shown.MinX),
                Math.Max(view.Place.MinY, shown.MinY),
                Math.Min(view.Place.MaxX, shown.MaxX),
                Math.Min(view.Place.MaxY, shown.MaxY));
            if (!seen.IsEmpty)
            {
                result.Add(view with { Place = seen.MovedBy(move) });
            }
        }

        return result.ToImmutable();
    }
}
