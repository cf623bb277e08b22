using System.Collections.Immutable;
using PlanForge.Parts.Rigging;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>The airframe in three views at true size, with the places its dimensions go to. Immutable.</summary>
/// <remarks>
/// Side: seen from port, nose to the left, (x, z); wing and tailplane are cut at the centre line. Plan: seen from above, nose
/// to the left, starboard up, (x, y). Front: seen from the nose looking aft, starboard on the left, (−y, z). So both other
/// views line up with the side view: the plan shares its stations, the front its heights.
/// </remarks>
/// <param name="Side">Lines of the side view, mm.</param>
/// <param name="Plan">Lines of the plan view, mm.</param>
/// <param name="Front">Lines of the front view, mm.</param>
/// <param name="Formers">The formers from nose to tail.</param>
/// <param name="Wing">Places and sizes of the wing.</param>
/// <param name="Tailplane">Places and sizes of the tailplane, or null.</param>
/// <param name="Body">The fuselage's ends, and its least and greatest heights.</param>
/// <param name="Thrust">The line of thrust, or null.</param>
/// <param name="Overall">The extent of the whole airframe along the datum line.</param>
public sealed record ArrangementViews(
    ImmutableArray<PartLine> Side,
    ImmutableArray<PartLine> Plan,
    ImmutableArray<PartLine> Front,
    ImmutableArray<FormerStation> Formers,
    ArrangedWing Wing,
    ArrangedWing? Tailplane,
    ArrangedBody Body,
    ArrangedThrust? Thrust,
    OverallLength Overall)
{
    /// <summary>Draws the three views.</summary>
    public static ArrangementViews Of(RiggedAirframe airframe)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        var tailplane = new Shared<WingShape?>(airframe.Inputs, () => TailplaneShape.Of(airframe.Description.Tailplane));
        var line = new Shared<ArrangedThrust?>(airframe.Inputs, () => ArrangedThrust.Of(airframe));

        // A former that moves changes the side view alone, and there not the outlines.
        var outlines = airframe.Piece("the outlines of the side view", () => SideView.Outlines(airframe, tailplane.Value));
        var plan = airframe.Piece("the plan view", () => PlanView.Draw(airframe, tailplane.Value, line.Value));
        var front = airframe.Piece("the front view", () => FrontView.Draw(airframe, tailplane.Value));
        var (tail, thrust) = (tailplane.Value, line.Value);
        return new(
            SideView.Draw(airframe, outlines.Value, thrust),
            plan.Value,
            front.Value,
            [.. airframe.Description.Formers.Select(former => FormerStation.Of(former, airframe)).OrderBy(former => former.Station)],
            ArrangedWing.Of(airframe.Wing),
            tail is null ? null : ArrangedWing.Of(tail),
            ArrangedBody.Of(airframe.Body),
            thrust,
            OverallLength.Of(airframe));
    }
}
