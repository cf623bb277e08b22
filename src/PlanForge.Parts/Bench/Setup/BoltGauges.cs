using PlanForge.Geometry;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Bolts;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>Gauges that stand beside the drill: one edge on the wood, the other along the axis of the wing bolts.</summary>
internal static class BoltGauges
{
    /// <summary>The gauge that stands on the bolt plate, seen from the port side: front on the left.</summary>
    public static Part OnPlate(RiggedAirframe airframe, BoltAxis axis, string kind)
    {
        var (text, sketch) = (airframe.Text, new PartSketch());
        var sizes = JigSizes.Of(text.Unit);
        var (length, height) = (sizes.GaugeLength, sizes.GaugeHeight);

        // A low wing's plate is drilled from below, with the airframe upside down: there the lean is the other way.
        var isUpright = airframe.WingSide == WingSide.Lower;
        var over = height * Math.Tan(isUpright ? axis.Lean : -axis.Lean);
        Add(Path2.Polygon(new Point2(-length, 0), Point2.Origin, new(over, height), new(-length, height)), "on the plate", sizes, sketch);
        sketch.Note($"Stand it on the bolt plate{(isUpright ? "" : ", airframe upside down")}, front forward, and sight the drill along the leaning edge.");
        sketch.Note($"It leans {text.FineWithUnit(Math.Abs(over))} {(over >= 0 ? "aft" : "forward")} over {text.CoarseWithUnit(height)}: {MeasureText.Angle(axis.Obliquity)}.");
        sketch.Figure("bolt_gauge.plate.over", "Bolt gauge, lean over its height", over, FigureQuantity.Length);
        return AsPart(sketch, airframe, "bolt-gauge-plate", kind, "Drilling gauge for the bolt plate");
    }

    /// <summary>The gauge that stands on the wing ahead of the bolts, its lower edge cut to the section.</summary>
    public static Part OnWing(RiggedAirframe airframe, BoltAxis axis, string kind)
    {
        // Drilled from the side away from the body.
        var side = airframe.WingSide == WingSide.Lower ? WingSide.Upper : WingSide.Lower;
        var up = side == WingSide.Upper ? 1 : -1;
        var sizes = JigSizes.Of(airframe.Description.DisplayUnit);
        var profile = new WingProfile(airframe.Wing, side, axis.Across);
        double Behind(double w)
        {
            var at = profile.At(w).Point;
            return at.X - axis.StationAt(at.Y);
        }

        var end = RootFinder.Bracketed(Behind, WingShape.Nose, 1, 1e-13) ?? 1;
        var begin = Math.Sqrt(Math.Max(0, (end * end) - (sizes.GaugeLength / airframe.Wing.RootChord)));
        var foot = profile.At(end).Point;
        var lower = ArcFitter.Fit(
            [.. profile.Samples(begin, end).Select(sample => new CurveSample(
                new(sample.Point.X - foot.X, up * (sample.Point.Y - foot.Y)), new(sample.Direction.X, up * sample.Direction.Y)))],
            Drawn.Tolerance);
        var over = up * sizes.GaugeHeight * Math.Tan(axis.Lean);
        var sketch = new PartSketch();
        Add(Path2.Closed([.. lower.Vertices[..^1], new(lower.End), new(new(over, sizes.GaugeHeight)), new(new(lower.Start.X, sizes.GaugeHeight))]), "on the wing", sizes, sketch);
        sketch.Note(
            $"Stand it on the wing's {(up > 0 ? "upper" : "lower")} side, along the body, its point on the mark of the hole, front forward; sight the drill along the leaning edge: square to the root chord line.");
        return AsPart(sketch, airframe, "bolt-gauge-wing", kind, "Drilling gauge for the bolts in the wing");
    }

    private static void Add(Path2 contour, string name, JigSizes sizes, PartSketch sketch)
    {
        sketch.Line(LineUse.Cut, contour);
        var (bounds, length, height) = (contour.Bounds, sizes.GaugeLength, sizes.GaugeHeight);
        sketch.Engrave(name, new((-length / 2) - 1, height - 12), 2.5);
        sketch.Label("FRONT", new(-length + 3, height - 22), Anchor.Start);
        sketch.Across(new(bounds.MinX, height), new(contour.Vertices[^2].Point.X, height), 1);
        sketch.Up(new(bounds.MaxX, 0), new(contour.Vertices[^2].Point.X, height), -1);
    }

    private static Part AsPart(PartSketch sketch, RiggedAirframe airframe, string id, string kind, string title)
    {
        var cradles = airframe.Description.Bench.Cradles;
        return sketch.AsCut(id, kind, title, cradles.Material, cradles.Thickness, Math.PI / 2);
    }
}
