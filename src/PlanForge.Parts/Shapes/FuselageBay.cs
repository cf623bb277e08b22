using PlanForge.Airframe.Inputs;
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
/// <param name="index">Which bay of the body this is.</param>
/// <param name="from">Station of its fore end, mm.</param>
/// <param name="to">Station of its aft end, mm.</param>
/// <param name="run">The curves it is a stretch of.</param>
internal sealed class FuselageBay(int index, Recorded<double> from, Recorded<double> to, FuselageRun run)
{
    /// <summary>Which bay of the body this is.</summary>
    public int Index => index;

    /// <summary>Which span of the curves it is.</summary>
    public int Span => index - run.First;

    /// <summary>Station of its fore end, mm.</summary>
    public double From => from.Value;

    /// <summary>Station of its aft end, mm.</summary>
    public double To => to.Value;

    /// <summary>The eight values along the body.</summary>
    public FuselageCurves Curves => run.Curves;

    /// <summary>Notes that where the bay begins and ends was read.</summary>
    public void UseEnds()
    {
        from.Inputs.Use();
        to.Inputs.Use();
    }

    /// <summary>The values of the cross-section at a station.</summary>
    public CrossSection At(Dual x)
    {
        var (curves, span) = (Curves, Span);
        var upper = curves.Upper.At(span, x);
        var lower = curves.Lower.At(span, x);
        var upperBreadth = curves.UpperHalfBreadth.At(span, x);
        var lowerBreadth = curves.LowerHalfBreadth.At(span, x);
        var half = (upper - lower) * 0.5;
        return new(
            upperBreadth,
            lowerBreadth,
            upper,
            lower,
            Least(curves.UpperAcross.At(span, x), upperBreadth),
            Least(curves.UpperUp.At(span, x), half),
            Least(curves.LowerAcross.At(span, x), lowerBreadth),
            Least(curves.LowerUp.At(span, x), half));
    }

    // A corner cannot be wider than the body, whatever a fair curve makes of its radius between the stations.
    private static Dual Least(Dual a, Dual b) => a.Value <= b.Value ? a : b;
}
