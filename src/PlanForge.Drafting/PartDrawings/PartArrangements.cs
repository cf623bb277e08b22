using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>A part drawn one way up, with its texts in every arrangement worth comparing.</summary>
public sealed class PartArrangements
{
    private readonly Part _part;
    private readonly bool _isTurned;
    private readonly ImmutableArray<Sketch> _sketches;

    private PartArrangements(Part part, Part shown, DisplayUnit unit)
    {
        (_part, _isTurned) = (part, !ReferenceEquals(part, shown));
        var sizes = LetteringSizes.For(unit);
        _sketches = [.. BlockPlacing.Arrangements(new FlatPart(shown, unit, sizes), shown, unit, sizes)];
    }

    /// <summary>Draws a part as it is described.</summary>
    /// <param name="part">The part.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    public static PartArrangements Upright(Part part, DisplayUnit unit)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(part, part, unit);
    }

    /// <summary>Draws a part turned a quarter to the left; texts stay readable from below or from the right.</summary>
    /// <param name="part">The part.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    public static PartArrangements Turned(Part part, DisplayUnit unit)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(part, TurnedPart.Of(part), unit);
    }

    /// <summary>The arrangement that takes the least area of those that fit into some room, or null when none fits.</summary>
    /// <param name="hasRoom">Whether there is room for a width and a height, mm.</param>
    public PartDrawing? Smallest(Func<double, double, bool> hasRoom)
    {
        ArgumentNullException.ThrowIfNull(hasRoom);
        Sketch? best = null;
        foreach (var sketch in _sketches)
        {
            var bounds = sketch.Bounds;
            if (hasRoom(bounds.Width, bounds.Height)
                && (best is null || bounds.Width * bounds.Height < best.Bounds.Width * best.Bounds.Height))
            {
                best = sketch;
            }
        }

        return best is null ? null : new(_part, _isTurned, best.Items, best.Bounds);
    }
}
