using System.Collections.Immutable;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes the fuselage from its values.</summary>
internal static class FuselageReader
{
    /// <summary>The fuselage; null when it failed.</summary>
    public static FuselageDescription? Read(MappingValues? values, Findings findings) => values is null
        ? null
        : new(
            ReadSkin(values.Choice(FuselageFormat.Skin)),
            ReadStations(values, findings),
            ReadLongerons(values.List(FuselageFormat.Longerons), findings),
            values.At)
        { Origin = values.Origin };

    private static SkinDescription ReadSkin(ReadValue? value)
    {
        if (value is not MappingValues skins)
        {
            var all = (value as NumberValue)?.Number ?? double.NaN;
            return new(all, all, all) { Origin = value?.Origin ?? default };
        }

        var side = skins.Number(FuselageFormat.SkinSide);
        double? top = skins.OptionalNumber(FuselageFormat.SkinTop), bottom = skins.OptionalNumber(FuselageFormat.SkinBottom);
        var origin = skins.Origin;
        origin = top is null ? origin.From(FuselageFormat.SkinTop, origin, FuselageFormat.SkinSide) : origin;
        origin = bottom is null ? origin.From(FuselageFormat.SkinBottom, origin, FuselageFormat.SkinSide) : origin;
        return new(side, top ?? side, bottom ?? side) { Origin = origin };
    }

    private static ImmutableArray<FuselageStation> ReadStations(MappingValues fuselage, Findings findings)
    {
        var items = fuselage.List(FuselageFormat.Stations);
        var stations = ImmutableArray.CreateBuilder<FuselageStation>(items.Count);
        var before = double.NaN;
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            var station = values.Number(FuselageFormat.Station);
            if (station <= before)
            {
                findings.Error(
                    values.AtValue(FuselageFormat.Station),
                    $"`station` is {findings.Length(station)}; it must be over {findings.Length(before)}, the station before");
            }

            before = double.IsNaN(station) ? before : station;
            stations.Add(ReadStation(values, station, fuselage, findings));
        }

        return stations.ToImmutable();
    }

    private static FuselageStation ReadStation(MappingValues values, double station, MappingValues fuselage, Findings findings)
    {
        var (upperHalf, lowerHalf) = values.Choice(FuselageFormat.HalfBreadth) switch
        {
            NumberValue { Number: var both } => (both, both),
            MappingValues two => (two.Number(FuselageFormat.UpperHalfBreadth), two.Number(FuselageFormat.LowerHalfBreadth)),
            _ => (double.NaN, double.NaN),
        };
        var upper = values.Number(FuselageFormat.Upper);
        var lower = values.Number(FuselageFormat.Lower);
        var height = upper - lower;
        if (lower >= upper)
        {
            findings.Error(
                values.AtValue(FuselageFormat.Lower),
                $"`lower` is {findings.Length(lower)}; it must be under `upper`, {findings.Length(upper)}");
            height = double.NaN;
        }

        return new(
            station,
            upperHalf,
            lowerHalf,
            upper,
            lower,
            ReadShape(values.Choice(FuselageFormat.Shape), upperHalf, lowerHalf, height, findings),
            (Run)(values.Has(FuselageFormat.RunAft) ? values.Word(FuselageFormat.RunAft) : fuselage.Word(FuselageFormat.Run)),
            values.At)
        { Origin = StationOrigin(values, fuselage) };
    }

    // Corners are held to the size of the station, and a run that is not given is that of the whole body.
    private static Origin StationOrigin(MappingValues values, MappingValues fuselage)
    {
        var origin = values.Origin;
        var own = origin;
        foreach (var size in new Key[] { FuselageFormat.HalfBreadth, FuselageFormat.Upper, FuselageFormat.Lower })
        {
            origin = origin.From(FuselageFormat.Shape, own, size);
        }

        return values.Has(FuselageFormat.RunAft) ? origin : origin.From(FuselageFormat.RunAft, fuselage.Origin, FuselageFormat.Run);
    }

    private static SectionShape ReadShape(ReadValue? value, double upperHalf, double lowerHalf, double height, Findings findings)
    {
        switch (value)
        {
            case WordValue { Index: var index }:
                var isEllipse = FuselageFormat.NamedShape.Words[index] == "ellipse";
                return isEllipse ? new(upperHalf, height / 2, lowerHalf, height / 2) : default;
            case MappingValues rounded when rounded.Format == FuselageFormat.RoundedShape:
                var at = rounded.AtValue(FuselageFormat.Rounded);
                var radius = rounded.Number(FuselageFormat.Rounded);
                radius = findings.AtMost(radius, Math.Min(upperHalf, lowerHalf), "`rounded`", "half the width", at);
                radius = findings.AtMost(radius, height / 2, "`rounded`", "half the height", at);
                return new(radius, radius, radius, radius);
            case MappingValues radii:
                var (upperAt, lowerAt) = (radii.AtValue(FuselageFormat.UpperRadius), radii.AtValue(FuselageFormat.LowerRadius));
                var upper = findings.AtMost(radii.Number(FuselageFormat.UpperRadius), upperHalf, "`upper`", "half the width", upperAt);
                var lower = findings.AtMost(radii.Number(FuselageFormat.LowerRadius), lowerHalf, "`lower`", "half the width", lowerAt);
                findings.AtMost(upper + lower, height, "the sum of both radii", "the height", radii.At);
                return new(upper, upper, lower, Math.Min(lower, height - upper));
            default:
                return default;
        }
    }

    private static ImmutableArray<LongeronDescription> ReadLongerons(List<ReadValue> items, Findings findings)
    {
        var longerons = ImmutableArray.CreateBuilder<LongeronDescription>(items.Count);
        foreach (var item in items)
        {
            if (item is not MappingValues values)
            {
                continue;
            }

            var place = (LongeronPlace)values.Word(FuselageFormat.Place);
            if (place == LongeronPlace.Side && !values.Has(FuselageFormat.SideHeight))
            {
                findings.Error(values.At, "a longeron on the side needs the key `height`");
            }
            else if (place != LongeronPlace.Side && place >= 0 && values.Has(FuselageFormat.SideHeight))
            {
                findings.Error(
                    values.AtValue(FuselageFormat.SideHeight),
                    $"`height` only goes with `place: side`; in the {values.WordText(FuselageFormat.Place)} "
                        + "the height follows from the body");
            }

            var (across, up) = values.Size(FuselageFormat.LongeronSize);
            longerons.Add(new(
                values.Text(FuselageFormat.LongeronName),
                place,
                values.OptionalNumber(FuselageFormat.SideHeight) ?? 0,
                across,
                up,
                values.At)
            { Origin = values.Origin });
        }

        return longerons.ToImmutable();
    }
}
