using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>What the measurements at the building board say, round by round.</summary>
/// <param name="Plan">The pins as planned.</param>
/// <param name="Tolerance">What is still in order.</param>
/// <param name="Rounds">The rounds in the order of the file, at least one; the last one counts.</param>
/// <param name="Findings">Bad readings: errors in the last round, warnings in those before it.</param>
public sealed record BenchResult(
    PinPoints Plan, BenchTolerance Tolerance, ImmutableArray<RoundResult> Rounds, ImmutableArray<Diagnostic> Findings)
{
    /// <summary>The last round.</summary>
    public RoundResult Last => Rounds[^1];

    /// <summary>Works out all rounds.</summary>
    /// <param name="airframe">The airframe as drawn.</param>
    /// <param name="measurements">What was measured, sound in itself.</param>
    public static BenchResult Of(RiggedAirframe airframe, BenchMeasurements measurements)
    {
        ArgumentNullException.ThrowIfNull(airframe);
        ArgumentNullException.ThrowIfNull(measurements);
        var plan = PinPoints.Of(airframe);
        var rounds = ImmutableArray.CreateBuilder<RoundResult>(measurements.Rounds.Length);
        var findings = ImmutableArray.CreateBuilder<Diagnostic>();
        foreach (var round in measurements.Rounds)
        {
            var isLast = ReferenceEquals(round, measurements.Rounds[^1]);
            rounds.Add(RoundResult.Of(airframe, plan, round, measurements.Tolerance, (at, message) =>
                findings.Add(isLast ? Diagnostic.Error(at, message) : Diagnostic.Warning(at, message))));
        }

        return new(plan, measurements.Tolerance, rounds.MoveToImmutable(), findings.ToImmutable());
    }
}

/// <summary>What one round says.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Pose">The fitted pose; 0 where nothing is known.</param>
/// <param name="Estimates">All unknowns, in the order of <see cref="PoseUnknown"/>.</param>
/// <param name="Checks">The errors held against the tolerances; only those that the readings settle.</param>
/// <param name="Correction">What to take off the saddles; null when the readings settle neither incidence nor roll.</param>
/// <param name="Square">How to turn the wing square; null when the readings do not settle the yaw.</param>
public sealed record RoundResult(
    string Name,
    WingPose Pose,
    ImmutableArray<PoseEstimate> Estimates,
    ImmutableArray<BenchCheck> Checks,
    SaddleCorrection? Correction,
    SquareCorrection? Square)
{
    /// <summary>Incidence of the wing's root chord as drawn, radians.</summary>
    public double DrawnIncidence { get; init; }

    /// <summary>What it says of the tailplane, or null.</summary>
    public TailResult? Tail { get; init; }

    /// <summary>What it says of the thrust line, or null.</summary>
    public ThrustResult? Thrust { get; init; }

    /// <summary>True when anything is held against a tolerance.</summary>
    public bool IsSettled => !Checks.IsEmpty || Tail is { Checks.IsEmpty: false } || Thrust is not null;

    /// <summary>True when every error that the readings settle is within its tolerance, and at least one is settled.</summary>
    public bool IsWithin => IsSettled && IsWingWithin && IsTailWithin && Thrust is not { IsWithin: false };

    /// <summary>True when no error of the wing is out of its tolerance.</summary>
    public bool IsWingWithin => Checks.All(check => check.IsWithin);

    /// <summary>True when no error of the tailplane is out of its tolerance.</summary>
    public bool IsTailWithin => Tail is null || Tail.Checks.All(check => check.IsWithin);

    /// <summary>The estimate of an unknown.</summary>
    public PoseEstimate this[PoseUnknown unknown] => Estimates[(int)unknown];

    internal static RoundResult Of(
        RiggedAirframe airframe, PinPoints plan, MeasuringRound round, BenchTolerance tolerance, Action<SourcePosition, string> report)
    {
        var wing = OfWing(airframe, plan, round, tolerance, report);
        return wing with
        {
            DrawnIncidence = airframe.Wing.Incidence,
            Tail = TailResult.Of(airframe, round, wing, tolerance, report),
            Thrust = ThrustResult.Of(airframe, round, tolerance, report),
        };
    }

    private static RoundResult OfWing(
        RiggedAirframe airframe, PinPoints plan, MeasuringRound round, BenchTolerance tolerance, Action<SourcePosition, string> report)
    {
        var marks = BenchMarks.Of(airframe, plan, round);
        var pivot = airframe.Wing.InPlace(Point3.Origin);
        var fit = PoseFit.Of(marks, pivot, round.Resolution, round.Scatter);
        if (!marks.IsEmpty)
        {
            BadReadings.Report(marks, pivot, round, fit, airframe.Text, report);
        }

        var estimates = PoseEstimate.Of(fit, round);
        var pose = fit.Pose;
        return new(
            round.Name,
            pose,
            estimates,
            BenchCheck.Of(plan.Across, plan.Rear.X - plan.Front.X, marks, pivot, pose, estimates, tolerance),
            SaddleCorrection.Of(airframe, pose, estimates),
            estimates[(int)PoseUnknown.Yaw].IsSettled ? SquareCorrection.Of(airframe.Wing, pose.Yaw) : null);
    }
}
