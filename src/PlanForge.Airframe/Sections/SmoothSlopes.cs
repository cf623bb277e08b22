namespace PlanForge.Airframe.Sections;

/// <summary>Slopes with which a chain of cubics through given values has a continuous second derivative.</summary>
internal static class SmoothSlopes
{
    /// <summary>
    /// The slopes dy/ds at the knots of one piece of an outline. A given end slope is kept; a free end takes the one with which
    /// the last two intervals are one cubic.
    /// </summary>
    /// <param name="s">Knots, strictly ascending, at least two.</param>
    /// <param name="y">Values at the knots.</param>
    /// <param name="start">Slope at the first knot, or null to leave it free.</param>
    /// <param name="end">Slope at the last knot, or null to leave it free.</param>
    /// <param name="slopes">Receives the slopes.</param>
    /// <remarks>Source: C. de Boor, A Practical Guide to Splines (1978), chapter IV: complete and not-a-knot cubic splines.</remarks>
    public static void Find(
        ReadOnlySpan<double> s, ReadOnlySpan<double> y, double? start, double? end, Span<double> slopes)
    {
        // One tridiagonal system; every row says that the second derivative is the same on both sides of a knot.
        var last = s.Length - 1;
        var (diagonal, above) = (new double[s.Length], new double[s.Length]);
        var (first, firstBeside, firstValue) = EndRow(s, y, start, end is null, 0, 1);
        (diagonal[0], above[0], slopes[0]) = (first, firstBeside, firstValue);
        for (var i = 1; i <= last; i++)
        {
            double below, right;
            if (i == last)
            {
                (diagonal[i], below, right) = EndRow(s, y, end, start is null, last, -1);
            }
            else
            {
                below = 1 / (s[i] - s[i - 1]);
                above[i] = 1 / (s[i + 1] - s[i]);
                diagonal[i] = 2 * (below + above[i]);
                right = 3 * (((y[i] - y[i - 1]) * below * below) + ((y[i + 1] - y[i]) * above[i] * above[i]));
            }

            var factor = below / diagonal[i - 1];
            diagonal[i] -= factor * above[i - 1];
            slopes[i] = right - (factor * slopes[i - 1]);
        }

        slopes[last] /= diagonal[last];
        for (var i = last - 1; i >= 0; i--)
        {
            slopes[i] = (slopes[i] - (above[i] * slopes[i + 1])) / diagonal[i];
        }
    }

    // The row of an end knot: its own factor, its neighbour's, and the right-hand side.
    private static (double Own, double Beside, double Value) EndRow(
        ReadOnlySpan<double> s, ReadOnlySpan<double> y, double? slope, bool otherIsFree, int at, int inwards)
    {
        if (slope is { } given)
        {
            return (1, 0, given);
        }

        var h = Math.Abs(s[at + inwards] - s[at]);
        var rate = (y[at + inwards] - y[at]) / (s[at + inwards] - s[at]);

        // With too few knots for one cubic over two intervals at both ends, the end interval is a parabola.
        if (s.Length < (otherIsFree ? 4 : 3))
        {
            return (1, 1, 2 * rate);
        }

        var h2 = Math.Abs(s[at + (2 * inwards)] - s[at + inwards]);
        var rate2 = (y[at + (2 * inwards)] - y[at + inwards]) / (s[at + (2 * inwards)] - s[at + inwards]);
        var both = h + h2;
        return (h2, both, (((h + (2 * both)) * h2 * rate) + (h * h * rate2)) / both);
    }
}
