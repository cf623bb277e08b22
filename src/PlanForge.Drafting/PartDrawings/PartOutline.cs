using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>How far a part reaches and where its material is.</summary>
internal static class PartOutline
{
    // Chords of the outline only decide whether the middle of a text lies on material: half a millimetre is plenty.
    private const double Tolerance = 0.5;

    /// <summary>The smallest upright rectangle around all lines of a part; empty for a part without lines.</summary>
    public static Bounds2 BoundsOf(Part part)
    {
        var bounds = Bounds2.Empty;
        foreach (var line in part.Lines)
        {
            bounds = bounds.Joined(ItemExtents.Of(line.Path));
        }

        return bounds;
    }

    /// <summary>The area inside the closed cut lines.</summary>
    public static EvenOddArea MaterialOf(Part part)
    {
        var outlines = new List<Path2>();
        foreach (var line in part.Lines)
        {
            if (line.Use == LineUse.Cut)
            {
                outlines.Add(line.Path);
            }
        }

        return new(outlines, Tolerance);
    }
}
