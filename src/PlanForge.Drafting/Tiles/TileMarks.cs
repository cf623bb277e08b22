using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>What stands around the window of a tile: ticks at its joint lines, the names of its neighbours, crosses to measure from.</summary>
internal static class TileMarks
{
    private const double Gap = 1;
    private const double LongTick = 6;
    private const double ShortTick = 3;
    private const double CrossArm = 2;
    private const double NameDistance = 1.6;
    private const double Triangle = 2.5;

    /// <summary>Draws the marks.</summary>
    /// <param name="sketch">Where they are drawn.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="row">Row of the tile.</param>
    /// <param name="column">Column of the tile.</param>
    /// <param name="move">From the sheet to the page.</param>
    public static void Draw(Sketch sketch, TiledSheet sheet, int row, int column, Vector2 move)
    {
        var window = sheet.Grid.WindowOf(row, column).MovedBy(move);
        var share = sheet.Grid.ShareOf(row, column).MovedBy(move);
        DrawTicks(sketch, window, window, ShortTick);
        DrawTicks(sketch, window, share, LongTick);
        DrawNeighbour(sketch, sheet, row, column - 1, new(window.MinX, window.Centre.Y), new(-1, 0));
        DrawNeighbour(sketch, sheet, row, column + 1, new(window.MaxX, window.Centre.Y), new(1, 0));
        DrawNeighbour(sketch, sheet, row - 1, column, new(window.Centre.X, window.MaxY), new(0, 1));
        DrawNeighbour(sketch, sheet, row + 1, column, new(window.Centre.X, window.MinY), new(0, -1));
        foreach (var (isRight, isTop) in (ReadOnlySpan<(bool, bool)>)[(false, false), (true, false), (false, true), (true, true)])
        {
            if (column == (isRight ? sheet.Grid.Columns - 1 : 0) && row == (isTop ? 0 : sheet.Grid.Rows - 1))
            {
                DrawCross(sketch, new(
                    isRight ? window.MaxX + TiledSheet.CrossDistance : window.MinX - TiledSheet.CrossDistance,
                    isTop ? window.MaxY + TiledSheet.CrossDistance : window.MinY - TiledSheet.CrossDistance));
            }
        }
    }

    /// <summary>Draws ticks outside the window, in line with the sides of a rectangle.</summary>
    private static void DrawTicks(Sketch sketch, Bounds2 window, Bounds2 sides, double length)
    {
        foreach (var x in (ReadOnlySpan<double>)[sides.MinX, sides.MaxX])
        {
            Tick(new(x, window.MaxY), new(0, 1));
            Tick(new(x, window.MinY), new(0, -1));
        }

        foreach (var y in (ReadOnlySpan<double>)[sides.MinY, sides.MaxY])
        {
            Tick(new(window.MinX, y), new(-1, 0));
            Tick(new(window.MaxX, y), new(1, 0));
        }

        void Tick(Point2 foot, Vector2 outward) =>
            sketch.Line(Layer.Frame, foot + (outward * Gap), foot + (outward * length), LineConventions.Thin);
    }

    private static void DrawCross(Sketch sketch, Point2 centre)
    {
        sketch.Line(Layer.Frame, centre - new Vector2(CrossArm, 0), centre + new Vector2(CrossArm, 0), LineConventions.Thin);
        sketch.Line(Layer.Frame, centre - new Vector2(0, CrossArm), centre + new Vector2(0, CrossArm), LineConventions.Thin);
    }

    /// <summary>Letters a neighbour's name along a side, with a triangle that points at it.</summary>
    private static void DrawNeighbour(Sketch sketch, TiledSheet sheet, int row, int column, Point2 middle, Vector2 outward)
    {
        if (!sheet.IsTile(row, column))
        {
            return;
        }

        const double Height = LetteringSizes.Least;
        var name = TileGrid.NameOf(row, column) + (sheet.IsKept(row, column) ? "" : " left out");
        var along = outward.Y == 0 ? new Vector2(0, 1) : new Vector2(1, 0);
        var start = middle - (along * ((StrokeAlphabet.WidthOf(name, Height) + (2 * Triangle)) / 2));
        var foot = start + (outward * NameDistance) + (along * (Triangle / 2));
        sketch.Fill(Layer.Frame, Path2.Polygon(
            foot - (along * (Triangle / 2)), foot + (along * (Triangle / 2)), foot + (outward * Triangle)));

        // Lettering stands on its baseline: outside the window that is the near side above it and left of it, else the far one.
        var isFar = outward.X > 0 || outward.Y < 0;
        var baseline = start + (along * (2 * Triangle)) + (outward * (NameDistance + (isFar ? Height : 0)));
        sketch.Text(Layer.Frame, name, baseline, Height, along.Angle);
    }
}
