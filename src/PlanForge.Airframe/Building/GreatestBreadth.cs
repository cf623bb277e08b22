using PlanForge.Geometry;

namespace PlanForge.Airframe.Building;

/// <summary>The full width of a cross-section as callipers read it: twice its greatest half-breadth.</summary>
/// <remarks>
/// Sides that stand upright are that wide all the way up. Sides that lean are widest at one edge if that is sharp, else where
/// the rounding of its corner begins to take more than the lean still adds: the root of the half-breadth's slope over the
/// corner's angle, of which there is one.
/// </remarks>
internal static class GreatestBreadth
{
    // In radians; the half-breadth is level there.
    private const double Tolerance = 1e-12;

    /// <summary>The greatest width of a cross-section, mm.</summary>
    public static double Of(FuselageStation section)
    {
        var half = (section.Upper - section.Lower) / 2;
        var (wide, narrow) = (section.UpperHalfBreadth, section.LowerHalfBreadth);
        var (across, up) = (section.Shape.UpperAcross, section.Shape.UpperUp);
        if (wide < narrow)
        {
            (wide, narrow) = (narrow, wide);
            (across, up) = (section.Shape.LowerAcross, section.Shape.LowerUp);
        }

        // As the body itself holds corners to its width and height.
        (across, up) = (Math.Min(across, wide), Math.Min(up, half));
        if (wide == narrow || across <= 0 || up <= 0)
        {
            return 2 * wide;
        }

        // At an angle of the corner, from the side towards the flat: the leaning line times what the rounding leaves of it.
        var (gain, share) = ((wide - narrow) * up / (2 * half), across / wide);
        double Lean(double angle) => wide - (gain * (1 - Math.Sin(angle)));
        double Slope(double angle) =>
            (gain * Math.Cos(angle) * (1 - (share * (1 - Math.Cos(angle))))) - (Lean(angle) * share * Math.Sin(angle));
        var widest = RootFinder.Bracketed(Slope, 0, Math.PI / 2, Tolerance) ?? 0;
        return 2 * Lean(widest) * (1 - (share * (1 - Math.Cos(widest))));
    }
}
