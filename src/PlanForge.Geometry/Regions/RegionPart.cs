using System.Collections.Immutable;

namespace PlanForge.Geometry.Regions;

/// <summary>One connected piece of a region (pieces that touch in single points count as separate).</summary>
/// <param name="Outer">Its outline, anticlockwise.</param>
/// <param name="Openings">What is cut out of it, clockwise; they may touch each other and the outline in single points.</param>
public sealed record RegionPart(Path2 Outer, ImmutableArray<Path2> Openings)
{
    /// <summary>The area of the piece, mm², openings taken off.</summary>
    public double Area
    {
        get
        {
            var area = Outer.SignedArea;
            foreach (var opening in Openings)
            {
                area += opening.SignedArea;
            }

            return area;
        }
    }
}
