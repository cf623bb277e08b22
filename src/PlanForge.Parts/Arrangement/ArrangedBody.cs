using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The fuselage's ends and greatest extent, mm.</summary>
/// <param name="From">Station of the nose.</param>
/// <param name="To">Station of the tail end.</param>
/// <param name="NoseLower">Height of the bottom at the nose.</param>
/// <param name="NoseUpper">Height of the top at the nose.</param>
public readonly record struct ArrangedBody(double From, double To, double NoseLower, double NoseUpper)
{
    internal static ArrangedBody Of(FuselageShape body) => new(body.From, body.To, body.LowerAt(body.From), body.UpperAt(body.From));
}

/// <summary>The line of thrust. Its height is not described: it is drawn through the datum line at the nose, or through the nose's middle where the datum line misses it.</summary>
/// <param name="Station">Where it leaves the nose.</param>
/// <param name="Height">Its height there, mm.</param>
/// <param name="Down">Down-thrust, radians, nose of the shaft down positive.</param>
/// <param name="Right">Side-thrust, radians, to starboard positive.</param>
/// <param name="Length">How far it is drawn ahead of and behind the nose, mm.</param>
public readonly record struct ArrangedThrust(double Station, double Height, double Down, double Right, double Length)
{
    internal static ArrangedThrust? Of(RiggedAirframe airframe)
    {
        // A share of the body's length: long enough to see the angle, short enough to stay off the wing.
        const double Share = 0.07;
        if (airframe.Description.ThrustLine is not { } thrust)
        {
            return null;
        }

        var body = airframe.Body;
        double lower = body.LowerAt(body.From), upper = body.UpperAt(body.From);
        return new(body.From, lower < 0 && upper > 0 ? 0 : (lower + upper) / 2, thrust.Down, thrust.Right, (body.To - body.From) * Share);
    }
}
