using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>How much room a text takes.</summary>
public static class TextExtents
{
    /// <summary>The smallest upright rectangle around the ink of a text: its strokes and half the pen; empty for an empty text.</summary>
    public static Bounds2 Of(DrawingItem.Text text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Of(text.Content, text.At, text.Height, text.Angle);
    }

    /// <summary>The smallest upright rectangle around the ink of a text: its strokes and half the pen; empty for an empty text.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="at">Start of the baseline.</param>
    /// <param name="height">Height of capitals, mm.</param>
    /// <param name="angle">Direction of reading from the x axis, radians.</param>
    public static Bounds2 Of(string text, Point2 at, double height, double angle)
    {
        var bounds = Bounds2.Empty;
        if (angle == 0)
        {
            foreach (var placed in TextLayout.Of(text).Glyphs)
            {
                var own = placed.Glyph.Bounds;
                bounds = bounds
                    .Including(at + (((placed.At - Point2.Origin) + (new Vector2(own.MinX, own.MinY) * placed.Scale)) * height))
                    .Including(at + (((placed.At - Point2.Origin) + (new Vector2(own.MaxX, own.MaxY) * placed.Scale)) * height));
            }
        }
        else
        {
            foreach (var stroke in TextLayout.StrokesOf(text, at, height, angle))
            {
                for (var i = 0; i < stroke.SegmentCount; i++)
                {
                    bounds = bounds.Joined(stroke.SegmentAt(i).Bounds);
                }
            }
        }

        return bounds.IsEmpty ? bounds : bounds.Grown(StrokeAlphabet.StrokeWidth / 2 * height);
    }
}
