using PlanForge.Drafting.Lettering;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Model;

/// <summary>How much room a thing on a drawing takes.</summary>
public static class ItemExtents
{
    /// <summary>The smallest upright rectangle around the ink of an item, the width of the pen included.</summary>
    public static Bounds2 Of(DrawingItem item) => item switch
    {
        DrawingItem.Stroke stroke => Of(stroke.Path).Grown(stroke.Style.Width / 2),
        DrawingItem.Fill fill => Of(fill),
        DrawingItem.Text text => TextExtents.Of(text),
        _ => throw new ArgumentOutOfRangeException(nameof(item), item, "An item is a stroke, a fill or a text."),
    };

    /// <summary>The smallest upright rectangle around all items; empty for none.</summary>
    public static Bounds2 OfAll(IEnumerable<DrawingItem> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        var bounds = Bounds2.Empty;
        foreach (var item in items)
        {
            bounds = bounds.Joined(Of(item));
        }

        return bounds;
    }

    /// <summary>The smallest upright rectangle around the middle line of a path.</summary>
    internal static Bounds2 Of(Path2 path)
    {
        var bounds = Bounds2.Empty;
        for (var i = 0; i < path.SegmentCount; i++)
        {
            bounds = bounds.Joined(path.SegmentAt(i).Bounds);
        }

        return bounds;
    }

    private static Bounds2 Of(DrawingItem.Fill fill)
    {
        var bounds = Bounds2.Empty;
        foreach (var path in fill.Paths)
        {
            bounds = bounds.Joined(Of(path));
        }

        return bounds;
    }
}
