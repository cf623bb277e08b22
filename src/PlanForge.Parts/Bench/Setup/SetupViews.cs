using PlanForge.Geometry;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Setup;

/// <summary>
/// Three little views that name the places to measure and say what they should read. Their shapes are the same for every airframe:
/// pins a finger's breadth apart would not be told apart on a view to scale.
/// </summary>
internal sealed class SetupViews(RiggedAirframe airframe, SetupTargets targets)
{
    private const double PinSize = 3;
    private const double LinePitch = 4.5;

    // Heights in the views: the body's underside and top.
    private const double Under = 10;
    private const double Over = 36;
    private const double DatumLine = 24;

    private bool IsLow => airframe.WingSide == Shapes.WingSide.Upper;

    private MeasureText Text => airframe.Text;

    /// <summary>Seen from the tail looking forward: port is left.</summary>
    public void AddFromTail(PartSketch sketch)
    {
        const double HalfSpan = 54, Pin = 25, Rise = 9;
        var wing = IsLow ? Under : Over;
        var wingAtPin = wing + (Rise * Pin / HalfSpan);
        sketch.Line(LineUse.Edge, new(-HalfSpan, 0), new(HalfSpan, 0));
        sketch.Line(LineUse.Edge, Path2.Rectangle(new(-11, Under, 11, Over)));
        sketch.Line(LineUse.Edge, Path2.Polyline(
            new Point2(-15, 0), new(-15, 21), new(-11, 21), new(-11, Under), new(11, Under), new(11, 21), new(15, 21), new(15, 0)));
        sketch.Line(LineUse.Edge, Path2.Polyline(new Point2(-HalfSpan, wing + Rise), new(0, wing), new(HalfSpan, wing + Rise)));
        sketch.Line(LineUse.Datum, new(-20, DatumLine), new(20, DatumLine));
        sketch.Label($"datum line {Text.Fine(targets.Board)}", IsLow ? new(13, 30.5) : new(27, DatumLine - 1), Anchor.Start);
        sketch.Label("board", new(HalfSpan - 1, 1.5), Anchor.End);
        sketch.Line(LineUse.Station, new(-Pin, -8), new(-Pin, wingAtPin + 3));
        sketch.Line(LineUse.Station, new(Pin, -8), new(Pin, wingAtPin + 3));
        sketch.Line(LineUse.Station, new(-Pin, -6), new(Pin, -6));
        sketch.Label($"P1 to P2 {Text.Fine(2 * targets.Front.Y)}", new(0, -5), Anchor.Middle);
        AddStack([$"P1 {Text.Fine(targets.Front.Z + targets.Board)}", $"P3 {Text.Fine(targets.Rear.Z + targets.Board)}"], -Pin);
        AddStack([$"P2 {Text.Fine(targets.Front.Z + targets.Board)}", $"P4 {Text.Fine(targets.Rear.Z + targets.Board)}"], Pin);
        AddTip("left (port) tip", -HalfSpan, Anchor.Start);
        AddTip("right (starboard) tip", HalfSpan, Anchor.End);

        void AddStack(string[] lines, double x)
        {
            for (var i = 0; i < lines.Length; i++)
            {
                sketch.Label(lines[^(i + 1)], new(x, wingAtPin + 6 + (i * LinePitch)));
            }
        }

        void AddTip(string name, double x, Anchor anchor)
        {
            sketch.Label(Text.Fine(targets.TipAboveBoard), new(x, wing + Rise + 8), anchor);
            sketch.Label(name, new(x, wing + Rise + 8 + (2 * LinePitch)), anchor);
        }
    }

