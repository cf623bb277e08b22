using System.Globalization;

namespace PlanForge.Geometry.Fitting;

/// <summary>Samples do not describe a curve: values that are not finite, or a turn so sharp that only a corner could make it.</summary>
/// <remarks>A shape that degenerates, where surfaces fold over themselves for instance, shows itself this way.</remarks>
public sealed class CurveException : ArgumentException
{
    /// <summary>A failure at a place.</summary>
    /// <param name="what">What is wrong there.</param>
    /// <param name="at">Where, mm; its coordinates may not be finite.</param>
    public CurveException(string what, Point2 at)
        : base(string.Create(CultureInfo.InvariantCulture, $"{what} at ({at.X:0.###}, {at.Y:0.###}) mm.")) => At = at;

    /// <summary>Where, mm.</summary>
    public Point2 At { get; }
}
