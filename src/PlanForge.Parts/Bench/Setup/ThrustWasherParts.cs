using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>The bolts of the motor mount on the firewall with the thickness of the washers under each.</summary>
public sealed class ThrustWasherParts : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Thrust washers";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        if (airframe.Description.ThrustLine is { Mount: { } mount } thrust)
        {
            yield return Template(airframe.Text, thrust, mount);
        }
    }

    // Seen from the tail looking forward, through the firewall: x starboard, y up, the shaft in the middle.
    private Part Template(MeasureText text, ThrustLineDescription thrust, MountDescription mount)
    {
        const double Margin = 10;
        var sketch = new PartSketch();
        double y = mount.Across / 2, z = mount.Up / 2;
        sketch.Line(LineUse.Cut, Path2.Rectangle(new(-y - Margin, -z - Margin, y + Margin, z + Margin)));
        sketch.Line(LineUse.Centre, new(0, -z - Margin - 4), new(0, z + Margin + 4));
        sketch.Line(LineUse.Centre, new(-y - Margin - 4, 0), new(y + Margin + 4, 0));
        sketch.Across(new(-y, -z), new(y, -z), -1);
        sketch.Up(new(-y, -z), new(-y, z), 1);
        var washers = ThrustWashers.Of(thrust, mount);
        var rows = new List<ImmutableArray<string>>();
        foreach (var (name, thickness) in washers.Named)
        {
            var bolt = new Point2(name.EndsWith("port", StringComparison.Ordinal) ? -y : y, name.StartsWith("upper", StringComparison.Ordinal) ? z : -z);
            sketch.Cross(LineUse.Centre, bolt, 8);
            sketch.Leader(bolt, bolt + new Vector2(Math.Sign(bolt.X) * (Margin + 6), Math.Sign(bolt.Y) * 4), text.Fine(thickness));
            rows.Add([name, text.Fine(thickness)]);
            sketch.Figure($"thrust.washer.{name.Replace(' ', '_')}", $"Thrust washers, {name}", thickness, FigureQuantity.Length);
        }

        sketch.Table($"Washers between firewall and mount ({text.UnitName})", ["bolt", "thickness"], rows);
        sketch.Note($"Seen from the tail. {MeasureText.Angle(thrust.Down)} down-thrust, {MeasureText.Angle(thrust.Right)} to starboard (right), from a firewall square to the datum line.");
        sketch.Note("The shaft moves forward by half the thickest washer.");
        return sketch.AsTemplate("thrust-washers", Title, "Thrust washers") with { Fitted = [] };
    }
}
