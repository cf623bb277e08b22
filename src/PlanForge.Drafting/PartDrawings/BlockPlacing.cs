using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Where the text block of a part may stand: in a free place among its lines, below it or to its right.</summary>
internal static class BlockPlacing
{
    private const double Gap = 5;

    // Widths at which lines break: narrower ones make ragged columns, wider ones are hard to read (about 75 letters at 2.5 mm).
    private const double Narrow = 75;
    private const double Wide = 150;

    /// <summary>The part with its text block in every arrangement worth comparing.</summary>
    public static IEnumerable<Sketch> Arrangements(FlatPart flat, Part part, DisplayUnit unit, LetteringSizes sizes)
    {
        var narrow = TextBlock.Draw(part, unit, sizes, Narrow, flat.LooseGrainArrow);
        var bounds = flat.Sketch.Bounds;
        if (bounds.IsEmpty)
        {
            yield return narrow;
            yield break;
        }

        if (flat.Occupancy.Find(narrow.Bounds.Width, narrow.Bounds.Height, bounds.Centre, _ => true) is { } corner)
        {
            // Nothing can be smaller than the part alone.
            yield return Together(flat, narrow, corner - new Point2(narrow.Bounds.MinX, narrow.Bounds.MinY));
            yield break;
        }

        yield return Together(flat, narrow, new(bounds.MaxX + Gap - narrow.Bounds.MinX, bounds.MaxY - narrow.Bounds.MaxY));
        var below = bounds.Width <= Narrow
            ? narrow
            : TextBlock.Draw(part, unit, sizes, Math.Min(bounds.Width, Wide), flat.LooseGrainArrow);
        yield return Together(flat, below, new(bounds.MinX - below.Bounds.MinX, bounds.MinY - Gap - below.Bounds.MaxY));
    }

    private static Sketch Together(FlatPart flat, Sketch block, Vector2 move)
    {
        var sketch = new Sketch();
        sketch.Add(flat.Sketch, default);
        sketch.Add(block, move);
        if (flat.Name is { } name && !flat.Material.Contains(block.Bounds.Centre + move))
        {
            sketch.Text(name.Layer, name.Content, name.At, name.Height);
        }

        return sketch;
    }
}
