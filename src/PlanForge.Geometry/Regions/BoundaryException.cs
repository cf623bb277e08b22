using System.Globalization;

namespace PlanForge.Geometry.Regions;

/// <summary>The boundary of a region could not be put together: rounding decided differently at two places that must agree.</summary>
/// <remarks>No input is known to cause it; it exists so that such a case is seen, with its place, and never drawn wrong.</remarks>
public sealed class BoundaryException : Exception
{
    /// <summary>A failure at a place.</summary>
    /// <param name="what">What does not fit there.</param>
    /// <param name="at">Where, in the coordinates of the contours given, mm.</param>
    public BoundaryException(string what, Point2 at)
        : base(string.Create(CultureInfo.InvariantCulture, $"{what} at ({at.X:R}, {at.Y:R}) mm.")) => At = at;

    /// <summary>Where the boundary does not fit, mm.</summary>
    public Point2 At { get; }
}
