using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Building;

/// <summary>Takes over what was measured on the fuselage.</summary>
/// <remarks>
/// A cross-section is stretched across and up as a whole until it measures what was measured, so that corners stay tangent and an
/// ellipse stays one. At a station that the description does not list, the designed cross-section there is put in first: where the
/// body runs fair, that alone leaves the curve as it is (a spline through a point of its own is itself).
/// </remarks>
internal static class BodyAsBuilt
{
    /// <summary>Stations nearer than this, mm, are one.</summary>
    public const double SameStation = 1e-6;

    /// <summary>The fuselage with measured skins and sizes.</summary>
    public static FuselageDescription Apply(FuselageDescription designed, ImmutableArray<Measurement> measurements)
    {
        var skin = designed.Skin;
        skin = skin with
        {
            Side = measurements.BuiltOf(new SkinThickness(SkinPlace.Side)) ?? skin.Side,
            Top = measurements.BuiltOf(new SkinThickness(SkinPlace.Top)) ?? skin.Top,
            Bottom = measurements.BuiltOf(new SkinThickness(SkinPlace.Bottom)) ?? skin.Bottom,
        };
        var stations = designed.Stations.ToDictionary(station => station.Station);
        foreach (var group in measurements.Where(IsOff).GroupBy(measurement => ((BodyExtent)measurement.Thing).Station))
        {
            stations[group.Key] = Stretched(StationAt(designed, group.Key, group.First().At), measurements);
        }

        return designed with { Skin = skin, Stations = [.. stations.Values.OrderBy(station => station.Station)] };
    }

    /// <summary>The cross-section of a body at a station within it: the listed one, or what runs through there.</summary>
    /// <param name="body">The body: at least two ascending stations.</param>
    /// <param name="station">The station, mm.</param>
    /// <param name="at">The place to blame for one that is not listed.</param>
    public static FuselageStation StationAt(FuselageDescription body, double station, SourcePosition at)
    {
        var before = 0;
        while (before < body.Stations.Length - 2 && body.Stations[before + 1].Station <= station)
        {
            before++;
        }

        if (body.Stations.FirstOrDefault(listed => listed.Station == station) is { } own)
        {
            return own;
        }

        double Value(Func<FuselageStation, double> value) => body.Along(value).At(before, station).Value;
        return new(
            station,
            Value(section => section.UpperHalfBreadth),
            Value(section => section.LowerHalfBreadth),
            Value(section => section.Upper),
            Value(section => section.Lower),
            new(
                Value(section => section.Shape.UpperAcross),
                Value(section => section.Shape.UpperUp),
                Value(section => section.Shape.LowerAcross),
                Value(section => section.Shape.LowerUp)),
            body.Stations[before].RunAft,
            at);
    }

    private static bool IsOff(Measurement measurement) => measurement.Thing is BodyExtent && measurement.IsOff;

    private static FuselageStation Stretched(FuselageStation designed, ImmutableArray<Measurement> measurements)
    {
        double? Built(BodySize size) => measurements.BuiltOf(new BodyExtent(designed.Station, size));
        var across = Built(BodySize.Breadth) is { } breadth ? breadth / GreatestBreadth.Of(designed) : 1;
        var (upper, lower) = (Built(BodySize.Upper) ?? designed.Upper, Built(BodySize.Lower) ?? designed.Lower);
        var up = (upper - lower) / (designed.Upper - designed.Lower);
        var shape = designed.Shape;
        return designed with
        {
            UpperHalfBreadth = designed.UpperHalfBreadth * across,
            LowerHalfBreadth = designed.LowerHalfBreadth * across,
            Upper = upper,
            Lower = lower,
            Shape = new(shape.UpperAcross * across, shape.UpperUp * up, shape.LowerAcross * across, shape.LowerUp * up),
        };
    }
}
