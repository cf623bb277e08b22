using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>The pose that fits the readings of a round best, with what is known of its uncertainty.</summary>
/// <remarks>
/// Weighted least squares about the exact rigid motion (Gauss and Newton's steps). What the readings leave open is found as the null
/// space of the scaled normal matrix and stays 0. Uncertainty: the law of propagation of uncertainty, a rule's step as a rectangular
/// distribution (step²/12), repeated readings (three or more to spare) by their pooled scatter, effective degrees of freedom after
/// Welch and Satterthwaite: JCGM 100:2008 (GUM), 5.1.2, 4.3.7, 4.2 and G.4 (from memory). The step is common to all readings of one length and does not
/// average out, so no interval is narrower than the step alone makes it.
/// </remarks>
internal sealed class PoseFit
{
    // Eigenvalues of a matrix with 1 on its diagonal: below this an unknown moves no reading by a thousandth of what others do.
    private const double NullEigenvalue = 1e-10;

    private readonly double[,] _gain;
    private readonly ImmutableArray<PoseUnknown> _sought;

    private PoseFit(ReadingScatter scatter, WingPose pose, ImmutableArray<PoseUnknown> sought, double[,] gain, ImmutableArray<bool> isOpen)
    {
        (Scatter, Pose, _sought, _gain) = (scatter, pose, sought, gain);
        var half = ImmutableArray.CreateBuilder<double?>(WingPose.Count);
        for (var unknown = 0; unknown < WingPose.Count; unknown++)
        {
            var index = sought.IndexOf((PoseUnknown)unknown);
            half.Add(index < 0 || isOpen[index] ? null : Useful((PoseUnknown)unknown, scatter.HalfWidth(Row(index), hasBoard: false)));
        }

        HalfWidths = half.MoveToImmutable();
    }

    /// <summary>The pose; 0 where nothing is known.</summary>
    public WingPose Pose { get; }

    /// <summary>Half the width of the 95 % interval of each unknown, by its number; null where the readings leave it open.</summary>
    public ImmutableArray<double?> HalfWidths { get; }

    /// <summary>The same of the height, one reading of the board's own height taken into account; the height must be settled.</summary>
    public double HeightWithBoard => Scatter.HalfWidth(Row(_sought.IndexOf(PoseUnknown.Height)), hasBoard: true);

    /// <summary>What the readings scatter about the fit.</summary>
    public ReadingScatter Scatter { get; }

    /// <summary>Fits a pose.</summary>
    /// <param name="marks">The lengths, at least one.</param>
    /// <param name="pivot">The drawn root leading edge.</param>
    /// <param name="resolution">Step of the rule, mm.</param>
    /// <param name="scatter">Standard deviation of one reading besides, mm; null when it is not known.</param>
    public static PoseFit Of(ImmutableArray<BenchMark> marks, Point3 pivot, double resolution, double? scatter) =>
        Of(marks, pivot, resolution, scatter, SoughtBy(marks));

    /// <summary>Fits the pose of a wing that is taken to have no warp.</summary>
    /// <param name="marks">The lengths, at least one.</param>
    /// <param name="pivot">The drawn root leading edge.</param>
    /// <param name="resolution">Step of the rule, mm.</param>
    /// <param name="scatter">Standard deviation of one reading besides, mm; null when it is not known.</param>
    public static PoseFit OfTrueWing(ImmutableArray<BenchMark> marks, Point3 pivot, double resolution, double? scatter) =>
        Of(marks, pivot, resolution, scatter, SoughtBy(marks).Remove(PoseUnknown.Warp));

    private static PoseFit Of(
        ImmutableArray<BenchMark> marks, Point3 pivot, double resolution, double? scatter, ImmutableArray<PoseUnknown> sought)
    {
        const int StepCount = 5;
        var weights = WeightsOf(marks, resolution, scatter);
        WingPose pose = default;
        Step step = default;
        for (var i = 0; i < StepCount; i++)
        {
            step = Step.At(marks, pivot, pose, sought, weights);
            for (var j = 0; j < sought.Length; j++)
            {
                pose = pose.Plus(sought[j], step.Change[j]);
            }
        }

        return new(ReadingScatter.Of(marks, pivot, pose, step.Leverages, resolution, scatter), pose, sought, step.Gain, step.IsOpen);
    }

