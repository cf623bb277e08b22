using System.Collections.Immutable;

namespace PlanForge.Geometry.Fitting;

/// <summary>Fits one piece of a curve between two corners.</summary>
internal sealed class SmoothFit
{
    // The part of the tolerance left for what the curve does between samples. Too small would need denser samples than
    // callers give, too large wastes tolerance.
    private const double SamplingShare = 0.02;

    // The greatest cubic between values 0 with a slope of 1 at one end, per length: s(1 − s)² at s = 1/3.
    private const double HermiteShare = 4.0 / 27;

    // A biarc turns no further from its start than this, radians: up to there it is well behaved, and it cannot run around
    // a loop of the curve. Arcs that go on over several biarcs are joined afterwards.
    private const double GreatestTurn = 2;

    private readonly ImmutableArray<CurveSample> _samples;
    private readonly double[] _turns;
    private readonly double _allowed;
    private readonly double _tolerance;

    public SmoothFit(ImmutableArray<CurveSample> samples, double tolerance)
    {
        (_samples, _tolerance, _allowed) = (samples, tolerance, tolerance * (1 - SamplingShare));
        _turns = new double[samples.Length];
        for (var i = 0; i < samples.Length; i++)
        {
            Check(samples[i]);
            if (i > 0)
            {
                _turns[i] = _turns[i - 1] + TurnBetween(samples[i - 1], samples[i]);
            }
        }
    }

    /// <summary>Adds the vertices of all segments, without the end of the last one.</summary>
    public void AddTo(List<PathVertex> vertices)
    {
        var position = 0;
        var last = _samples.Length - 1;
        var step = 1;
        foreach (var (runStart, runEnd) in StraightRuns.Find(_samples, _tolerance))
        {
            AddBiarcs(vertices, position, runStart, ref step);
            vertices.Add(new(_samples[runStart].Point));
            position = runEnd;
        }

        AddBiarcs(vertices, position, last, ref step);
    }

    private void AddBiarcs(List<PathVertex> vertices, int from, int to, ref int step)
    {
        while (from < to)
        {
            var end = Reach(from, to, step);
            step = end - from;
            var biarc = new Biarc(_samples[from], _samples[end]);
            vertices.Add(new(biarc.First.Start, biarc.First.Bulge));
            vertices.Add(new(biarc.Second.Start, biarc.Second.Bulge));
            from = end;
        }
    }

    // The furthest sample a biarc reaches: from the length of the last biarc (a good guess) in doubling strides up, or in
    // halves down, then by bisection between the furthest known to do and the nearest known not to.
    private int Reach(int from, int last, int guess)
    {
        var (good, bad) = (from + 1, last + 1);
        var stride = guess;
        for (var next = Math.Min(from + guess, last); good < last && next < bad;)
        {
            if (!IsWithin(from, next))
            {
                bad = next;
                break;
            }

            good = next;
            next = Math.Min(next + stride, last);
            stride *= 2;
        }

        while (bad - good > 1)
        {
            var middle = good + ((bad - good) / 2);
            if (IsWithin(from, middle))
            {
                good = middle;
            }
            else
            {
                bad = middle;
            }
        }

        return good;
    }

    private bool IsWithin(int from, int to)
    {
        if (to - from == 1)
        {
            return true;
        }

        for (var i = from + 1; i <= to; i++)
        {
            if (Math.Abs(_turns[i] - _turns[from]) > GreatestTurn)
            {
                return false;
            }
        }

        var chord = _samples[to].Point - _samples[from].Point;
        if (chord.Dot(_samples[from].Direction) <= 0 || chord.Dot(_samples[to].Direction) <= 0)
        {
            return false;
        }

        var biarc = new Biarc(_samples[from], _samples[to]);
        var (distance, slope) = (0.0, 0.0);
        for (var i = from + 1; i <= to; i++)
        {
            var (nextDistance, nextSlope) = i < to ? biarc.Deviation(_samples[i]) : (0, 0);
            var gap = _samples[i - 1].Point.DistanceTo(_samples[i].Point);
            var bound = Math.Max(Math.Abs(distance), Math.Abs(nextDistance))
                + (HermiteShare * gap * (Math.Abs(slope) + Math.Abs(nextSlope)));
            if (!(bound <= _allowed))
            {
                return false;
            }

            (distance, slope) = (nextDistance, nextSlope);
        }

        return true;
    }

    private static void Check(in CurveSample sample)
    {
        if (!double.IsFinite(sample.Point.X) || !double.IsFinite(sample.Point.Y)
            || !(Math.Abs(sample.Direction.LengthSquared - 1) < 1e-6))
        {
            throw new CurveException("A curve's samples must be finite and their directions one long", sample.Point);
        }
    }

    private static double TurnBetween(in CurveSample a, in CurveSample b)
    {
        var turn = Math.Atan2(a.Direction.Cross(b.Direction), a.Direction.Dot(b.Direction));
        var chord = b.Point - a.Point;
        return Math.Abs(turn) <= Math.PI / 2 && chord.Dot(a.Direction) > 0 && chord.Dot(b.Direction) > 0
            ? turn
            : throw new CurveException("A curve turns too far from sample to sample (a corner not marked?)", a.Point);
    }
}
