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
    /// <summary>The curves through a description's stations.</summary>
    public static FuselageCurves Through(ImmutableArray<FuselageStation> stations)
    {
        ImmutableArray<double> knots = [.. stations.Select(station => station.Station)];
        ImmutableArray<Span> spans =
            [.. stations.SkipLast(1).Select(station => station.RunAft == Run.Fair ? Span.Fair : Span.Straight)];
        StationCurve Curve(Func<FuselageStation, double> value) =>
            StationCurve.Through(knots, [.. stations.Select(value)], spans);
        return new(
            Curve(station => station.UpperHalfBreadth),
            Curve(station => station.LowerHalfBreadth),
            Curve(station => station.Upper),
            Curve(station => station.Lower),
            Curve(station => station.Shape.UpperAcross),
            Curve(station => station.Shape.UpperUp),
            Curve(station => station.Shape.LowerAcross),
            Curve(station => station.Shape.LowerUp));
    }
}
