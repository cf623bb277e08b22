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
        Part part, string name, EvenOddArea material, Occupancy occupancy, Layer layer, double largest) =>
        Place(part, name, material, occupancy, layer, largest, 0) ?? Place(part, name, material, occupancy, layer, LetteringSizes.Least, 0);

    /// <summary>The same in the least lettering, up the part where there is no room across.</summary>
    public static DrawingItem.Text? PlaceEitherWay(Part part, string name, EvenOddArea material, Occupancy occupancy, Layer layer) =>
        Place(part, name, material, occupancy, layer, LetteringSizes.Least, 0)
        ?? Place(part, name, material, occupancy, layer, LetteringSizes.Least, Math.PI / 2);

    private static DrawingItem.Text? Place(
        Part part, string name, EvenOddArea material, Occupancy occupancy, Layer layer, double height, double angle)
    {
        var extents = TextExtents.Of(name, default, height, angle);
        return !extents.IsEmpty && occupancy.Find(extents.Width, extents.Height, PartOutline.BoundsOf(part).Centre, material.Contains) is { } corner
            ? new(layer, name, corner - new Vector2(extents.MinX, extents.MinY), height, angle)
            : null;
    }
}
