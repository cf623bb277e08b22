using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Bench.Setup;
using PlanForge.Parts.Rigging;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>How the tailplane sits: against its drawing, and against the wing as it was found in the same round.</summary>
/// <param name="Pose">The fitted pose about the drawn root leading edge of the tailplane; 0 where nothing is known.</param>
/// <param name="Estimates">All unknowns, in the order of <see cref="PoseUnknown"/>.</param>
/// <param name="Checks">The errors held against the tolerances; only those that the readings settle.</param>
/// <param name="Seat">What to take off the seat for the drawn angles; null when the readings settle neither incidence nor roll.</param>
/// <param name="Square">How to turn it square; null when the readings do not settle its yaw.</param>
/// <param name="Decalage">Wing incidence less tailplane incidence; null when one of both is not settled.</param>
/// <param name="IsWingTakenSquare">True when lengths start at the wing's tips and nothing tells whether the wing is square.</param>
public sealed record TailResult(
    WingPose Pose,
    ImmutableArray<PoseEstimate> Estimates,
    ImmutableArray<BenchCheck> Checks,
    TailSeat? Seat,
    SquareCorrection? Square,
    DecalageFound? Decalage,
    bool IsWingTakenSquare)
{
    /// <summary>Incidence of its root chord as drawn, radians.</summary>
    public double DrawnIncidence { get; init; }

    internal static TailResult? Of(
        RiggedAirframe airframe, MeasuringRound round, RoundResult wing, BenchTolerance tolerance, Action<SourcePosition, string> report)
    {
        if (round.Tailplane is not { } read)
        {
            return null;
        }

        if (airframe.Description.Tailplane is not { } tail || TailplaneShape.Of(tail) is not { } shape || TailPins.Of(airframe) is not { } pins)
        {
            report(read.At, "the design has no tailplane to measure");
            return null;
        }

        var marks = TailMarks.Of(airframe, shape, pins, round, read, wing);
        var pivot = shape.InPlace(Point3.Origin);
        var fit = PoseFit.Of(marks, pivot, round.Resolution, round.Scatter);
        BadReadings.Report(marks, pivot, round with { At = read.At }, fit, airframe.Text, (at, message) => report(at, "tailplane: " + message));
        var startsAtWing = read.From is null && !read.Cords.IsEmpty;
        var estimates = PoseEstimate.Of(fit, round);
        if (startsAtWing && estimates[(int)PoseUnknown.Yaw].HalfWidth is { } own && wing[PoseUnknown.Yaw].HalfWidth is { } ofWing)
        {
            // The tailplane is square to a wing whose own yaw is known no better than this.
            var share = TailMarks.YawByWing(marks, pivot, fit.Pose, airframe.Wing.InPlace(Point3.Origin), wing.Pose) * ofWing;
            var yaw = (int)PoseUnknown.Yaw;
            estimates = estimates.SetItem(yaw, estimates[yaw] with { HalfWidth = Math.Sqrt((own * own) + (share * share)) });
        }

        return new(
            fit.Pose,
            estimates,
            BenchCheck.Of(pins.Front.Y, pins.Over, marks, pivot, fit.Pose, estimates, tolerance),
            TailSeat.Of(airframe, shape, estimates, againstWing: 0),
            estimates[(int)PoseUnknown.Yaw].IsSettled ? SquareCorrection.Of(shape, fit.Pose.Yaw) : null,
            DecalageFound.Of(airframe, shape, wing, estimates),
            startsAtWing && !wing[PoseUnknown.Yaw].IsSettled)
        {
            DrawnIncidence = shape.Incidence,
        };
    }
}

/// <summary>The decalage that wing and tailplane really have: incidence of the wing less that of the tailplane.</summary>
/// <remarks>Both are read from the same board in the same round: a body that does not lie level does not enter it.</remarks>
/// <param name="Drawn">As drawn, radians.</param>
/// <param name="Value">As found, radians.</param>
/// <param name="HalfWidth">Half the width of its 95 % interval, radians.</param>
/// <param name="Seat">The tailplane's seat corrected for the drawn decalage, the wing left as it is.</param>
public sealed record DecalageFound(double Drawn, double Value, double HalfWidth, TailSeat Seat)
{
    /// <summary>How far it is off, radians.</summary>
    public double Error => Value - Drawn;

    internal static DecalageFound? Of(RiggedAirframe airframe, WingShape tail, RoundResult wing, ImmutableArray<PoseEstimate> estimates)
    {
        var (ofWing, ofTail) = (wing[PoseUnknown.Incidence], estimates[(int)PoseUnknown.Incidence]);
        if (ofWing.HalfWidth is not { } wingHalf || ofTail.HalfWidth is not { } tailHalf)
        {
            return null;
        }

        var drawn = airframe.Wing.Incidence - tail.Incidence;
        return new(
            drawn,
            drawn + ofWing.Value - ofTail.Value,
            Math.Sqrt((wingHalf * wingHalf) + (tailHalf * tailHalf)),
            TailSeat.Of(airframe, tail, estimates, ofWing.Value)!);
    }
}
