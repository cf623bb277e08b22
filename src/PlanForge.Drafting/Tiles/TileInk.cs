using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>Finds the windows on a sheet that show more than its frame.</summary>
internal static class TileInk
{
    // What touches the frame from outside belongs to it: zone marks and the like, mm.
    private const double FrameHalfWidth = 0.5;

    /// <summary>For each row and column whether the window holds ink besides the frame and what stands outside it.</summary>
    /// <remarks>Of a path each segment counts by its own upright rectangle: more windows may be called full than are, never fewer.</remarks>
    public static bool[,] In(Drawing drawing, TileGrid grid)
    {
        var full = new bool[grid.Rows, grid.Columns];
        var inside = InsideOfFrame(drawing);
        foreach (var item in drawing.Items)
        {
            if (!IsFrame(item, inside))
            {
                Mark(item, grid, full);
            }
        }

        return full;
    }

    private static bool IsFrame(DrawingItem item, Bounds2 inside) => item.Layer == Layer.Frame
        && (item is DrawingItem.Stroke stroke && stroke.Style == LineConventions.Frame || !ItemExtents.Of(item).Touches(inside));

    private static Bounds2 InsideOfFrame(Drawing drawing)
    {
        var largest = Bounds2.Empty;
        foreach (var item in drawing.Items)
        {
            if (item is DrawingItem.Stroke { Layer: Layer.Frame, Path.IsClosed: true } stroke && stroke.Style == LineConventions.Frame)
            {
                var bounds = ItemExtents.Of(stroke.Path);
                largest = largest.IsEmpty || bounds.Width * bounds.Height > largest.Width * largest.Height ? bounds : largest;
            }
        }

        return largest.IsEmpty
            ? new(double.NegativeInfinity, double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity)
            : largest.Grown(-FrameHalfWidth);
    }

    private static void Mark(DrawingItem item, TileGrid grid, bool[,] full)
    {
        if (item is not DrawingItem.Stroke stroke)
        {
            Mark(ItemExtents.Of(item), grid, full);
            return;
        }

        for (var i = 0; i < stroke.Path.SegmentCount; i++)
        {
            Mark(stroke.Path.SegmentAt(i).Bounds.Grown(stroke.Style.Width / 2), grid, full);
        }
    }

    private static void Mark(Bounds2 ink, TileGrid grid, bool[,] full)
    {
        if (ink.IsEmpty)
        {
            return;
        }

        var (left, right) = Range(ink.MinX, ink.MaxX, grid.WindowWidth, grid.StepAcross, grid.Columns);
        var (top, bottom) = Range(grid.Height - ink.MaxY, grid.Height - ink.MinY, grid.WindowHeight, grid.StepDown, grid.Rows);
        for (var row = top; row <= bottom; row++)
        {
            for (var column = left; column <= right; column++)
            {
                full[row, column] = true;
            }
        }
    }

    /// <summary>The first and the last of some windows in a row that a stretch touches.</summary>
    private static (int First, int Last) Range(double from, double to, double window, double step, int count) => count == 1
        ? (0, from <= window && to >= 0 ? 0 : -1)
        : (Math.Max(0, (int)Math.Ceiling((from - window) / step)), Math.Min(count - 1, (int)Math.Floor(to / step)));
}
