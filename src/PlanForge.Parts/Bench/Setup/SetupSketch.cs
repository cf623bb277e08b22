using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>Three little views that name the places to measure; not to scale, the same for every airframe.</summary>
internal static class SetupSketch
{
    private const double Pin = 3;

    /// <summary>Adds the views.</summary>
    /// <param name="isLow">True for a wing under the body.</param>
    /// <param name="hasTail">True to show the tailplane's pins.</param>
    /// <param name="sketch">Takes the lines and labels.</param>
    public static void Add(bool isLow, bool hasTail, PartSketch sketch)
    {
        AddFront(new(0, 0), isLow, sketch);
        AddSide(new(90, 0), isLow, hasTail, sketch);
        AddPlan(new(70, -82), hasTail, sketch);
    }

    // Seen from the tail looking forward: port is left.
    private static void AddFront(Point2 at, bool isLow, PartSketch sketch)
    {
        Point2 P(double x, double y) => at + new Vector2(x, y);
        sketch.Line(LineUse.Edge, P(-68, 0), P(68, 0));
        sketch.Line(LineUse.Edge, Path2.Rectangle(new(at.X - 12, at.Y + 10, at.X + 12, at.Y + 38)));
        sketch.Line(LineUse.Edge, Path2.Polyline(P(-16, 0), P(-16, 22), P(-12, 22), P(-12, 10), P(12, 10), P(12, 22), P(16, 22), P(16, 0)));
        var wing = isLow ? 10 : 38;
        sketch.Line(LineUse.Edge, Path2.Polyline(P(-66, wing + 10), P(0, wing), P(66, wing + 10)));
        sketch.Line(LineUse.Datum, P(-30, 26), P(30, 26));
        sketch.Label("datum line", P(32, 25), Anchor.Start);
        sketch.Label("board", P(40, 1.5), Anchor.Start);
        sketch.Line(LineUse.Station, P(-26, 0), P(-26, wing + 4));
        sketch.Line(LineUse.Station, P(26, 0), P(26, wing + 4));
        sketch.Label("P1, P3", P(-26, wing + 8));
        sketch.Label("P2, P4", P(26, wing + 8));
        sketch.Label("left, port", P(-66, 33), Anchor.Start);
        sketch.Label("right, starboard", P(66, 33), Anchor.End);
        sketch.Label("left tip", P(-66, wing + 13), Anchor.Start);
        sketch.Label("right tip", P(66, wing + 13), Anchor.End);
        sketch.Label("from the tail, looking forward; not to scale", P(0, -5));
    }

    // Nose to the left.
    private static void AddSide(Point2 at, bool isLow, bool hasTail, PartSketch sketch)
    {
        Point2 P(double x, double y) => at + new Vector2(x, y);
        sketch.Line(LineUse.Edge, P(-4, 0), P(96, 0));
        sketch.Line(LineUse.Edge, Path2.Polygon(P(0, 16), P(20, 12), P(90, 24), P(90, 30), P(50, 38), P(18, 40), P(0, 32)));
        sketch.Line(LineUse.Edge, Path2.Polyline(P(10, 0), P(10, 14)));
        sketch.Line(LineUse.Edge, Path2.Polyline(P(62, 0), P(62, 19)));
        sketch.Line(LineUse.Datum, P(-4, 26), P(96, 26));
        var wing = isLow ? 14 : 44;
        sketch.Line(LineUse.Edge, P(20, wing), P(48, wing - 3));
        sketch.Line(LineUse.Station, P(20, wing - Pin), P(20, wing + Pin));
        sketch.Line(LineUse.Station, P(48, wing - 3 - Pin), P(48, wing - 3 + Pin));
        sketch.Label("P1, P2", P(22, isLow ? 6 : 50));
        sketch.Label("P3, P4", P(48, isLow ? 4 : 48));
        sketch.Label("cradle", P(8, 3), Anchor.End);
        sketch.Label("cradle", P(64, 4), Anchor.Start);
        sketch.Label("from the left (port); not to scale", P(46, -5));
        if (hasTail)
        {
            sketch.Line(LineUse.Edge, P(74, 36), P(88, 36));
            sketch.Line(LineUse.Station, P(74, 36 - Pin), P(74, 36 + Pin));
            sketch.Line(LineUse.Station, P(88, 36 - Pin), P(88, 36 + Pin));
            sketch.Label("T1, T2", P(70, 43));
            sketch.Label("T3, T4", P(92, 43));
        }
    }

    // From above, nose up: port is left here too.
    private static void AddPlan(Point2 at, bool hasTail, PartSketch sketch)
    {
        Point2 P(double x, double y) => at + new Vector2(x, y);
        sketch.Line(LineUse.Edge, Path2.Polygon(P(-66, 50), P(0, 56), P(66, 50), P(66, 42), P(0, 38), P(-66, 42)));
        sketch.Line(LineUse.Edge, Path2.Polygon(P(-6, 66), P(6, 66), P(8, 46), P(2, 2), P(-2, 2), P(-8, 46)));
        sketch.Line(LineUse.Centre, P(0, 70), P(0, -2));
        sketch.Line(LineUse.Station, P(0, 4), P(-66, 50));
        sketch.Line(LineUse.Station, P(0, 4), P(66, 50));
        foreach (var (name, x, y, textY) in new[] { ("P1", -16.0, 54.5, 59.0), ("P2", 16, 54.5, 59), ("P3", -16, 39, 34), ("P4", 16, 39, 34) })
        {
            sketch.Cross(LineUse.Station, P(x, y), Pin);
            sketch.Label(name, P(x, textY));
        }

        sketch.Label("cord", P(-46, 29));
        sketch.Label("cord", P(46, 29));
        sketch.Label("left", P(-60, 56));
        sketch.Label("right", P(60, 56));
        sketch.Label("from above, nose up; not to scale", P(0, -6));
        if (hasTail)
        {
            sketch.Line(LineUse.Edge, Path2.Polygon(P(-24, 14), P(24, 14), P(24, 7), P(-24, 7)));
            foreach (var (name, x, y, textY) in new[] { ("T1", -20.0, 14.0, 18.0), ("T2", 20, 14, 18), ("T3", -20, 7, 2), ("T4", 20, 7, 2) })
            {
                sketch.Cross(LineUse.Station, P(x, y), Pin);
                sketch.Label(name, P(x + (Math.Sign(x) * 8), textY));
            }
        }
    }
}
