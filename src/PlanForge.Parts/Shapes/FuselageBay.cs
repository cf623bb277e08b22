using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>A stretch of a cross-section's starboard half, from the bottom centre round to the top centre.</summary>
internal enum Zone
{
    /// <summary>The flat of the bottom, from the centre outward.</summary>
    Bottom,

    /// <summary>The lower corner, from the bottom up.</summary>
    LowerCorner,

    /// <summary>The side, upward.</summary>
    Side,

    /// <summary>The upper corner, from the side up.</summary>
    UpperCorner,

    /// <summary>The flat of the top, from the corner inward.</summary>
    Top,
}

/// <summary>
/// The outside of the fuselage between two stations as smooth functions that also run on a little past them, so that a
/// face can be followed to the fold where it meets its neighbour.
/// </summary>
/// <param name="Index">Which span of the curves this is.</param>
/// <param name="From">Station of its fore end, mm.</param>
/// <param name="To">Station of its aft end, mm.</param>
/// <param name="Curves">The eight values along the body.</param>
internal sealed record FuselageBay(int Index, double From, double To, FuselageCurves Curves)
{
    /// <summary>The values of the cross-section at a station.</summary>
    public CrossSection At(Dual x)
    {
        var upper = Curves.Upper.At(Index, x);
        var lower = Curves.Lower.At(Index, x);
        var upperBreadth = Curves.UpperHalfBreadth.At(Index, x);
        var lowerBreadth = Curves.LowerHalfBreadth.At(Index, x);
        var half = (upper - lower) * 0.5;
        return new(
            upperBreadth,
            lowerBreadth,
            upper,
            lower,
            Least(Curves.UpperAcross.At(Index, x), upperBreadth),
            Least(Curves.UpperUp.At(Index, x), half),
            Least(Curves.LowerAcross.At(Index, x), lowerBreadth),
            Least(Curves.LowerUp.At(Index, x), half));
    }

    // A corner cannot be wider than the body, whatever a fair curve makes of its radius between the stations.
    private static Dual Least(Dual a, Dual b) => a.Value <= b.Value ? a : b;
}
