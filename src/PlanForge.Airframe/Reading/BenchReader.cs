using F = PlanForge.Airframe.Format.BenchFormat;

namespace PlanForge.Airframe.Reading;

/// <summary>Makes the set-up on the building board from its values; null where they failed.</summary>
internal static class BenchReader
{
    /// <summary>The set-up, with cradles and level rests compared with body and wing.</summary>
    public static BenchDescription? Read(MappingValues? values, FuselageDescription? body, WingDescription? wing, Findings findings)
    {
        if (values?.Mapping(F.Pins) is not { } pins || values.Mapping(F.Cradles) is not { } cradles || values.Mapping(F.LevelRests) is not { } rests)
        {
            return null;
        }

        return new(
            pins.Number(F.OutboardOfSide),
            values.Number(F.Clearance),
            Cradles(cradles, body, findings),
            LevelRests(rests, wing, findings),
            values.Mapping(F.Cord)?.Number(F.CordStation),
            values.At)
        { Origin = values.Origin };
    }

    private static CradlesDescription Cradles(MappingValues values, FuselageDescription? body, Findings findings)
    {
        MappingValues? front = values.Mapping(F.FrontCradle), rear = values.Mapping(F.RearCradle);
        var thickness = values.Number(F.CradleThickness);
        CheckPlace(front, thickness, body, findings);
        CheckPlace(rear, thickness, body, findings);
        double? frontStation = front?.Number(F.CradleStation), rearStation = rear?.Number(F.CradleStation);
        if (rear is not null && frontStation is { } ahead && rearStation is { } behind && behind < ahead + thickness)
        {
            findings.Error(
                rear.AtValue(F.CradleStation),
                $"the rear cradle at {findings.Length(behind)} does not stand aft of the front one, "
                    + $"which takes {findings.Length(ahead)} to {findings.Length(ahead + thickness)}");
        }

        return new(frontStation, rearStation, values.Text(F.CradleMaterial), thickness, values.Number(F.Foot), values.At) { Origin = values.Origin };
    }

    private static void CheckPlace(MappingValues? cradle, double thickness, FuselageDescription? body, Findings findings)
    {
        // A body without stations was reported.
        if (cradle is null || body is not { Stations.Length: > 0 })
        {
            return;
        }

        var (from, to) = (body.Stations[0].Station, body.Stations[^1].Station);
        var station = cradle.Number(F.CradleStation);
        if (station < from || station + thickness > to)
        {
            findings.Error(
                cradle.AtValue(F.CradleStation),
                $"the cradle from {findings.Length(station)} to {findings.Length(station + thickness)} does not stand under the fuselage, "
                    + $"which runs from {findings.Length(from)} to {findings.Length(to)}");
        }
    }

    private static LevelRestsDescription LevelRests(MappingValues values, WingDescription? wing, Findings findings)
    {
        double? root = values.OptionalNumber(F.RootRest), tip = values.OptionalNumber(F.TipRest);
        var halfSpan = wing?.Panels.Sum(panel => panel.Length * Math.Cos(panel.Dihedral)) ?? double.NaN;
        foreach (var (place, key) in new[] { (root, F.RootRest), (tip, F.TipRest) })
        {
            if (place > halfSpan)
            {
                findings.Error(
                    values.AtValue(key),
                    $"`{key.Name}` is {findings.Length(place.Value)}; the wing ends {findings.Length(halfSpan)} from the centre line");
            }
        }

        return new(root, tip, values.At) { Origin = values.Origin };
    }
}
