using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;

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
        ImmutableArray<Measurement> sizes = [.. measurements.Where(measurement => measurement.Thing is BodyExtent)];
        var stations = designed.Stations.ToDictionary(
            station => station.Station, station => station with { Origin = BodyOrigins.Among(station.Origin, sizes) });
        foreach (var group in sizes.GroupBy(size => ((BodyExtent)size.Thing).Station))
        {
            var station = StationAt(designed, group.Key, group.First().At);
            if (group.Any(size => size.IsOff))
            {
                stations[group.Key] = Stretched(station, sizes) with { Origin = BodyOrigins.Stretched(station, sizes) };
            }
            else if (stations.TryGetValue(group.Key, out var listed))
            {
                stations[group.Key] = listed with { Origin = BodyOrigins.Known(listed.Origin, [.. group]) };
            }
            else
            {
                var before = designed.Stations[BodyOrigins.BayOf(designed, group.Key)].Station;
                stations[before] = stations[before] with { Origin = BodyOrigins.Unneeded(stations[before].Origin, [.. group]) };
            }
        }

        return designed with
        {
            Skin = Skin(designed.Skin, measurements),
            Stations = [.. stations.Values.OrderBy(station => station.Station)],
        };
    }

    private static SkinDescription Skin(SkinDescription skin, ImmutableArray<Measurement> measurements)
    {
        if (measurements.Of(new SkinThickness(SkinPlace.Side)) is { } side)
        {
            skin = skin with { Side = side.Built, Origin = side.InsteadOf(skin.Origin, FuselageFormat.SkinSide) };
        }

        if (measurements.Of(new SkinThickness(SkinPlace.Top)) is { } top)
        {
            skin = skin with { Top = top.Built, Origin = top.InsteadOf(skin.Origin, FuselageFormat.SkinTop) };
        }

        return measurements.Of(new SkinThickness(SkinPlace.Bottom)) is { } bottom
            ? skin with { Bottom = bottom.Built, Origin = bottom.InsteadOf(skin.Origin, FuselageFormat.SkinBottom) }
            : skin;
    }

    /// <summary>The cross-section of a body at a station within it: the listed one, or what runs through there.</summary>
    /// <param name="body">The body: at least two ascending stations.</param>
    /// <param name="station">The station, mm.</param>
    /// <param name="at">The place to blame for one that is not listed.</param>
    public static FuselageStation StationAt(FuselageDescription body, double station, SourcePosition at)
    {
        var before = BodyOrigins.BayOf(body, station);
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
            at)
        { Origin = BodyOrigins.Between(body, before) };
    }

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
