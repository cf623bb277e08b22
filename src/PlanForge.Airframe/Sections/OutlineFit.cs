using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>
/// Fits the curve through the listed points of an outline. It passes through every one with continuous curvature, except at the
/// ends of straight runs, where only its direction is continuous: a straight run stays straight.
/// </summary>
internal sealed class OutlineFit
{
    private readonly double[] _knots;
    private readonly double[] _heights;
    private readonly double[] _slopes;
    private readonly Cubic[] _pieces;

    private OutlineFit(ReadOnlySpan<Point2> outline, int foremost, NoseFit nose)
    {
        _knots = new double[outline.Length];
        _heights = new double[outline.Length];
        _slopes = new double[outline.Length];
        _pieces = new Cubic[outline.Length - 1];
        for (var i = 0; i < outline.Length; i++)
        {
            _knots[i] = i == foremost ? nose.Along : Math.CopySign(Math.Sqrt(outline[i].X - nose.X), i - foremost);
            _heights[i] = outline[i].Y;
        }
    }

    /// <summary>The curve through an outline.</summary>
    /// <param name="outline">
    /// From the lower trailing edge by way of the nose to the upper; x falls strictly to the foremost point and grows strictly
    /// from there (the foremost two may share their x).
    /// </param>
    /// <param name="foremost">Index of the foremost point; of two, either. At least three points lie on either side of it.</param>
    public static OutlineCurve Through(ReadOnlySpan<Point2> outline, int foremost)
    {
        var runs = StraightRun.Find(outline, 0, foremost);
        runs.AddRange(StraightRun.Find(outline, foremost, outline.Length - 1));
        var sharp = runs.Exists(run => run.First == foremost || run.Last == foremost);
        var nose = sharp ? NoseFit.AtListedPoint(outline[foremost]) : NoseFit.Of(outline, foremost);
        var fit = new OutlineFit(outline, foremost, nose);
        fit.FitAround(runs);
        return new(nose.X, fit._knots, fit._pieces, fit.BreaksAt(runs));
    }

    // Before, between and behind the runs lie curved stretches, tangent to the runs they touch; none where two runs meet.
    private void FitAround(List<StraightRun> runs)
    {
        var at = 0;
        double? leaving = null;
        foreach (var run in runs)
        {
            double start = 2 * _knots[run.First] * run.Slope, end = 2 * _knots[run.Last] * run.Slope;
            FitStretch(at, run.First, leaving, TangentTo(start, run.First));
            FitStretch(run.First, run.Last, start, end);
            leaving = TangentTo(end, run.Last);
            at = run.Last;
        }

        FitStretch(at, _knots.Length - 1, leaving, null);
    }

    // dy/ds is 0 wherever a straight line meets a sharp nose, which says nothing about the other surface.
    private double? TangentTo(double slope, int knot) => _knots[knot] == 0 ? null : slope;

    private void FitStretch(int first, int last, double? start, double? end)
    {
        if (first == last)
        {
            return;
        }

        Solve(first, last, start, end);
        var tamedStart = start is null && first == 0 ? Tail.Tamed(_knots, _heights, _slopes, 0, 1, last) : null;
        var tamedEnd = end is null && last == _pieces.Length ? Tail.Tamed(_knots, _heights, _slopes, last, -1, last - first) : null;
        if (tamedStart is not null || tamedEnd is not null)
        {
            Solve(first, last, start ?? tamedStart, end ?? tamedEnd);
        }

        for (var i = first; i < last; i++)
        {
            _pieces[i] = Cubic.Between(_knots[i + 1] - _knots[i], _heights[i], _slopes[i], _heights[i + 1], _slopes[i + 1]);
        }
    }

    // The slope at a joint of two stretches differs by side only at a corner; the pieces of a stretch are made before the next
    // one is solved.
    private void Solve(int first, int last, double? start, double? end)
    {
        var count = last - first + 1;
        SmoothSlopes.Find(
            _knots.AsSpan(first, count), _heights.AsSpan(first, count), start, end, _slopes.AsSpan(first, count));
    }

    private List<double> BreaksAt(List<StraightRun> runs)
    {
        var breaks = new List<double>();
        foreach (var run in runs)
        {
            foreach (var knot in (ReadOnlySpan<int>)[run.First, run.Last])
            {
                var s = _knots[knot];
                if (knot > 0 && knot < _pieces.Length && s != 0 && (breaks.Count == 0 || breaks[^1] < s))
                {
                    breaks.Add(s);
                }
            }
        }

        return breaks;
    }
}
