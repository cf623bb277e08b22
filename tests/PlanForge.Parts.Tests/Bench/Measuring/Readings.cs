using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Parts.Tests.Bench.Measuring;

/// <summary>Short ways to put readings together. Heights are written down by hand, not taken from the code under test.</summary>
internal static class Readings
{
    public static readonly BenchTolerance Usual = new(0.25, 0.1, 1);

    /// <summary>Front port, front starboard, rear port, rear starboard; NaN leaves a pin out.</summary>
    public static ImmutableArray<PinHeight> Pins(double frontPort, double frontStarboard, double rearPort, double rearStarboard, double? across = null) =>
    [
        .. new[]
        {
            Pin(WingEdge.Front, Hand.Port, across, frontPort),
            Pin(WingEdge.Front, Hand.Starboard, across, frontStarboard),
            Pin(WingEdge.Rear, Hand.Port, across, rearPort),
            Pin(WingEdge.Rear, Hand.Starboard, across, rearStarboard),
        }.Where(pin => !double.IsNaN(pin.Heights[0].Value)),
    ];

    public static PinHeight Pin(WingEdge edge, Hand hand, double? across, params ImmutableArray<double> heights) =>
        new(edge, hand, across, Lengths(heights));

    public static TipReading Tip(Hand hand, params ImmutableArray<double> lengths) => new(hand, Lengths(lengths));

    public static MeasuringRound Round(ImmutableArray<PinHeight> pins, double? board = null) =>
        new("test", pins, [], WingEdge.Front, null, [], board is { } height ? new(BoardKnowledge.Measured, height) : default, 0.25, null, Build.Nowhere);

    public static BenchResult Result(RiggedAirframe airframe, params ImmutableArray<MeasuringRound> rounds) =>
        BenchResult.Of(airframe, new(null, Build.Nowhere, Usual, rounds));

    /// <summary>A pose with the root leading edge moved to where the board's readings are taken from: for exact inverse tests.</summary>
    public static MeasuringRound Exactly(RiggedAirframe airframe, WingPose pose, double board, CordStart cord)
    {
        var plan = Parts.Bench.PinPoints.Of(airframe);
        var pivot = airframe.Wing.InPlace(Point3.Origin);
        double Height(Point3 point, Hand hand) => pose.Moved(pivot, Side(point, hand), hand).Z + board;
        var tip = Parts.Arrangement.ArrangedWing.Of(airframe.Wing).Tip.Leading;
        double Cord(Hand hand) => new Point3(cord.Station, 0, cord.Height).DistanceTo(pose.Moved(pivot, Side(tip, hand), hand));
        return Round(
            Pins(Height(plan.Front, Hand.Port), Height(plan.Front, Hand.Starboard), Height(plan.Rear, Hand.Port), Height(plan.Rear, Hand.Starboard)),
            board) with
        {
            Cord = cord,
            Cords = [Tip(Hand.Port, Cord(Hand.Port)), Tip(Hand.Starboard, Cord(Hand.Starboard))],
        };
    }

    public static string Text(this Diagnostic finding) => finding.Message;

    private static Point3 Side(Point3 point, Hand hand) => hand == Hand.Starboard ? point : point with { Y = -point.Y };

    private static ImmutableArray<MeasuredLength> Lengths(ImmutableArray<double> values) => [.. values.Select(value => new MeasuredLength(value, Build.Nowhere))];
}
