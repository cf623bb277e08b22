using System.Collections.Immutable;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Cutting;

/// <summary>A whole sheet of stock with the parts that are cut from it.</summary>
/// <param name="Name">File name without ending, ASCII.</param>
/// <param name="Width">Extent along x, mm, over 0; the lower left corner is the origin.</param>
/// <param name="Height">Extent along y, mm, over 0.</param>
/// <param name="Cuts">The parts in the order of cutting; each is finished before the next.</param>
public sealed record CutSheet(string Name, double Width, double Height, ImmutableArray<PlacedCut> Cuts)
{
    /// <summary>What is said about the sheet beside those of the parts, one line each.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}

/// <summary>A part on a sheet of stock.</summary>
/// <param name="Cut">The part.</param>
/// <param name="Placement">From the part's coordinates to the sheet's.</param>
public sealed record PlacedCut(CutDrawing Cut, Placement2 Placement);
