using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>One part drawn at true size with all that is said about it.</summary>
/// <param name="Part">The part, as described (not turned).</param>
/// <param name="IsTurned">True when it was turned a quarter to the left.</param>
/// <param name="Items">What is drawn, in the part's own coordinates (turned when <paramref name="IsTurned"/>).</param>
/// <param name="Bounds">The smallest upright rectangle around the ink.</param>
public sealed record PartDrawing(Part Part, bool IsTurned, ImmutableArray<DrawingItem> Items, Bounds2 Bounds)
{
    /// <summary>Draws a part as it is described, in the smallest arrangement of its texts that fits into some room.</summary>
    /// <param name="part">The part.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    /// <param name="hasRoom">Whether there is room for a width and a height, mm.</param>
    /// <returns>The drawing, or null when no arrangement fits.</returns>
    public static PartDrawing? Upright(Part part, DisplayUnit unit, Func<double, double, bool> hasRoom)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(hasRoom);
        return Arrange(part, part, unit, hasRoom);
    }

    /// <summary>The same with the part turned a quarter to the left; texts stay readable from below or from the right.</summary>
    /// <param name="part">The part.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    /// <param name="hasRoom">Whether there is room for a width and a height, mm.</param>
    /// <returns>The drawing, or null when no arrangement fits.</returns>
    public static PartDrawing? Turned(Part part, DisplayUnit unit, Func<double, double, bool> hasRoom)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(hasRoom);
        return Arrange(part, TurnedPart.Of(part), unit, hasRoom);
    }

    private static PartDrawing? Arrange(Part part, Part shown, DisplayUnit unit, Func<double, double, bool> hasRoom)
    {
        var sizes = LetteringSizes.For(unit);
        var flat = new FlatPart(shown, unit, sizes);
        if (!hasRoom(flat.Sketch.Bounds.Width, flat.Sketch.Bounds.Height))
        {
            return null;
        }

        Sketch? best = null;
        foreach (var sketch in BlockPlacing.Arrangements(flat, shown, unit, sizes))
        {
            var bounds = sketch.Bounds;
            if (hasRoom(bounds.Width, bounds.Height)
                && (best is null || bounds.Width * bounds.Height < best.Bounds.Width * best.Bounds.Height))
            {
                best = sketch;
            }
        }

        return best is null ? null : new(part, !ReferenceEquals(part, shown), best.Items, best.Bounds);
    }
}
