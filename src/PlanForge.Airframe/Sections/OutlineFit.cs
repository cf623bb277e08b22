using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>
/// Fits the curve through the listed points of an outline. It passes through every one with continuous curvature, except beside
/// the ends of straight runs, where only its direction is continuous: a straight run stays straight.
/// </summary>
internal sealed class OutlineFit
{
    private readonly double[] _knots;
    private readonly double[] _heights;
    private readonly double[] _slopes;
    private readonly Cubic[] _pieces;
    private readonly bool[] _isBreak;

    private OutlineFit(ReadOnlySpan<Point2> outline, int foremost, NoseFit nose)
    {
        _knots = new double[outline.Length];
        _heights = new double[outline.Length];
        _slopes = new double[outline.Length];
        _pieces = new Cubic[outline.Length - 1];
        _isBreak = new bool[outline.Length];
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
        return new(nose.X, fit._knots, fit._pieces, fit.BreakPlaces());
    }

    // Before, between and behind the runs lie curved stretches, tangent to the runs they touch; none where two runs meet.
    private void FitAround(List<StraightRun> runs)
    {
        var at = 0;
        StraightRun? before = null;
        foreach (var run in runs)
        {
            FitStretch(at, run.First, before, run);
            FitPieces(run.First, run.Last, run.SlopeAt(_knots[run.First]), run.SlopeAt(_knots[run.Last]));
            (at, before) = (run.Last, run);
        }

        FitStretch(at, _knots.Length - 1, before, null);
    }

    private void FitStretch(int first, int last, StraightRun? before, StraightRun? behind)
    {
        _isBreak[first] = _isBreak[last] = true;
        if (first == last)
        {
            return;
        }

        var start = Tangent(before, first) ?? EndSlope.At(_knots, _heights, first, last);
        var end = Tangent(behind, last) ?? EndSlope.At(_knots, _heights, last, first);
        Solve(first, last, start, end);
        var (from, to) = (first, last);
        if (to - from > 1 && LandingSlope(before, first, 1) is { } leaving)
        {
            FitPieces(first, first + 1, start, leaving);
            (from, start) = (first + 1, leaving);
            _isBreak[from] = true;
        }

        if (to - from > 1 && LandingSlope(behind, last, -1) is { } landing)
        {
            FitPieces(last - 1, last, landing, end);
            (to, end) = (last - 1, landing);
            _isBreak[to] = true;
        }

        FitPieces(from, to, start, end);
    }

    // dy/ds is 0 wherever a straight line meets a sharp nose, which says nothing about the other surface.
    private double? Tangent(StraightRun? run, int knot) => _knots[knot] == 0 ? null : run?.SlopeAt(_knots[knot]);

    private double? LandingSlope(StraightRun? run, int knot, int outwards) =>
        run is not null && _knots[knot] != 0 ? Landing.Tamed(_knots, _heights, _slopes, run, knot, outwards) : null;

    // The slope at a joint of two stretches differs by side only at a corner: pieces are made before the next are solved.
    private void FitPieces(int first, int last, double start, double end)
    {
        Solve(first, last, start, end);
        for (var i = first; i < last; i++)
        {
            _pieces[i] = Cubic.Between(_knots[i + 1] - _knots[i], _heights[i], _slopes[i], _heights[i + 1], _slopes[i + 1]);
        }
    }

    private void Solve(int first, int last, double start, double end)
    {
        var count = last - first + 1;
        (_slopes[first], _slopes[last]) = (start, end);
        SmoothSlopes.Find(_knots.AsSpan(first, count), _heights.AsSpan(first, count), _slopes.AsSpan(first, count));
    }

    // The ends of the outline are no breaks of it, and the nose is the end of both surfaces.
    private double[] BreakPlaces()
    {
        var places = new List<double>();
        for (var i = 1; i < _pieces.Length; i++)
        {
            if (_isBreak[i] && _knots[i] != 0)
            {
                places.Add(_knots[i]);
            }
        }

        return [.. places];
    }
}