    /// <summary>Seen from the port side: the nose is left.</summary>
    public void AddFromPort(PartSketch sketch)
    {
        const double Front = 14, Rear = 66;
        var stations = CradleStations.Of(airframe);
        sketch.Line(LineUse.Edge, new(-4, 0), new(100, 0));
        sketch.Line(LineUse.Edge, Path2.Polygon(new Point2(0, 16), new(20, 12), new(90, 22), new(90, 28), new(50, 35), new(18, 38), new(0, 31)));
        sketch.Line(LineUse.Edge, new(Front, 0), new(Front, 13.2));
        sketch.Line(LineUse.Edge, new(Rear, 0), new(Rear, 18.6));
        sketch.Line(LineUse.Datum, new(-4, DatumLine), new(100, DatumLine));
        sketch.Label($"cradle {Text.Column(stations.Front)}", new(Front, -4));
        sketch.Label($"cradle {Text.Column(stations.Rear)}", new(Rear, -4));
        var wing = IsLow ? 12 : 43;
        AddEdge(sketch, new(20, wing), new(48, wing - 3));
        sketch.Label("P1, P2", new(18, wing - 1), Anchor.End);
        sketch.Label("P3, P4", new(50, wing - 4), Anchor.Start);
        sketch.Label($"rise {Text.Fine(targets.WingRise)}", new(35, wing + (IsLow ? -6 : 3)));
        if (targets.Tail is { } tail)
        {
            AddEdge(sketch, new(72, 33), new(86, 33));
            sketch.Label($"T1, T2 {Text.Fine(tail.Front.Z + targets.Board)}", new(78, 39));
            sketch.Label($"T3, T4, rise {Text.Fine(tail.Rise)}", new(84, 43.5));
        }
    }

    /// <summary>Seen from above, nose up: port is left here too.</summary>
    public void AddFromAbove(PartSketch sketch)
    {
        const double Half = 54, Pin = 17;
        sketch.Line(LineUse.Edge, Path2.Polygon(new Point2(-Half, 37), new(0, 42), new(Half, 37), new(Half, 30), new(0, 27), new(-Half, 30)));
        sketch.Line(LineUse.Edge, Path2.Polygon(new Point2(-6, 49), new(6, 49), new(8, 34), new(2, 0), new(-2, 0), new(-8, 34)));
        sketch.Line(LineUse.Centre, new(0, 51), new(0, -3));
        sketch.Line(LineUse.Station, new(0, 2), new(-Half, 37));
        sketch.Line(LineUse.Station, new(0, 2), new(Half, 37));
        AddPins(sketch, 'P', Pin, 40.4, 27.9, 0, 4.5);
        sketch.Label($"cord {Text.Column(targets.CordLength)}", new(-Half, 18), Anchor.Start);
        sketch.Label($"cord {Text.Column(targets.CordLength)}", new(Half, 18), Anchor.End);
        sketch.Label("left (port)", new(-Half, 44), Anchor.Start);
        sketch.Label("right (starboard)", new(Half, 44), Anchor.End);
        sketch.Label($"cord's pin {Text.Column(targets.CordStation)}", new(6, -4), Anchor.Start);
        if (targets.HasTail)
        {
            sketch.Line(LineUse.Edge, Path2.Polygon(new Point2(-24, 10), new(24, 10), new(24, 4), new(-24, 4)));
            AddPins(sketch, 'T', 20, 10, 4, 8, 2);
        }
    }

    private static void AddEdge(PartSketch sketch, Point2 front, Point2 rear)
    {
        sketch.Line(LineUse.Edge, front, rear);
        foreach (var pin in new[] { front, rear })
        {
            sketch.Line(LineUse.Station, pin - new Vector2(0, PinSize), pin + new Vector2(0, PinSize));
        }
    }

    private static void AddPins(PartSketch sketch, char name, double across, double front, double rear, double outward, double away)
    {
        for (var i = 0; i < 4; i++)
        {
            var side = i % 2 == 0 ? -1 : 1;
            var isFront = i < 2;
            var at = new Point2(side * across, isFront ? front : rear);
            sketch.Cross(LineUse.Station, at, PinSize);
            sketch.Label(FormattableString.Invariant($"{name}{i + 1}"), at + new Vector2(side * outward, isFront ? away : -away));
        }
    }
}
