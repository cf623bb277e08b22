using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Lettering;

/// <summary>A letter as pen strokes, for capitals of height 1 standing on y = 0.</summary>
/// <remarks>Strokes are the middle lines of what the pen leaves; the pen is a tenth of the height wide.</remarks>
/// <param name="Advance">Distance from its left edge to where the next letter starts, letter gap included.</param>
/// <param name="Strokes">Open or closed paths the pen follows; empty for a space.</param>
public sealed record Glyph(double Advance, ImmutableArray<Path2> Strokes)
{
    /// <summary>The smallest upright rectangle around the strokes (their middle lines); empty for a space.</summary>
    public Bounds2 Bounds { get; } = BoundsOf(Strokes);

    private static Bounds2 BoundsOf(ImmutableArray<Path2> strokes)
    {
        var bounds = Bounds2.Empty;
        foreach (var stroke in strokes)
        {
            for (var i = 0; i < stroke.SegmentCount; i++)
            {
                bounds = bounds.Joined(stroke.SegmentAt(i).Bounds);
            }
        }

        return bounds;
    }
}
