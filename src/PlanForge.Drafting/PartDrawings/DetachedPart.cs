using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>A part whose text block stands apart from it: for a part that is cut into pieces.</summary>
internal static class DetachedPart
{
    // Lines of the block break at this width, mm.
    private const double BlockWidth = 75;

    /// <summary>The part as it is described, and its text block.</summary>
    public static (Sketch Flat, Sketch Block) Upright(Part part, ShownUnits units) => Of(part, units);

    /// <summary>The part turned a quarter to the left, and its text block.</summary>
    public static (Sketch Flat, Sketch Block) Turned(Part part, ShownUnits units) => Of(TurnedPart.Of(part), units);

    private static (Sketch Flat, Sketch Block) Of(Part part, ShownUnits units)
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

        return (sketch, TextBlock.InOneColumn(shown, units, sizes, BlockWidth, flat.LooseGrainArrow));
    }
}
