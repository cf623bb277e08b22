using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Bench.Setup;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>The lengths read at the tailplane with the places on the drawn tailplane that they were taken to.</summary>
internal static class TailMarks
{
    /// <summary>Pins, then lengths to the tips.</summary>
    /// <param name="airframe">The airframe as drawn.</param>
    /// <param name="tail">Its tailplane.</param>
    /// <param name="pins">The pins as planned.</param>
    /// <param name="round">The round.</param>
    /// <param name="read">What was read at the tailplane.</param>
    /// <param name="wing">What the round says of the wing: lengths may start at its tips, where they were found.</param>
    public static ImmutableArray<BenchMark> Of(
        RiggedAirframe airframe, WingShape tail, TailPins pins, MeasuringRound round, TailReadings read, RoundResult wing)
    {
        var marks = ImmutableArray.CreateBuilder<BenchMark>();
        BenchMarks.AddPins(marks, "tailplane's ", tail, pins.Front.Y, BenchMarks.BoardOf(PinPoints.Of(airframe), round), read.Pins);
        var end = EdgeOf(ArrangedWing.Of(tail).Tip, read.TipEdge);
        var wingTip = EdgeOf(ArrangedWing.Of(airframe.Wing).Tip, round.TipEdge);
        foreach (var cord in read.Cords)
        {
            var from = read.From is { } start
                ? new Point3(start.Station, 0, start.Height)
                : wing.Pose.Moved(airframe.Wing.InPlace(Point3.Origin), BenchMarks.On(cord.Hand, wingTip), cord.Hand);
            var name = $"length to the tailplane's tip, {BenchMarks.NameOf(cord.Hand)}";
            marks.Add(new CordMark(name, from, BenchMarks.On(cord.Hand, end), cord.Hand, cord.Lengths));
        }

        return marks.ToImmutable();
    }

    /// <summary>How much the tailplane's yaw follows the wing's, where both lengths start at the wing's tips.</summary>
    public static double YawByWing(ImmutableArray<BenchMark> marks, Point3 pivot, WingPose pose, Point3 wingPivot, WingPose wing)
    {
        double byWing = 0, byTail = 0;
        foreach (var mark in marks)
        {
            if (mark is CordMark cord)
            {
                var side = cord.Hand == Hand.Starboard ? 1 : -1;
                var along = (pose.Moved(pivot, cord.Point, cord.Hand) - cord.From).Unit();
                byWing += side * along.Dot(new Vector3(0, 0, 1).Cross(cord.From - (wingPivot + new Vector3(wing.Aft, 0, wing.Height))));
                byTail += side * cord.Rate(PoseUnknown.Yaw, pose, pivot);
            }
        }

        return byTail == 0 ? 0 : byWing / byTail;
    }

    private static Point3 EdgeOf(WingChord tip, WingEdge edge) => edge == WingEdge.Front ? tip.Leading : tip.Trailing;
}
