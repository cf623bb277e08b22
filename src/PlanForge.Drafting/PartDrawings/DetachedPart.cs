using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>A part whose text block stands apart from it: for a part that is cut into pieces.</summary>
internal static class DetachedPart
{
    // Widths at which the lines of the block break, mm: a column beside something, or a band below it.
    private const double Narrow = 75;
    private const double Wide = 150;

    /// <summary>The part as it is described, and its text block in every arrangement worth trying.</summary>
    public static (Sketch Flat, ImmutableArray<Sketch> Blocks) Upright(Part part, ShownUnits units) => Of(part, units);

    /// <summary>The part turned a quarter to the left, and its text block in every arrangement worth trying.</summary>
    public static (Sketch Flat, ImmutableArray<Sketch> Blocks) Turned(Part part, ShownUnits units) => Of(TurnedPart.Of(part), units);

    private static (Sketch Flat, ImmutableArray<Sketch> Blocks) Of(Part part, ShownUnits units)
    {
        var shown = units.HasInches ? InchPart.Of(part) : part;
        var sizes = LetteringSizes.For(units);
        var flat = new FlatPart(shown, units, sizes);
        var sketch = new Sketch();
        sketch.Add(flat.Sketch, default);
        if (flat.Name is { } name)
        {
            sketch.Text(name.Layer, name.Content, name.At, name.Height);
        }

        return (sketch,
        [
            TextBlock.InOneColumn(shown, units, sizes, Narrow, flat.LooseGrainArrow),
            TextBlock.InColumns(shown, units, sizes, Narrow, flat.LooseGrainArrow),
            TextBlock.InOneColumn(shown, units, sizes, Wide, flat.LooseGrainArrow),
        ]);
    }
}
