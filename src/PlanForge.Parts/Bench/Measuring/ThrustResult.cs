using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.Parts.Bench.Setup;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>Where the motor's shaft points, and the washers that turn it to where it should.</summary>
/// <param name="Down">Down-thrust; null when it was not read.</param>
/// <param name="Right">Side-thrust to starboard; null when it was not read.</param>
/// <param name="Washers">The washers at the four bolts; null when the description does not say where they are.</param>
public sealed record ThrustResult(ThrustAngle? Down, ThrustAngle? Right, WasherChange? Washers)
{
    /// <summary>True when all that was read is within its tolerance.</summary>
    public bool IsWithin => Down is not { IsWithin: false } && Right is not { IsWithin: false };

    internal static ThrustResult? Of(RiggedAirframe airframe, MeasuringRound round, BenchTolerance tolerance, Action<SourcePosition, string> report)
    {
        if (round.Thrust is not { } read)
        {
            return null;
        }

        if (airframe.Description.ThrustLine is not { } line)
        {
            report(read.At, "the design has no `thrust_line` to hold these readings against");
            return null;
        }

        var down = AngleOf(read.Down, read.Over, line.Down, round, tolerance, airframe.Text, report);
        var right = AngleOf(read.Right, read.Over, line.Right, round, tolerance, airframe.Text, report);
        return new(down, right, line.Mount is { } mount ? WasherChange.Of(line, mount, down, right) : null);
    }

    private static ThrustAngle? AngleOf(
        ImmutableArray<MeasuredLength> rises,
        double over,
        double drawn,
        MeasuringRound round,
        BenchTolerance tolerance,
        MeasureText text,
        Action<SourcePosition, string> report)
    {
        // No motor is set so far off its drawing (common practice, no source).
        const double Far = 10 * Math.PI / 180;
        if (rises.IsEmpty)
        {
            return null;
        }

        var mean = MeanReading.Of(rises, round.Resolution, round.Scatter);
        var found = Math.Atan2(mean.Value, over);
        if (Math.Abs(found - drawn) > Far)
        {
            report(rises[0].At, $"{text.FineWithUnit(mean.Value)} over {text.CoarseWithUnit(over)} is {MeasureText.Angle(found)}, and {MeasureText.Angle(drawn)} is drawn: "
                + "was one of both lengths read in another unit?");
        }

        // d(atan(r/l)) = l dr / (l² + r²).
        var half = mean.HalfWidth * over / ((over * over) + (mean.Value * mean.Value));
        return new(drawn, found, half, tolerance.Thrust);
    }
}

/// <summary>An angle of the shaft.</summary>
/// <param name="Drawn">As drawn, radians.</param>
/// <param name="Value">As found, radians.</param>
/// <param name="HalfWidth">Half the width of its 95 % interval, radians.</param>
/// <param name="Tolerance">How far off it may be, radians.</param>
public readonly record struct ThrustAngle(double Drawn, double Value, double HalfWidth, double Tolerance)
{
    /// <summary>How far it is off, radians.</summary>
    public double Error => Value - Drawn;

    /// <summary>True when the error as measured is within the tolerance.</summary>
    public bool IsWithin => Math.Abs(Error) <= Tolerance;

    /// <summary>True when the uncertainty of the readings does not reach over the limit of the tolerance.</summary>
    public bool IsSure => Math.Abs(Math.Abs(Error) - Tolerance) > HalfWidth;
}

/// <summary>Washers at the four bolts of the mount.</summary>
/// <param name="Bolts">Upper port, upper starboard, lower port, lower starboard.</param>
public sealed record WasherChange(ImmutableArray<BoltWashers> Bolts)
{
    // The plan's washers stand under the mount. What lacks is laid over them; washers common to all four turn nothing and go.
    internal static WasherChange Of(ThrustLineDescription line, MountDescription mount, ThrustAngle? down, ThrustAngle? right)
    {
        var planned = ThrustWashers.Of(line, mount).Named;
        var more = ThrustWashers.Of(line with { Down = Lacking(down), Right = Lacking(right) }, mount).Named;
        var least = planned.Zip(more, (a, b) => a.Thickness + b.Thickness).Min();
        return new([.. planned.Zip(more, (a, b) => new BoltWashers(a.Name, a.Thickness, b.Thickness, a.Thickness + b.Thickness - least))]);

        // Slopes of the mount add up, angles only nearly.
        static double Lacking(ThrustAngle? angle) => angle is { } it ? Math.Atan(Math.Tan(it.Drawn) - Math.Tan(it.Value)) : 0;
    }
}

/// <summary>Washers at a bolt, mm.</summary>
/// <param name="Bolt">Which bolt, such as <c>upper port</c>.</param>
/// <param name="Planned">Thickness by the plan.</param>
/// <param name="More">What to add to what is there.</param>
/// <param name="InAll">The whole thickness then, what all four have in common left out; for a mount that has the planned ones.</param>
public readonly record struct BoltWashers(string Bolt, double Planned, double More, double InAll);

/// <summary>The mean of some readings of one length.</summary>
/// <param name="Value">The mean, mm.</param>
/// <param name="HalfWidth">Half the width of its 95 % interval, mm.</param>
internal readonly record struct MeanReading(double Value, double HalfWidth)
{
    // Fewer readings to spare say next to nothing of their scatter: see ReadingScatter.
    private const int LeastFreedom = 3;

    /// <summary>By the rules of <see cref="PoseFit"/>: a rule's step is common to all readings and does not average out.</summary>
    /// <param name="readings">The readings, at least one.</param>
    /// <param name="resolution">Step of the rule, mm.</param>
    /// <param name="scatter">Standard deviation of one reading besides, mm; null when it is not known.</param>
    public static MeanReading Of(ImmutableArray<MeasuredLength> readings, double resolution, double? scatter)
    {
        var mean = readings.Average(reading => reading.Value);
        var (step, count) = (ReadingScatter.StepVariance(resolution), readings.Length);
        var least = StudentT.Normal95 * Math.Sqrt(step);
        if (scatter is { } known)
        {
            return new(mean, StudentT.Normal95 * Math.Sqrt(step + (known * known / count)));
        }

        if (count - 1 < LeastFreedom)
        {
            return new(mean, least);
        }

        const double AllOutside = 0.05;
        var variance = readings.Sum(reading => (reading.Value - mean) * (reading.Value - mean)) / (count - 1);
        return new(mean, Math.Max(least, StudentT.Factor(count - 1, AllOutside) * Math.Sqrt(variance / count)));
    }
}
