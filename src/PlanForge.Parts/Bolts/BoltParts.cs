using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Dowels;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bolts;

/// <summary>The plate across the body that takes the wing bolts, and the template for drilling the wing.</summary>
public sealed class BoltParts : IPartKind
{
    /// <inheritdoc/>
    public string Title => "Bolts";

    /// <inheritdoc/>
    public IEnumerable<Part> Make(RiggedAirframe airframe, ICollection<Diagnostic> findings)
    {
        if (BoltAxis.Of(airframe) is not { } axis)
        {
            yield break;
        }

        if (ShapeGuard.Make(airframe, "the bolt plate", axis.Bolts.At, findings, () => Plate(airframe, axis, findings)) is { } plate)
        {
            yield return plate;
        }

        if (ShapeGuard.Make(airframe, "the bolts' template", axis.Bolts.At, findings, () => WingTemplate(airframe, axis)) is { } template)
        {
            yield return template;
        }
    }

    // Seen from above, nose to the left: x aft, y (starboard) up; the origin is midway between the bolts in mid thickness.
    private Part? Plate(RiggedAirframe airframe, BoltAxis axis, ICollection<Diagnostic> findings)
    {
        const int Steps = 16;
        var plate = axis.Bolts.Plate;
        var middle = axis.StationAt((axis.NearFace + axis.FarFace) / 2);
        double from = middle - (plate.Length / 2), to = middle + (plate.Length / 2);
        var edge = ImmutableArray.CreateBuilder<Point2>(Steps + 1);
        double greatestBevel = 0;
        for (var i = 0; i <= Steps; i++)
        {
            var station = from + ((to - from) * i / Steps);
            double? near = airframe.Body.Skins.HalfBreadthAt(station, axis.NearFace), far = airframe.Body.Skins.HalfBreadthAt(station, axis.FarFace);
            if (near is not { } a || far is not { } b)
            {
                findings.Add(Diagnostic.Error(
                    axis.Bolts.At,
                    $"the bolt plate does not lie inside the body: at station {airframe.Text.CoarseWithUnit(station)} its faces are at heights {airframe.Text.CoarseWithUnit(axis.NearFace)} and {airframe.Text.CoarseWithUnit(axis.FarFace)}"));
                return null;
            }

            // The wider face is cut; the difference is bevelled away.
            edge.Add(new(station - middle, Math.Max(a, b)));
            greatestBevel = Math.Max(greatestBevel, Math.Abs(Math.Atan((a - b) / plate.Thickness)));
        }

        var sketch = new PartSketch();
        var upper = ArcFitter.Fit(SampledCurve.Through(edge.ToImmutable()), Drawn.Tolerance);
        var lower = upper.Placed(Placement2.Mirror.Then(Placement2.TurnedBy(Math.PI)));
        sketch.Line(LineUse.Cut, Path2.Closed([
            .. lower.Vertices[..^1], new(lower.End), .. upper.Reversed().Vertices[..^1], new(upper.Start)]));
        var bounds = Bounds2.Around(edge);
        sketch.Line(LineUse.Centre, new(bounds.MinX - 4, 0), new(bounds.MaxX + 4, 0));
        AddPlateHoles(axis, sketch);
        AddPlateTexts(airframe, axis, middle, greatestBevel, bounds, (edge[0].Y, edge[^1].Y), sketch);
        return sketch.AsCut("bolt-plate", Title, "Bolt plate", plate.Material, plate.Thickness, Math.PI / 2);
    }

    private static string CountOf(BoltAxis axis) => axis.Across > 0 ? "2 × " : "";

    // From the centre line to a hole, and from hole to hole.
    private static void AddHoleSpacing(BoltAxis axis, double x, double side, PartSketch sketch)
    {
        if (axis.Across > 0)
        {
            sketch.Up(new(x, 0), new(x, axis.Across), side);
            sketch.Up(new(x, -axis.Across), new(x, axis.Across), side);
        }
    }

    private static void AddPlateHoles(BoltAxis axis, PartSketch sketch)
    {
        var radius = axis.Fastener.Tapping / 2;
        double[] sides = axis.Across > 0 ? [-1, 1] : [1];
        foreach (var side in sides)
        {
            var hole = new EllipticHole(new(0, side * axis.Across), radius / Math.Cos(axis.Obliquity), radius);
            sketch.Line(LineUse.Cut, hole.Contour());
            sketch.Cross(LineUse.Centre, hole.Centre, (2 * radius) + 6);
        }
    }

