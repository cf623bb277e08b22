using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Finds the place for a part's name on the part itself, so that it stays named when it is cut out.</summary>
internal static class PartName
{
    /// <summary>
    /// The name as a text on the part, clear of all that is marked, as large as there is room for; null when there is none.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="name">What it is called there.</param>
    /// <param name="material">Where its material is.</param>
    /// <param name="occupancy">What is taken.</param>
    /// <param name="layer">The layer of the text.</param>
    /// <param name="largest">Height of capitals to try first, mm.</param>
    public static DrawingItem.Text? Place(
        Part part, string name, EvenOddArea material, Occupancy occupancy, Layer layer, double largest)
    {
        var middle = PartOutline.BoundsOf(part).Centre;
        foreach (var height in (ReadOnlySpan<double>)[largest, LetteringSizes.Least])
        {
            var extents = TextExtents.Of(name, default, height, 0);
            if (!extents.IsEmpty && occupancy.Find(extents.Width, extents.Height, middle, material.Contains) is { } corner)
            {
                return new(layer, name, corner - new Vector2(extents.MinX, extents.MinY), height, 0);
            }
        }

        return null;
    }
}
