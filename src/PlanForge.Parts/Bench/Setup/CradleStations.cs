using PlanForge.Airframe;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>Where the two cradles stand: stations of their front faces, mm.</summary>
/// <param name="Front">The front cradle.</param>
/// <param name="Rear">The rear cradle.</param>
internal readonly record struct CradleStations(double Front, double Rear)
{
    // A former this near (a share of the body's length) carries the body better than the bare skins: the cradle goes right under it.
    private const double Near = 0.05;

    /// <summary>
    /// The stations as described; else at a quarter and three quarters of the body's length, or half way to its end where a low wing
    /// is in the way, in the middle under a former that is near and has nothing left on below.
    /// </summary>
    public static CradleStations Of(RiggedAirframe airframe) => new(FrontOf(airframe), RearOf(airframe));

    /// <summary>The station of the front cradle alone, mm.</summary>
    public static double FrontOf(RiggedAirframe airframe)
    {
        if (airframe.Description.Bench.Cradles.Front is { } given)
        {
            return given;
        }

        var body = airframe.Body;
        var front = body.From + ((body.To - body.From) / 4);
        return Chosen(
            LowWing(airframe) is { } wing && front + airframe.Description.Bench.Cradles.Thickness > wing.From
                ? (body.From + Math.Clamp(wing.From, body.From, body.To)) / 2
                : front,
            airframe);
    }

    /// <summary>The station of the rear cradle alone, mm.</summary>
    public static double RearOf(RiggedAirframe airframe)
    {
        if (airframe.Description.Bench.Cradles.Rear is { } given)
        {
            return given;
        }

        var body = airframe.Body;
        var rear = body.To - ((body.To - body.From) / 4);
        return Chosen(
            LowWing(airframe) is { } wing && rear - airframe.Description.Bench.Cradles.Thickness < wing.To
                ? (body.To + Math.Clamp(wing.To, body.From, body.To)) / 2
                : rear,
            airframe);
    }

    /// <summary>The stations that a wing under the body takes on the centre line, mm; null for a high wing.</summary>
    public static (double From, double To)? LowWing(RiggedAirframe airframe)
    {
        if (airframe.Description.Wing.Placement == WingPlacement.High)
        {
            return null;
        }

        var wing = airframe.Wing;
        return (PinPoints.EdgeAt(wing, 0, 0).X, PinPoints.EdgeAt(wing, 0, 1).X);
    }

    private static double Chosen(double middle, RiggedAirframe airframe)
    {
        var reach = Near * (airframe.Body.To - airframe.Body.From);
        var best = middle;
        foreach (var former in airframe.Description.Formers)
        {
            if (former.Station - middle >= reach)
            {
                continue;
            }

            var place = former.Station + (former.Thickness / 2);
            var distance = Math.Abs(place - middle);
            if (distance < reach && BoardHeight.HangsTo(former, airframe) is null && !IsUnderWing(place, airframe))
            {
                (best, reach) = (place, distance);
            }
        }

        return best - (airframe.Description.Bench.Cradles.Thickness / 2);
    }

    private static bool IsUnderWing(double place, RiggedAirframe airframe)
    {
        var half = airframe.Description.Bench.Cradles.Thickness;
        return LowWing(airframe) is { } wing && place + half > wing.From && place - half < wing.To;
    }
}
