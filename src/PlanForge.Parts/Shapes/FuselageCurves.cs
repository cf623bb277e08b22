using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;
using PlanForge.Geometry.Curves;

namespace PlanForge.Parts.Shapes;

/// <summary>The values of the cross-section along the body, each a <see cref="StationCurve"/> over the same stations, mm, that knows what it was made from.</summary>
internal sealed class FuselageCurves
{
    private readonly Recorded<StationCurve> _upperHalfBreadth;
    private readonly Recorded<StationCurve> _lowerHalfBreadth;
    private readonly Recorded<StationCurve> _upper;
    private readonly Recorded<StationCurve> _lower;
    private readonly Recorded<Corners> _corners;

    private FuselageCurves(ImmutableArray<FuselageStation> stations, RecordedInputs stretch, InputLog log)
    {
        Recorded<StationCurve> Curve(Func<FuselageStation, double> value) => log.Record(() => Through(stations, stretch, value));
        _upperHalfBreadth = Curve(station => station.UpperHalfBreadth);
        _lowerHalfBreadth = Curve(station => station.LowerHalfBreadth);
        _upper = Curve(station => station.Upper);
        _lower = Curve(station => station.Lower);
        _corners = log.Record(() => new Corners(
            Through(stations, stretch, station => station.Shape.UpperAcross),
            Through(stations, stretch, station => station.Shape.UpperUp),
            Through(stations, stretch, station => station.Shape.LowerAcross),
            Through(stations, stretch, station => station.Shape.LowerUp)));
    }

    public StationCurve UpperHalfBreadth => _upperHalfBreadth.Value;

    public StationCurve LowerHalfBreadth => _lowerHalfBreadth.Value;

    public StationCurve Upper => _upper.Value;

    public StationCurve Lower => _lower.Value;

    public StationCurve UpperAcross => _corners.Value.UpperAcross;

    public StationCurve UpperUp => _corners.Value.UpperUp;

    public StationCurve LowerAcross => _corners.Value.LowerAcross;

    public StationCurve LowerUp => _corners.Value.LowerUp;

    /// <summary>The curves through some neighbouring stations.</summary>
    /// <param name="stations">The stations.</param>
    /// <param name="stretch">What decided that it is these.</param>
    /// <param name="log">Notes what each curve is made from.</param>
    public static FuselageCurves Through(ImmutableArray<FuselageStation> stations, RecordedInputs stretch, InputLog log) => new(stations, stretch, log);

    private static StationCurve Through(ImmutableArray<FuselageStation> stations, RecordedInputs stretch, Func<FuselageStation, double> value)
    {
        stretch.Use();
        return FuselageDescription.Through(stations, value);
    }

    private sealed record Corners(StationCurve UpperAcross, StationCurve UpperUp, StationCurve LowerAcross, StationCurve LowerUp);
}
