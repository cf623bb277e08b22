using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Offsets;

/// <summary>Moves the boundary of regions by a distance.</summary>
public static class Offsetter
{
    /// <summary>The greatest distance of a sharp corner's tip from the corner it goes round, in offset distances.</summary>
    /// <remarks>4 as in SVG's <c>stroke-miterlimit</c> (initial value, SVG 1.1 section 11.4): corners of under 29° are rounded.</remarks>
    public const double MitreLimit = 4;

    /// <summary>The region with its boundary moved outward (positive) or inward (negative), mm.</summary>
    /// <remarks>
    /// With round corners exactly the points within the distance of the region, or those whose whole surrounding of that
    /// radius lies in it. Lines stay lines and arcs arcs. Parts too narrow vanish; nothing left is an empty region.
    /// </remarks>
    /// <param name="region">The region.</param>
    /// <param name="distance">How far, mm; any finite number.</param>
    /// <param name="corners">What becomes of corners that stick out in the direction of the offset.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite.</exception>
    /// <exception cref="BoundaryException">The new boundary does not close.</exception>
    public static Region2 Offset(Region2 region, double distance, CornerStyle corners)
    {
        if (!double.IsFinite(distance))
        {
            throw new ArgumentOutOfRangeException(nameof(distance), distance, "An offset distance must be finite.");
        }

        if (Math.Abs(distance) <= Region2.SnapDistance || region.IsEmpty)
        {
            return region;
        }

        // Each raw contour is the sum of the contour itself and of the strips swept from its segments and corners, every one
        // of them run around in the same sense: outward strips add to the turns around a point, inward ones take off. So
        // exactly the points that no inward strip reaches, or that the region or an outward strip does, have turns over 0.
        var contours = new List<Path2>();
        foreach (var contour in region.Contours)
        {
            contours.Add(RawOffset.Of(contour, distance, corners));
        }

        return Region2.Bounded(InsideRule.Positive, contours, []);
    }

    /// <summary>An opening whose inside corners a round tool or a rounded cut can reach: all corners rounded to a radius.</summary>
    /// <remarks>
    /// The part of the opening that a disc of the radius can cover without leaving it (the morphological opening): offset
    /// inward by the radius and back. Convex corners become tangent arcs; edges away from corners stay; places narrower
    /// than the disc are lost.
    /// </remarks>
    /// <param name="opening">The opening, as a region of its own (what is removed, not what is left).</param>
    /// <param name="radius">The radius, mm, not negative.</param>
    /// <exception cref="BoundaryException">The new boundary does not close.</exception>
    public static Region2 WithRoundedInsideCorners(Region2 opening, double radius)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(radius);
        return Offset(Offset(opening, -radius, CornerStyle.Round), radius, CornerStyle.Round);
    }
}
