using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>A part drawn one way up, with its texts in every arrangement worth comparing.</summary>
public sealed class PartArrangements
{
    private readonly Part _part;
    private readonly bool _isTurned;
    private readonly ImmutableArray<Sketch> _sketches;
    private readonly PartDrawing?[] _drawings;

    private PartArrangements(Part part, Part shown, ShownUnits units)
    {
        (_part, _isTurned) = (part, !ReferenceEquals(part, shown));
        shown = units.HasInches ? InchPart.Of(shown) : shown;
        var sizes = LetteringSizes.For(units);
        _sketches = [.. BlockPlacing.Arrangements(new FlatPart(shown, units, sizes), shown, units, sizes).OrderBy(AreaOf)];
        _drawings = new PartDrawing?[_sketches.Length];
    }

    /// <summary>Draws a part as it is described.</summary>
    /// <param name="part">The part.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    /// <param name="showsBoth">True to show lengths in the other unit too, in brackets.</param>
    public static PartArrangements Upright(Part part, DisplayUnit unit, bool showsBoth = false)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(part, part, new(unit, showsBoth));
    }

    /// <summary>Draws a part turned a quarter to the left; texts stay readable from below or from the right.</summary>
    /// <param name="part">The part.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    /// <param name="showsBoth">True to show lengths in the other unit too, in brackets.</param>
    public static PartArrangements Turned(Part part, DisplayUnit unit, bool showsBoth = false)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(part, TurnedPart.Of(part), new(unit, showsBoth));
    }

    /// <summary>What the smallest arrangement takes, mm².</summary>
    internal double LeastArea => AreaOf(_sketches[0]);

    /// <summary>The arrangements that fit into some room, those that take the least area first.</summary>
    /// <param name="hasRoom">Whether there is room for a width and a height, mm.</param>
    public IEnumerable<PartDrawing> Fitting(Func<double, double, bool> hasRoom)
    {
        ArgumentNullException.ThrowIfNull(hasRoom);
        for (var i = 0; i < _sketches.Length; i++)
        {
            var sketch = _sketches[i];
            if (hasRoom(sketch.Bounds.Width, sketch.Bounds.Height))
            {
                yield return _drawings[i] ??= new(_part, _isTurned, sketch.Items, sketch.Bounds);
            }
        }
    }

    private static double AreaOf(Sketch sketch) => sketch.Bounds.Width * sketch.Bounds.Height;
}
