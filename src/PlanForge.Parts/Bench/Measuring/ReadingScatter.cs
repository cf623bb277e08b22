using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>How the readings of a round scatter about a fit, heights and cords apart: they are read by other means.</summary>
internal sealed class ReadingScatter
{
    // Fewer readings to spare say next to nothing of their scatter: one pin read twice would widen every interval sixfold.
    private const int LeastFreedom = 3;

    private readonly ImmutableArray<BenchMark> _marks;
    private readonly double[] _leverages;
    private readonly double _stepVariance;
    private readonly double? _known;
    private readonly Pool _heights;
    private readonly Pool _cords;

    private ReadingScatter(
        ImmutableArray<BenchMark> marks, double[] leverages, ImmutableArray<double> fitted, double resolution, double? known)
    {
        (_marks, _leverages, Fitted, _known) = (marks, leverages, fitted, known);
        (_stepVariance, Resolution) = (StepVariance(resolution), resolution);
        _heights = PoolOf(marks, leverages, fitted, isCord: false);
        _cords = PoolOf(marks, leverages, fitted, isCord: true);
    }

    /// <summary>The length that the fit gives each mark, mm.</summary>
    public ImmutableArray<double> Fitted { get; }

    /// <summary>Step of the rule, mm.</summary>
    public double Resolution { get; }

    /// <summary>Variance that the step of a rule gives one reading, mm²: JCGM 100:2008 (GUM), 4.3.7 (from memory).</summary>
    public static double StepVariance(double resolution) => resolution * resolution / 12;

    /// <summary>Collects the scatter.</summary>
    /// <param name="marks">The marks.</param>
    /// <param name="pivot">The drawn root leading edge.</param>
    /// <param name="pose">The fitted pose.</param>
    /// <param name="leverages">How much each fitted length follows its own mean.</param>
    /// <param name="resolution">Step of the rule, mm.</param>
    /// <param name="known">Standard deviation of one reading besides, mm; null when it is not known.</param>
    public static ReadingScatter Of(
        ImmutableArray<BenchMark> marks, Point3 pivot, WingPose pose, double[] leverages, double resolution, double? known) =>
        new(marks, leverages, [.. marks.Select(mark => mark.Length(pose, pivot))], resolution, known);

    /// <summary>Half the 95 % interval of what follows the means of the marks by these gains.</summary>
    /// <param name="gains">How much it follows the mean of each mark.</param>
    /// <param name="hasBoard">True when it also follows one reading of the board's height, by 1.</param>
    public double HalfWidth(double[] gains, bool hasBoard)
    {
        var sum = default(Variances);
        for (var i = 0; i < gains.Length; i++)
        {
            sum += Of(_marks[i] is CordMark ? _cords : _heights, gains[i], _marks[i].Readings.Length, _marks[i] is CordMark);
        }

        sum += hasBoard ? Of(_heights, 1, 1, false) : default;
        var total = sum.Sure + sum.Heights + sum.Cords;
        var spread = Share(sum.Heights, _heights.Freedom) + Share(sum.Cords, _cords.Freedom);
        const double AllOutside = 0.05;
        var factor = spread > 0 ? StudentT.Factor(total * total / spread, AllOutside) : StudentT.Normal95;
        return Math.Max(factor * Math.Sqrt(total), StudentT.Normal95 * Math.Sqrt(sum.Step));

        static double Share(double variance, double freedom) => freedom > 0 ? variance * variance / freedom : 0;
    }

    // What a mean of some readings adds to the variance of what follows it by a gain.
    private Variances Of(Pool pool, double gain, int count, bool isCord)
    {
        var square = gain * gain;
        var step = square * _stepVariance;
        if (_known is { } known)
        {
            return new(step, square * (_stepVariance + (known * known / count)), 0, 0);
        }

        var pooled = square * pool.Variance / count;
        return pool.Freedom < LeastFreedom ? new(step, step, 0, 0) : isCord ? new(step, 0, 0, pooled) : new(step, 0, pooled, 0);
    }

    /// <summary>The reading farthest off the others, where it is off by more than four standard deviations; else null.</summary>
    /// <remarks>
    /// Off means: by its residual over the standard deviation that all other readings show (externally studentised), and four means:
    /// as unlikely as four of a normal distribution, for few readings tell less of their scatter.
    /// </remarks>
    public (int Mark, int Reading, double Off)? Farthest()
    {
        const double FourSigmaOutside = 6.334e-5;
        (int, int, double)? farthest = null;
        var greatest = 1.0;
        for (var i = 0; i < _marks.Length; i++)
        {
            var pool = _marks[i] is CordMark ? _cords : _heights;
            var free = 1 - (_leverages[i] / _marks[i].Readings.Length);
            if (pool.Freedom == 0 || free < 1e-6)
            {
                continue;
            }

            for (var r = 0; r < _marks[i].Readings.Length; r++)
            {
                var off = _marks[i].Readings[r].Value - Fitted[i];
                var (sigma, factor) = Against(pool, off * off / free, FourSigmaOutside);
                var ratio = Math.Abs(off) / (sigma * Math.Sqrt(free) * factor);
                if (ratio > greatest)
                {
                    (greatest, farthest) = (ratio, (i, r, off));
                }
            }
        }

        return farthest;
    }

    // Where the others say nothing of their scatter, one step of the rule is taken for it.
    private (double Sigma, double Factor) Against(Pool pool, double ownShare, double outside)
    {
        const double Four = 4;
        if (_known is { } known)
        {
            return (Math.Sqrt(_stepVariance + (known * known)), Four);
        }

        var freedom = pool.Freedom - 1;
        if (freedom < LeastFreedom)
        {
            return (Resolution, Four);
        }

        var others = Math.Max(0, ((pool.Variance * pool.Freedom) - ownShare) / freedom);
        return (Math.Sqrt(Math.Max(others, _stepVariance)), StudentT.Factor(freedom, outside));
    }

    private static Pool PoolOf(ImmutableArray<BenchMark> marks, double[] leverages, ImmutableArray<double> fitted, bool isCord)
    {
        double count = 0, used = 0, squares = 0;
        for (var i = 0; i < marks.Length; i++)
        {
            if (marks[i] is CordMark != isCord)
            {
                continue;
            }

            count += marks[i].Readings.Length;
            used += leverages[i];
            foreach (var reading in marks[i].Readings)
            {
                squares += (reading.Value - fitted[i]) * (reading.Value - fitted[i]);
            }
        }

        // The leverages of a kind add up to the number of unknowns that it settles.
        var freedom = (int)Math.Round(count - used);
        return new(freedom, freedom > 0 ? squares / freedom : 0);
    }

    /// <summary>Parts of a variance, mm²: that of the step alone; the rest by where it is known from.</summary>
    private readonly record struct Variances(double Step, double Sure, double Heights, double Cords)
    {
        public static Variances operator +(Variances a, Variances b) => new(a.Step + b.Step, a.Sure + b.Sure, a.Heights + b.Heights, a.Cords + b.Cords);
    }

    /// <summary>Pooled variance of one reading, mm², and its degrees of freedom.</summary>
    private readonly record struct Pool(int Freedom, double Variance);
}
