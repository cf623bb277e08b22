using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Where the text block of a part may stand: in a free place among its lines, below it or to its right.</summary>
internal static class BlockPlacing
{
    private const double Gap = 5;

    // Widths at which lines break: narrower ones make ragged columns, wider ones are hard to read (about 75 letters at 2.5 mm).
    private const double Slim = 55;
    private const double Narrow = 75;
    private const double Wide = 150;

    /// <summary>The part with its text block in every arrangement worth comparing.</summary>
    public static IEnumerable<Sketch> Arrangements(FlatPart flat, Part part, ShownUnits units, LetteringSizes sizes)
    {
        var narrow = InOneColumn(Narrow);
        var bounds = flat.Sketch.Bounds;
        if (bounds.IsEmpty)
        {
            yield return narrow;
            yield return InOneColumn(Slim);
            yield break;
        }

        if (part.Making == Making.View)
        {
            // The title of a view stands under it.
            yield return Below(flat, InOneColumn(Math.Max(bounds.Width, Narrow)));
            yield break;
        }

        if (flat.Occupancy.Find(narrow.Bounds.Width, narrow.Bounds.Height, bounds.Centre, _ => true) is { } corner)
        {
            // Nothing can be smaller than the part alone.
            yield return Together(flat, narrow, corner - new Point2(narrow.Bounds.MinX, narrow.Bounds.MinY));
            yield break;
        }

        yield return Beside(flat, narrow);
        yield return Beside(flat, InOneColumn(Slim));
        yield return Below(flat, bounds.Width <= Narrow ? narrow : InOneColumn(Math.Min(bounds.Width, Wide)));
        if (part.Tables.Length > 0)
        {
            yield return Below(flat, TextBlock.InColumns(part, units, sizes, Narrow, flat.LooseGrainArrow));
        }

        Sketch InOneColumn(double width) => TextBlock.InOneColumn(part, units, sizes, width, flat.LooseGrainArrow);
    }

    private static Sketch Below(FlatPart flat, Sketch block)
    {
        var bounds = flat.Sketch.Bounds;
        return Together(flat, block, new(bounds.MinX - block.Bounds.MinX, bounds.MinY - Gap - block.Bounds.MaxY));
    }

    private static Sketch Beside(FlatPart flat, Sketch block)
    {
        var bounds = flat.Sketch.Bounds;
        return Together(flat, block, new(bounds.MaxX + Gap - block.Bounds.MinX, bounds.MaxY - block.Bounds.MaxY));
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
