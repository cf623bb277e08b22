using PlanForge.Airframe.Diagnostics;
using PlanForge.Parts.Rigging;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>Level rests for the wing beside the body and near the tip, and for the tailplane.</summary>
/// <remarks>
/// They stand on the upper side, as the airframe stands on its cradles. A low wing gets a second pair for its lower side: its saddles
/// are fitted with the airframe upside down.
/// </remarks>
public sealed class LevelRestParts : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Level rests";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var (wing, rests) = (airframe.Wing, airframe.Description.Bench.LevelRests);
        foreach (var side in airframe.WingSide == WingSide.Lower ? new[] { WingSide.Upper } : [WingSide.Upper, WingSide.Lower])
        {
            foreach (var (name, place) in new (string, Func<RiggedAirframe, double>)[] { ("root", LevelRestPlaces.RootOf), ("tip", LevelRestPlaces.TipOf) })
            {
                if (ShapeGuard.Make(airframe, $"the level rest at the wing's {name}", rests.At, findings, () => Rest(airframe, wing, side, $"wing {name}", place(airframe))) is { } rest)
                {
                    yield return rest;
                }
            }
        }

        if (airframe.Description.Tailplane is { } tail
            && ShapeGuard.Make(
                airframe,
                "the level rest of the tailplane",
                tail.At,
                findings,
                () => Rest(airframe, TailplaneShape.Of(tail)!, WingSide.Upper, "tailplane", LevelRestPlaces.TailplaneOf(airframe))) is { } tailRest)
        {
            yield return tailRest;
        }
    }

    private Part Rest(RiggedAirframe airframe, WingShape wing, WingSide side, string name, double across)
    {
        var (text, cradles) = (airframe.Text, airframe.Description.Bench.Cradles);
        var rest = LevelRest.On(wing, side, across);
        var sketch = new PartSketch();
        var bounds = rest.Contour.Bounds;
        sketch.Line(LineUse.Cut, rest.Contour);
        double front = bounds.MinX, rear = rest.Profile.End.X, middle = rear / 2;
        var under = side == WingSide.Lower ? " underside" : "";
        sketch.Engrave($"{name}{under} {text.Coarse(across)}", new(middle, rest.Upper - 7));
        sketch.Label("FRONT", new(3, rest.Upper - 7), Anchor.Start);
        sketch.Across(new(0, rest.Upper), new(rear, rest.Upper), 1);
        sketch.Up(new(front, 0), new(front, rest.Upper), 1, text.Size(rest.Upper));
        sketch.Up(new(rear, rest.Profile.End.Y), new(rear, rest.Upper), -1);
        sketch.Note(side == WingSide.Upper
            ? $"Stand it plumb on the upper side {text.CoarseWithUnit(across)} from the centre line, along the body, its lip at the leading edge: port and starboard alike."
            : $"With the airframe upside down: stand it plumb on the lower side {text.CoarseWithUnit(across)} from the centre line, its lip at the leading edge.");
        sketch.Note($"The upper edge is parallel to the datum line when the chord stands at {MeasureText.Angle(rest.Incidence)} there, twist included; put a bubble level on it.");
        var key = $"level_rest.{name.Replace(' ', '_')}{(under.Length > 0 ? ".under" : "")}";
        var title = $"Level rest, {name}{under}";
        sketch.Figure($"{key}.across", $"{title}: from the centre line", across, FigureQuantity.Length);
        sketch.Figure($"{key}.incidence", $"{title}: angle of the chord", rest.Incidence, FigureQuantity.Angle);
        sketch.Figure($"{key}.front", $"{title}: upper edge above the nose", rest.Upper, FigureQuantity.Length);
        sketch.Figure($"{key}.rear", $"{title}: upper edge above the trailing edge", rest.UpperAtRear, FigureQuantity.Length);
        var id = $"level-rest-{name.Replace(' ', '-')}{(under.Length > 0 ? "-underside" : "")}";
        return sketch.AsCut(id, Title, title, cradles.Material, cradles.Thickness, 0);
    }
}
