using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Shims;

/// <summary>Wedges that change the incidence of wing or tailplane, one for each step of angle, with their thickness at both ends.</summary>
/// <remarks>
/// A wedge of base L along the datum line that turns its seat by an angle a is L tan a thicker at one end. More incidence
/// raises the leading edge: the thick end is in front under a wing that lies on its seat, and behind where the body lies
/// on the wing.
/// </remarks>
public sealed class ShimParts : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Shims";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        var shims = airframe.Description.Shims;
        if (ShapeGuard.Make(airframe, "the wing's shims", shims.At, findings, () => OfWing(airframe)) is { } wing)
        {
            yield return wing;
        }

        if (airframe.Description.Tailplane is { } tailplane
            && ShapeGuard.Make(airframe, "the tailplane's shims", shims.At, findings, () => Set(
                airframe, "tailplane", "Tailplane shims", tailplane.Root.Chord, tailplane.SeatWidth, true)) is { } tail)
        {
            yield return tail;
        }
    }

    private Part OfWing(RiggedAirframe airframe)
    {
        var line = airframe.SaddleLine!;
        var isUnder = airframe.Description.Wing.Placement == Airframe.WingPlacement.High;
        return Set(airframe, "wing", "Wing shims", line.To - line.From, airframe.Description.Shims.Width, isUnder);
    }

    private Part Set(RiggedAirframe airframe, string name, string title, double length, double width, bool isUnder)
    {
        const double Gap = 9;
        var sketch = new PartSketch();
        var text = airframe.Text;
        var rows = new List<ImmutableArray<string>>();
        var pieces = ImmutableArray.CreateBuilder<SetPiece>();
        var below = 0.0;
        foreach (var change in Steps(airframe.Description.Shims))
        {
            var thickness = length * Math.Tan(Math.Abs(change));
            var isThickInFront = change > 0 == isUnder;
            below -= thickness + Gap;
            var foot = new Point2(0, below);
            var thick = foot + new Vector2(isThickInFront ? 0 : length, thickness);
            var named = SignedAngle(change);
            Cut(named, Path2.Polygon(foot, foot + new Vector2(length, 0), thick));
            var (front, rear) = isThickInFront ? (thickness, 0.0) : (0.0, thickness);

            // The sizes stand under the wedge: between two of them there is no room for dimension lines.
            sketch.Label($"{named}: front {EndText(text, front)}, rear {EndText(text, rear)}", foot + new Vector2(length / 2, -3.2));
            rows.Add([named, text.Fine(front), text.Fine(rear)]);
            sketch.Figure(
                $"shims.{name}.{MeasureText.Rounded(change * 180 / Math.PI, 3)}",
                $"{title}, {named}: thickness of the thick end",
                thickness,
                FigureQuantity.Length);
        }

        // The strip in plan, below the wedges.
        below -= width + 12;
        Cut("strip in plan", Path2.Rectangle(new(0, below, length, below + width)));
        sketch.Label("strip in plan", new(length - 2, below + (width / 2) - 1.25), Anchor.End);
        sketch.Label("FRONT", new(2, below + (width / 2) - 1.25), Anchor.Start);
        sketch.Across(new(0, below), new(length, below), -1);
        sketch.Up(new(length, below), new(length, below + width), -1);
        sketch.Table($"Thickness of the shims ({text.UnitName})", ["change", "front", "rear"], rows);
        sketch.Note("Side views, front to the left; plus raises the leading edge. The thin end is a feather edge: glue to a backing before sanding.");
        return sketch.AsTemplate($"shims-{name}", Title, title, quantity: 1) with { Pieces = pieces.ToImmutable() };

        void Cut(string piece, Path2 outline)
        {
            sketch.Line(LineUse.Cut, outline);
            pieces.Add(new(piece, outline));
        }
    }

    private static string EndText(MeasureText text, double thickness) => thickness == 0 ? "0" : text.FineWithUnit(thickness);

    private static string SignedAngle(double radians) => (radians > 0 ? "+" : "") + MeasureText.Angle(radians);

    // The steps from least to greatest, the change of zero left out. Steps are counted, not summed: no drift.
    private static IEnumerable<double> Steps(Airframe.ShimsDescription shims)
    {
        const double Slack = 1e-9;
        var count = (int)Math.Floor(((shims.To - shims.From) / shims.Step) + Slack);
        for (var i = 0; i <= count; i++)
        {
            var change = shims.From + (i * shims.Step);
            if (Math.Abs(change) > Slack)
            {
                yield return change;
            }
        }
    }
}
