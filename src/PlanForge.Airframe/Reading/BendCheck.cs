using F = PlanForge.Airframe.Format.AsBuiltFormat;


namespace PlanForge.Airframe.Reading;

/// <summary>Warns where a measured breadth bends the side to reach a listed station nearby that was left as designed.</summary>
internal static class BendCheck
{
    // Common practice, no source: about three degrees, more than a side takes by being built a little wide.
    private const double GreatestSlope = 0.05;

    /// <summary>Checks a station that the description does not list.</summary>
    /// <param name="body">The fuselage as designed.</param>
    /// <param name="designed">The designed cross-section at the station.</param>
    /// <param name="breadth">Its greatest breadth, mm.</param>
    /// <param name="values">What was measured there.</param>
    /// <param name="findings">Takes the warning.</param>
    public static void Check(FuselageDescription body, FuselageStation designed, double breadth, MappingValues values, Findings findings)
    {
        var nearest = body.Stations.MinBy(listed => Math.Abs(listed.Station - designed.Station))!;
        var distance = Math.Abs(nearest.Station - designed.Station);
        if (values.OptionalNumber(F.Breadth) is { } built && distance > 0 && Math.Abs(built - breadth) / 2 > GreatestSlope * distance)
        {
            findings.Warning(
                values.AtValue(F.Breadth),
                $"the sides turn off within {findings.Length(distance)}, to what is designed at station {findings.Length(nearest.Station)}: measure there");
        }
    }
}
