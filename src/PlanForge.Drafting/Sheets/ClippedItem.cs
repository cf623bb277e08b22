using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>What a window shows of an item: lines are cut at its edges, arrow heads and texts are whole or left out.</summary>
internal static class ClippedItem
{
    /// <summary>Adds what a window shows of an item.</summary>
    /// <param name="sketch">Where it is added.</param>
    /// <param name="item">The item.</param>
    /// <param name="window">What is shown of lines.</param>
    /// <param name="share">A text is shown when its middle lies here.</param>
    /// <param name="area">The window as an area.</param>
    public static void Add(Sketch sketch, DrawingItem item, Bounds2 window, Bounds2 share, EvenOddArea area)
    {
        switch (item)
        {
            case DrawingItem.Stroke stroke when ItemExtents.Of(stroke.Path).Touches(window):
                foreach (var path in area.Inside(stroke.Path))
                {
                    sketch.Stroke(stroke.Layer, path, stroke.Style);
                }

                break;
            case DrawingItem.Fill fill when window.Contains(ItemExtents.Of(fill).Centre):
                fill.Paths.ToList().ForEach(path => sketch.Fill(fill.Layer, path));
                break;
            case DrawingItem.Text text when share.Contains(ItemExtents.Of(text).Centre):
                sketch.Text(text.Layer, text.Content, text.At, text.Height, text.Angle);
                break;
        }
    }
}
