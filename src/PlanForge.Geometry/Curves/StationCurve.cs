using System.Collections.Immutable;

namespace PlanForge.Geometry.Curves;

/// <summary>How a <see cref="StationCurve"/> runs between two knots.</summary>
public enum Span
{
    /// <summary>A straight line.</summary>
    Straight,

    /// <summary>Part of a cubic spline through neighbouring fair spans.</summary>
    Fair,
}

/// <summary>A value along an axis, given at knots: straight from knot to knot, or fair as a batten bends.</summary>
/// <remarks>
/// Consecutive fair spans form one cubic spline with continuous curvature. Where a straight span joins, the spline takes its
/// slope; at a free end it runs out without curvature. The result depends linearly on the values, so that two curves
/// through equal values are equal, whatever they stand for. Source: C. de Boor, A Practical Guide to Splines (1978), ch. IV.
/// </remarks>
public sealed class StationCurve
{
    private readonly ImmutableArray<double> _knots;
    private readonly ImmutableArray<double> _values;
    private readonly ImmutableArray<double> _slopesAfter;
    private readonly ImmutableArray<double> _slopesBefore;

    private StationCurve(ImmutableArray<double> knots, ImmutableArray<double> values, double[] slopesAfter, double[] slopesBefore)
    {
        _knots = knots;
        _values = values;
        _slopesAfter = [.. slopesAfter];
        _slopesBefore = [.. slopesBefore];
    }

    /// <summary>The curve through some values.</summary>
    /// <param name="knots">Strictly ascending places, at least two.</param>
    /// <param name="values">The value at each knot.</param>
    /// <param name="spans">How the curve runs after each knot; one fewer than the knots.</param>
    /// <exception cref="ArgumentException">The lengths do not fit or the knots do not ascend.</exception>
    public static StationCurve Through(ImmutableArray<double> knots, ImmutableArray<double> values, ImmutableArray<Span> spans)
    {
        if (knots.Length < 2 || values.Length != knots.Length || spans.Length != knots.Length - 1)
        {
            throw new ArgumentException("A curve needs at least two knots, a value at each and a span between.", nameof(knots));
        }

        var after = new double[spans.Length];
        var before = new double[spans.Length];
        for (var i = 0; i < spans.Length; i++)
        {
            if (!(knots[i + 1] > knots[i]))
            {
                throw new ArgumentException("The knots must ascend.", nameof(knots));
            }

            after[i] = before[i] = (values[i + 1] - values[i]) / (knots[i + 1] - knots[i]);
        }

        for (var first = 0; first < spans.Length; first++)
        {
            if (spans[first] != Span.Fair)
            {
                continue;
            }

            var last = first;
            while (last + 1 < spans.Length && spans[last + 1] == Span.Fair)
            {
                last++;
            }

            double? startSlope = first > 0 ? after[first - 1] : null;
            double? endSlope = last + 1 < spans.Length ? after[last + 1] : null;
            var slopes = SplineSlopes(knots.AsSpan(first, last - first + 2), values.AsSpan(first, last - first + 2), startSlope, endSlope);
            for (var i = first; i <= last; i++)
            {
                (after[i], before[i]) = (slopes[i - first], slopes[i - first + 1]);
            }

            first = last;
        }

        return new(knots, values, after, before);
    }

    /// <summary>The value at a place, by the polynomial of one span: also outside that span, where it runs on.</summary>
    /// <param name="span">Index of the span, 0 to the number of knots less 2.</param>
    /// <param name="x">The place.</param>
    public Dual At(int span, Dual x)
    {
        var length = _knots[span + 1] - _knots[span];
        var t = (x.Value - _knots[span]) / length;
        double a = _values[span], b = _values[span + 1];
        double da = _slopesAfter[span] * length, db = _slopesBefore[span] * length;

        // Hermite form: a + da t + (3(b − a) − 2da − db) t² + (da + db − 2(b − a)) t³.
        var square = (3 * (b - a)) - (2 * da) - db;
        var cube = da + db - (2 * (b - a));
        var value = a + (t * (da + (t * (square + (t * cube)))));
        var slope = (da + (t * ((2 * square) + (t * 3 * cube)))) / length;
        return x.Through(value, slope);
    }

    // Slopes at the knots of the spline with continuous second derivative (tridiagonal system, Thomas elimination).
    private static double[] SplineSlopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double? startSlope, double? endSlope)
    {
        var n = x.Length;
        var diagonal = new double[n];
        var above = new double[n];
        var right = new double[n];
        var below = new double[n];
        for (var i = 1; i < n - 1; i++)
        {
            double h0 = x[i] - x[i - 1], h1 = x[i + 1] - x[i];
            below[i] = h1;
            diagonal[i] = 2 * (h0 + h1);
            above[i] = h0;
            right[i] = 3 * ((h1 * (y[i] - y[i - 1]) / h0) + (h0 * (y[i + 1] - y[i]) / h1));
        }

        // A free end has no curvature: 2 m0 + m1 = 3 (y1 − y0)/h.
        (diagonal[0], above[0], right[0]) = startSlope is { } start ? (1, 0, start) : (2, 1, 3 * (y[1] - y[0]) / (x[1] - x[0]));
        (diagonal[n - 1], below[n - 1], right[n - 1]) =
            endSlope is { } end ? (1, 0, end) : (2, 1, 3 * (y[n - 1] - y[n - 2]) / (x[n - 1] - x[n - 2]));

        for (var i = 1; i < n; i++)
        {
            var factor = below[i] / diagonal[i - 1];
            diagonal[i] -= factor * above[i - 1];
            right[i] -= factor * right[i - 1];
        }

        var slopes = new double[n];
        slopes[n - 1] = right[n - 1] / diagonal[n - 1];
        for (var i = n - 2; i >= 0; i--)
        {
            slopes[i] = (right[i] - (above[i] * slopes[i + 1])) / diagonal[i];
        }

        return slopes;
    }
}
