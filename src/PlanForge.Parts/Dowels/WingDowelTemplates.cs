using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;

namespace PlanForge.Parts.Dowels;

/// <summary>
/// The template for drilling the dowel holes into the wing: the plane square to the dowel axes at the root's leading edge,
/// seen along the axes from the tail. There the holes are round.
/// </summary>
public sealed class WingDowelTemplates : IPartKind
{
    // Paper around the holes, in dowel diameters.
    private const double Margin = 2.5;

    /// <inheritdoc/>
    public string Title => "Dowels";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        if (DowelAxis.Of(airframe) is not { } axis)
        {
            yield break;
        }

        var sketch = new PartSketch();
        var (dowels, text) = (axis.Dowels, airframe.Text);
        var radius = (dowels.Diameter + dowels.Fit) / 2;
        var margin = Margin * dowels.Diameter;
        var halfWidth = Math.Max(axis.Across + margin, 30);
        double top = Math.Max(dowels.AboveChord, 0) + margin, bottom = Math.Min(dowels.AboveChord, 0) - margin;

        sketch.Line(LineUse.Cut, Path2.Rectangle(new(-halfWidth, bottom, halfWidth, top)));
        sketch.Line(LineUse.Centre, new(0, bottom - 4), new(0, top + 4));
        sketch.Line(LineUse.Datum, new(-halfWidth - 4, 0), new(halfWidth + 30, 0));
        sketch.Label("root chord line", new(halfWidth + 3, 1), Anchor.Start);
        AddLeadingEdge(airframe, halfWidth, sketch);
        double[] sides = axis.Across > 0 ? [-1, 1] : [1];
        var holes = ImmutableArray.CreateBuilder<Path2>();
        foreach (var side in sides)
        {
            var centre = new Point2(side * axis.Across, dowels.AboveChord);
            holes.Add(Path2.Circle(centre, radius).Reversed());
            sketch.Line(LineUse.Cut, holes[^1]);
            sketch.Cross(LineUse.Centre, centre, (2 * radius) + 6);
        }

        if (axis.Across > 0)
        {
            sketch.Across(new(-axis.Across, dowels.AboveChord), new(axis.Across, dowels.AboveChord), -1);
            sketch.Across(new(0, dowels.AboveChord), new(axis.Across, dowels.AboveChord), -1);
        }

        if (dowels.AboveChord != 0)
        {
            sketch.Up(new(-halfWidth, 0), new(-axis.Across, dowels.AboveChord), 1);
        }

        sketch.Hole(new(axis.Across, dowels.AboveChord), radius, new(halfWidth + 8, top), DowelTexts.Hole(axis, text));

        sketch.Note("Hold against the leading edge, centre lines together, seen from the tail; drill along the root chord line.");
        sketch.Note($"Holes: {DowelTexts.Fit(axis, text)}; the dowel stands {text.CoarseWithUnit(dowels.Protrusion)} ahead of the leading edge.");
        sketch.Figure("dowels.spacing", "Dowels, distance between the axes", dowels.Spacing, FigureQuantity.Length);
        sketch.Figure("dowels.hole", "Dowels, hole diameter", 2 * radius, FigureQuantity.Length);
        sketch.Figure("dowels.above_chord", "Dowels, axes above the root chord line", dowels.AboveChord, FigureQuantity.Length);
        sketch.Figure("dowels.obliquity", "Dowels, angle of the axes to the datum line", axis.Rise, FigureQuantity.Angle);
        sketch.Figure("dowels.front", "Dowels, station of their front ends", axis.FrontStation, FigureQuantity.Length);
        yield return sketch.AsTemplate("dowels-wing", Title, "Dowel holes in the wing") with { Fitted = holes.ToImmutable() };
    }

    // The leading edge in this plane: a V where there is dihedral (its first panel; sweep does not show from the front).
    private static void AddLeadingEdge(RiggedAirframe airframe, double halfWidth, PartSketch sketch)
    {
        var panel = airframe.Wing.Panels[0];
        var rise = Math.Tan(panel.Dihedral) * halfWidth;
        if (rise != 0)
        {
            sketch.Line(LineUse.Neighbour, Path2.Polyline(new(-halfWidth, rise), Point2.Origin, new(halfWidth, rise)));
        }
    }
}
