using System.Collections.Immutable;
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
    /// <summary>The curves through some neighbouring stations.</summary>
    public static FuselageCurves Through(ImmutableArray<FuselageStation> stations) => new(
        FuselageDescription.Through(stations, station => station.UpperHalfBreadth),
        FuselageDescription.Through(stations, station => station.LowerHalfBreadth),
        FuselageDescription.Through(stations, station => station.Upper),
        FuselageDescription.Through(stations, station => station.Lower),
        FuselageDescription.Through(stations, station => station.Shape.UpperAcross),
        FuselageDescription.Through(stations, station => station.Shape.UpperUp),
        FuselageDescription.Through(stations, station => station.Shape.LowerAcross),
        FuselageDescription.Through(stations, station => station.Shape.LowerUp));
}