    // Warp is told from seating by four pins alone; without them the wing is taken to be true.
    private static ImmutableArray<PoseUnknown> SoughtBy(ImmutableArray<BenchMark> marks)
    {
        int pins = 0, heights = 0, cords = 0;
        foreach (var mark in marks)
        {
            pins += mark is HeightMark { IsPin: true } ? 1 : 0;
            heights += mark is HeightMark ? 1 : 0;
            cords += mark is CordMark ? 1 : 0;
        }

        var sought = ImmutableArray.CreateBuilder<PoseUnknown>();
        if (heights > 0)
        {
            sought.AddRange(PoseUnknown.Incidence, PoseUnknown.Roll, PoseUnknown.Height);
        }

        if (pins == 4)
        {
            sought.Add(PoseUnknown.Warp);
        }

        if (cords > 0)
        {
            sought.AddRange(PoseUnknown.Yaw, PoseUnknown.Aft);
        }

        return sought.ToImmutable();
    }

    private static double[] WeightsOf(ImmutableArray<BenchMark> marks, double resolution, double? scatter)
    {
        var weights = new double[marks.Length];
        for (var i = 0; i < weights.Length; i++)
        {
            var count = marks[i].Readings.Length;
            var step = ReadingScatter.StepVariance(resolution);
            weights[i] = scatter is { } known ? 1 / (step + (known * known / count)) : count / step;
        }

        return weights;
    }

    // Front pins alone stand nearly in a line: they settle the incidence in theory and leave it open at the bench.
    private static double? Useful(PoseUnknown unknown, double halfWidth)
    {
        const double GreatestAngle = 0.05, GreatestLength = 20;
        return halfWidth <= (unknown.IsLength() ? GreatestLength : GreatestAngle) ? halfWidth : null;
    }

    private double[] Row(int index)
    {
        var row = new double[_gain.GetLength(1)];
        for (var i = 0; i < row.Length; i++)
        {
            row[i] = _gain[index, i];
        }

        return row;
    }

    /// <summary>One step of the fit.</summary>
    /// <param name="Change">By how much each sought unknown changes.</param>
    /// <param name="Gain">How much each sought unknown (row) follows the mean of each mark (column).</param>
    /// <param name="IsOpen">True for a sought unknown that the marks leave open.</param>
    /// <param name="Leverages">How much each fitted length follows its own mean: 0 to 1.</param>
    private readonly record struct Step(double[] Change, double[,] Gain, ImmutableArray<bool> IsOpen, double[] Leverages)
    {
        public static Step At(
            ImmutableArray<BenchMark> marks, Point3 pivot, WingPose pose, ImmutableArray<PoseUnknown> sought, double[] weights)
        {
            var (count, size) = (marks.Length, sought.Length);
            var rates = new double[count, size];
            var scale = new double[size];
            for (var j = 0; j < size; j++)
            {
                for (var i = 0; i < count; i++)
                {
                    rates[i, j] = marks[i].Rate(sought[j], pose, pivot);
                    scale[j] += weights[i] * rates[i, j] * rates[i, j];
                }

                scale[j] = scale[j] > 0 ? 1 / Math.Sqrt(scale[j]) : 1;
            }

            var normal = new double[size, size];
            for (var j = 0; j < size; j++)
            {
                for (var k = 0; k < size; k++)
                {
                    for (var i = 0; i < count; i++)
                    {
                        normal[j, k] += weights[i] * rates[i, j] * rates[i, k] * scale[j] * scale[k];
                    }
                }
            }

            var eigen = SymmetricEigen.Of(normal);
            return Solved(marks, pivot, pose, weights, rates, scale, eigen);
        }

        private static Step Solved(
            ImmutableArray<BenchMark> marks, Point3 pivot, WingPose pose, double[] weights, double[,] rates, double[] scale, SymmetricEigen eigen)
        {
            const double Visible = 1e-6;
            var (count, size) = (marks.Length, scale.Length);
            var gain = new double[size, count];
            var isOpen = new bool[size];
            for (var e = 0; e < size; e++)
            {
                if (eigen.Values[e] < NullEigenvalue)
                {
                    for (var j = 0; j < size; j++)
                    {
                        isOpen[j] |= Math.Abs(eigen.Vectors[j, e]) > Visible;
                    }

                    continue;
                }

                for (var i = 0; i < count; i++)
                {
                    var along = 0.0;
                    for (var k = 0; k < size; k++)
                    {
                        along += eigen.Vectors[k, e] * scale[k] * rates[i, k];
                    }

                    for (var j = 0; j < size; j++)
                    {
                        gain[j, i] += scale[j] * eigen.Vectors[j, e] * along * weights[i] / eigen.Values[e];
                    }
                }
            }

            var (change, leverages) = (new double[size], new double[count]);
            for (var i = 0; i < count; i++)
            {
                var off = marks[i].Mean - marks[i].Length(pose, pivot);
                for (var j = 0; j < size; j++)
                {
                    change[j] += gain[j, i] * off;
                    leverages[i] += rates[i, j] * gain[j, i];
                }
            }

            return new(change, gain, [.. isOpen], leverages);
        }
    }
}
