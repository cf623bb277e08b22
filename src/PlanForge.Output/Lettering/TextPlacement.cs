using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Lettering;

/// <summary>Where each stroke of a line of lettering lies.</summary>
internal static class TextPlacement
{
    /// <summary>Every glyph of a text with the change that takes it to the drawing.</summary>
    /// <param name="text">The text.</param>
    /// <param name="alphabet">The glyph of each character.</param>
    public static IEnumerable<(Glyph Glyph, Similarity Placement)> Glyphs(DrawingItem.Text text, Func<char, Glyph> alphabet)
    {
        var along = Direction(text.Angle) * text.Height;
        var origin = text.At - Point2.Origin;
        foreach (var character in text.Content)
        {
            var glyph = alphabet(character);
            yield return (glyph, new(along, origin, IsFlipped: false));
            origin += along * glyph.Advance;
        }
    }

    /// <summary>Every pen stroke of a text, where it lies on the drawing.</summary>
    /// <param name="text">The text.</param>
    /// <param name="alphabet">The glyph of each character.</param>
    public static IEnumerable<Path2> Strokes(DrawingItem.Text text, Func<char, Glyph> alphabet)
    {
        foreach (var (glyph, placement) in Glyphs(text, alphabet))
        {
            foreach (var stroke in glyph.Strokes)
            {
                yield return placement.Apply(stroke);
            }
        }
    }

    /// <summary>The unit vector of a reading direction; exact for quarter turns, which most lettering has.</summary>
    public static Vector2 Direction(double angle)
    {
        var quarters = angle / (Math.PI / 2);
        return Math.IEEERemainder(quarters, 4) switch
        {
            0 => new(1, 0),
            1 => new(0, 1),
            2 or -2 => new(-1, 0),
            -1 => new(0, -1),
            _ => Vector2.FromAngle(angle),
        };
    }
}
