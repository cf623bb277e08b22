using PlanForge.Airframe;
using PlanForge.Geometry.Curves;

namespace PlanForge.Parts.Shapes;

/// <summary>The values of the cross-section along the body, each a <see cref="StationCurve"/> over the same stations, mm.</summary>
internal sealed record FuselageCurves(
    StationCurve UpperHalfBreadth,
    StationCurve LowerHalfBreadth,
    StationCurve Upper,
    StationCurve Lower,
    StationCurve UpperAcross,
    StationCurve UpperUp,
    StationCurve LowerAcross,
    StationCurve LowerUp)
{
    /// <summary>The curves of a description.</summary>
    public static FuselageCurves Of(FuselageDescription body) => new(
        body.Along(station => station.UpperHalfBreadth),
        body.Along(station => station.LowerHalfBreadth),
        body.Along(station => station.Upper),
        body.Along(station => station.Lower),
        body.Along(station => station.Shape.UpperAcross),
        body.Along(station => station.Shape.UpperUp),
        body.Along(station => station.Shape.LowerAcross),
        body.Along(station => station.Shape.LowerUp));
}