    private static void AddPlateTexts(
        RiggedAirframe airframe, BoltAxis axis, double middle, double greatestBevel, Bounds2 bounds, (double Front, double Rear) half, PartSketch sketch)
    {
        var text = airframe.Text;
        var fastener = axis.Fastener;
        var (front, rear) = half;
        sketch.Label("FRONT", new(bounds.MinX + 4, bounds.MaxY * 0.55), Anchor.Middle, Math.PI / 2);
        sketch.Engrave("bolt plate", new(0, axis.Across > 0 ? 6 : -bounds.MaxY / 2), 2.5);
        sketch.Across(new(bounds.MinX, -front), new(bounds.MaxX, -rear), -1);
        sketch.Across(new(bounds.MinX, axis.Across), new(0, axis.Across), 1);
        sketch.Up(new(bounds.MinX, -front), new(bounds.MinX, front), 1);
        sketch.Up(new(bounds.MaxX, -rear), new(bounds.MaxX, rear), -1);
        AddHoleSpacing(axis, 0, -1, sketch);
        sketch.Hole(
            new(0, axis.Across),
            fastener.Tapping / 2,
            new(bounds.MaxX + 6, axis.Across + 6),
            $"{CountOf(axis)}{text.Diameter(fastener.Tapping)}, drill {fastener.DrillNames.Tapping}, tap {fastener.Thread}");
        sketch.Note($"Drill square to the wing's chord: lean the drill {MeasureText.Angle(axis.Obliquity)} from square, its upper end {(axis.Lean >= 0 ? "aft" : "forward")}.");
        sketch.Note($"Face next to the wing at height {text.CoarseWithUnit(axis.NearFace)}, holes in mid thickness at station {text.CoarseWithUnit(middle)}.");
        if (greatestBevel > Math.PI / 180 / 4)
        {
            sketch.Note($"Cut to the wider face; bevel the ends by up to {MeasureText.Angle(greatestBevel)} to fit the sides.");
        }

        sketch.Figure("bolts.station", "Bolts, station in the plate", middle, FigureQuantity.Length);
        sketch.Figure("bolts.plate_height", "Bolt plate, height of the face next to the wing", axis.NearFace, FigureQuantity.Length);
        sketch.Figure("bolts.spacing", "Bolts, distance between the axes", axis.Bolts.Spacing, FigureQuantity.Length);
        sketch.Figure("bolts.tapping_drill", "Bolts, tapping drill", fastener.Tapping, FigureQuantity.Length);
        sketch.Figure("bolts.clearance_drill", "Bolts, clearance drill", fastener.Clearance, FigureQuantity.Length);
        sketch.Figure("bolts.lean", "Bolts, lean from upright", axis.Lean, FigureQuantity.Angle);
    }

    // In the chord plane, so that the holes are round: x aft of the root leading edge, y to one side; the trailing edge is its rear edge.
    private Part WingTemplate(RiggedAirframe airframe, BoltAxis axis)
    {
        const double Margin = 15;
        var sketch = new PartSketch();
        var text = airframe.Text;
        var (fastener, ahead) = (axis.Fastener, axis.Bolts.AheadOfTrailingEdge);
        double halfWidth = axis.Across + Margin, length = ahead + Margin;
        var panel = airframe.Wing.Panels[0];

        // The trailing edge in plan leans with taper and sweep.
        var lean = (panel.Sweep + panel.OuterChord - panel.InnerChord) / panel.Length * halfWidth;
        sketch.Line(LineUse.Cut, Path2.Polygon(
            new Point2(-length, -halfWidth), new(lean, -halfWidth), Point2.Origin, new(lean, halfWidth), new(-length, halfWidth)));
        sketch.Line(LineUse.Centre, new(-length - 4, 0), new(4, 0));
        double[] sides = axis.Across > 0 ? [-1, 1] : [1];
        var holes = ImmutableArray.CreateBuilder<Path2>();
        foreach (var side in sides)
        {
            var centre = new Point2(-ahead, side * axis.Across);
            holes.Add(Path2.Circle(centre, fastener.Clearance / 2).Reversed());
            sketch.Line(LineUse.Cut, holes[^1]);
            sketch.Cross(LineUse.Centre, centre, fastener.Clearance + 6);
        }

        sketch.Leader(new(lean * 0.7, halfWidth * 0.7), new(8, halfWidth * 0.7), "trailing edge");
        sketch.Across(new(-ahead, axis.Across), new(0, axis.Across), 1);
        AddHoleSpacing(axis, -ahead, 1, sketch);
        sketch.Hole(
            new(-ahead, -axis.Across),
            fastener.Clearance / 2,
            new(6, -axis.Across - 8),
            $"{CountOf(axis)}{text.Diameter(fastener.Clearance)}, drill {fastener.DrillNames.Clearance}, for {fastener.Thread}");
        sketch.Note("Lay on the wing's centre, trailing edges and centre lines together; drill square to the chord line.");
        sketch.Note($"Measured along the root chord: {text.CoarseWithUnit(ahead)} ahead of the trailing edge.");
        return sketch.AsTemplate("bolts-wing", Title, "Bolt holes in the wing") with { Fitted = holes.ToImmutable() };
    }
}
