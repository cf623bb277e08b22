using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>An error of the wing's seat as it shows at pins and cords, held against its tolerance.</summary>
/// <param name="Kind">What is held against what.</param>
/// <param name="Value">The error, mm.</param>
/// <param name="HalfWidth">Half the width of its 95 % interval, mm.</param>
/// <param name="Tolerance">The greatest error that is in order, mm.</param>
public readonly record struct BenchCheck(CheckKind Kind, double Value, double HalfWidth, double Tolerance)
{
    // A quarter read on a rule of quarters is within a quarter: angles turned into lengths miss it by less than this share.
    private const double Slack = 1e-3;

    /// <summary>True when the error as measured is within the tolerance.</summary>
    public bool IsWithin => Math.Abs(Value) <= Tolerance * (1 + Slack);

    /// <summary>True when the uncertainty of the readings does not reach over the limit of the tolerance.</summary>
    public bool IsSure => Math.Abs(Math.Abs(Value) - Tolerance) > HalfWidth;

    // Every error grows with one unknown alone: all but in proportion, so the same factor serves value and uncertainty.
    internal static ImmutableArray<BenchCheck> Of(
        double across,
        double chord,
        ImmutableArray<BenchMark> marks,
        Point3 pivot,
        WingPose pose,
        ImmutableArray<PoseEstimate> estimates,
        BenchTolerance tolerance)
    {
        var checks = ImmutableArray.CreateBuilder<BenchCheck>();
        Add(CheckKind.Across, PoseUnknown.Roll, 2 * across, tolerance.Across);
        Add(CheckKind.Rise, PoseUnknown.Incidence, chord, tolerance.Rise);
        Add(CheckKind.RiseAcross, PoseUnknown.Warp, 2 * chord, tolerance.Rise);
        if (estimates[(int)PoseUnknown.Yaw].IsSettled)
        {
            var apart = 0.0;
            foreach (var mark in marks)
            {
                if (mark is CordMark)
                {
                    apart += mark.Rate(PoseUnknown.Yaw, default, pivot) * (mark.Hand == Hand.Starboard ? 1 : -1);
                }
            }

            Add(CheckKind.Square, PoseUnknown.Yaw, apart, tolerance.Square);
        }

        return checks.ToImmutable();

        void Add(CheckKind kind, PoseUnknown unknown, double lever, double limit)
        {
            if (estimates[(int)unknown].HalfWidth is { } half)
            {
                checks.Add(new(kind, lever * pose[unknown], Math.Abs(lever) * half, limit));
            }
        }
    }
}

/// <summary>What is held against what.</summary>
public enum CheckKind
{
    /// <summary>Right (starboard) pins over left (port) ones.</summary>
    Across,

    /// <summary>Front pins over rear ones, against the drawn rise.</summary>
    Rise,

    /// <summary>Rise on the right (starboard) over rise on the left (port): the wing is warped.</summary>
    RiseAcross,

    /// <summary>Cord to the right (starboard) tip over cord to the left (port) one.</summary>
    Square,
}
