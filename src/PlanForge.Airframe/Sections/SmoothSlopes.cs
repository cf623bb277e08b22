namespace PlanForge.Airframe.Sections;

/// <summary>Slopes with which a chain of cubics through given values has a continuous second derivative.</summary>
internal static class SmoothSlopes
{
    /// <summary>Finds the slopes dy/ds at the knots between two ends of which the slopes are given.</summary>
    /// <param name="s">Knots, strictly ascending, at least two.</param>
    /// <param name="y">Values at the knots.</param>
    /// <param name="slopes">Holds the slopes at the first and the last knot; receives the others.</param>
    /// <remarks>Source: C. de Boor, A Practical Guide to Splines (1978), chapter IV: complete cubic spline interpolation.</remarks>
    public static void Find(ReadOnlySpan<double> s, ReadOnlySpan<double> y, Span<double> slopes)
    {
        // One tridiagonal system: every row says that the second derivative is the same on both sides of a knot. Only what lies
        // over the diagonal, divided by it, is kept.
        var last = s.Length - 1;
        var above = new double[s.Length];
        for (var i = 1; i < last; i++)
        {
            double before = 1 / (s[i] - s[i - 1]), behind = 1 / (s[i + 1] - s[i]);
            var right = 3 * (((y[i] - y[i - 1]) * before * before) + ((y[i + 1] - y[i]) * behind * behind));
            var diagonal = (2 * (before + behind)) - (before * above[i - 1]);
            above[i] = behind / diagonal;
            slopes[i] = (right - (before * slopes[i - 1])) / diagonal;
        }

        for (var i = last - 1; i > 0; i--)
        {
            slopes[i] -= above[i] * slopes[i + 1];
        }
    }
}
