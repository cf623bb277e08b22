using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>A part whose text block stands apart from it: for a part that is cut into pieces.</summary>
internal static class DetachedPart
{
    // Lines of the block break at this width, mm.
    private const double BlockWidth = 75;

    /// <summary>The part as it is described, and its text block.</summary>
    public static (Sketch Flat, Sketch Block) Upright(Part part, DisplayUnit unit) => Of(part, unit);

    /// <summary>The part turned a quarter to the left, and its text block.</summary>
    public static (Sketch Flat, Sketch Block) Turned(Part part, DisplayUnit unit) => Of(TurnedPart.Of(part), unit);

    private static (Sketch Flat, Sketch Block) Of(Part part, DisplayUnit unit)
    {
        var shown = unit == DisplayUnit.Inch ? InchPart.Of(part) : part;
        var sizes = LetteringSizes.For(unit);
        var flat = new FlatPart(shown, unit, sizes);
        var sketch = new Sketch();
        sketch.Add(flat.Sketch, default);
        if (flat.Name is { } name)
        {
            sketch.Text(name.Layer, name.Content, name.At, name.Height);
        }

        return (sketch, TextBlock.InOneColumn(shown, unit, sizes, BlockWidth, flat.LooseGrainArrow));
    }
}
