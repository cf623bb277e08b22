using System.Globalization;

namespace PlanForge.Geometry.Fitting;

/// <summary>Takes samples of a curve densely enough for <see cref="ArcFitter"/>.</summary>
internal sealed class CurveSampler(Func<double, CurveSample> curve, double tolerance)
{
    // An interval is halved until its middle lies within this share of the tolerance of the biarc over the whole interval.
    // As errors go with the cube of the length, the halves, which are what is used, are ten times shorter than the final
    // biarcs. Larger would make the fit's steps coarse, smaller would cost evaluations.
    private const double MiddleShare = 0.01;

    // More turn than this between samples, radians, is halved in any case, so that nothing loops unseen.
    private const double GreatestTurn = 0.25;

    // Each stretch between breaks begins as this many intervals, lest a middle lie on the biarc by accident.
    private const int FirstIntervals = 4;

    // Halvings before a curve counts as broken: a millionth of a millionth of the interval.
    private const int GreatestDepth = 40;

    // Directions on both sides of a break are taken this share of the stretch away from it: there a kink shows, and a smooth
    // curve has turned by no more than SmoothTurn, radians.
    private const double SideStep = 1e-9;
    private const double SmoothTurn = 1e-6;

    private readonly List<CurveSample> _samples = [];

    /// <summary>Samples from one parameter to another; at each break two, one for each side.</summary>
    public List<CurveSample> Sample(double from, double to, IReadOnlyList<double> breaks)
    {
        if (!(from < to))
        {
            throw new ArgumentException("A curve's parameters must ascend.", nameof(to));
        }

        var ends = new List<double> { from };
        foreach (var parameter in breaks)
        {
            if (parameter > ends[^1] && parameter < to)
            {
                ends.Add(parameter);
            }
        }

        ends.Add(to);
        for (var i = 0; i + 1 < ends.Count; i++)
        {
            SampleStretch(ends[i], ends[i + 1], i > 0, i + 2 < ends.Count);
        }

        return _samples;
    }

    private void SampleStretch(double from, double to, bool isBreakBefore, bool isBreakAfter)
    {
        var step = (to - from) * SideStep;
        var first = isBreakBefore ? Beside(from, from + step) : At(from);
        var last = isBreakAfter ? Beside(to, to - step) : At(to);
        _samples.Add(first);
        for (var i = 1; i <= FirstIntervals; i++)
        {
            var (start, end) = (from + ((to - from) * (i - 1) / FirstIntervals), from + ((to - from) * i / FirstIntervals));
            Refine(start, _samples[^1], end, i < FirstIntervals ? At(end) : last, 0);
        }
    }

    // Adds samples after the one at the start, up to and including the one at the end.
    private void Refine(double start, CurveSample first, double end, CurveSample last, int depth)
    {
        var middle = start + ((end - start) / 2);
        var between = At(middle);
        if (IsPredicted(first, between, last))
        {
            _samples.Add(between);
            _samples.Add(last);
            return;
        }

        if (depth == GreatestDepth)
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The curve has a corner or a gap at the parameter {middle:R}, which is not among the breaks."));
        }

        Refine(start, first, middle, between, depth + 1);
        Refine(middle, between, end, last, depth + 1);
    }

    private bool IsPredicted(in CurveSample first, in CurveSample middle, in CurveSample last)
    {
        var chord = last.Point - first.Point;
        if (Math.Abs(first.Direction.Cross(last.Direction)) > GreatestTurn
            || chord.Dot(first.Direction) <= 0
            || chord.Dot(last.Direction) <= 0
            || chord.Dot(middle.Direction) <= 0)
        {
            return false;
        }

        // Where the deviation changes its sign in the middle, its slope there tells its size.
        var (distance, slope) = new Biarc(first, last).Deviation(middle);
        return Math.Abs(distance) + (Math.Abs(slope) * chord.Length / 8) <= MiddleShare * tolerance;
    }

    private CurveSample Beside(double parameter, double beside)
    {
        var (at, side) = (At(parameter), At(beside));
        return Math.Abs(at.Direction.Cross(side.Direction)) <= SmoothTurn && at.Direction.Dot(side.Direction) > 0
            ? at
            : at with { Direction = side.Direction };
    }

    private CurveSample At(double parameter)
    {
        var sample = curve(parameter);
        return double.IsFinite(sample.Point.X) && double.IsFinite(sample.Point.Y) && Math.Abs(sample.Direction.LengthSquared - 1) < 1e-6
            ? sample
            : throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The curve has no point, or no unit direction, at the parameter {parameter:R}."));
    }
}
