namespace PlanForge.Airframe.Sections;

/// <summary>The slope to give to a curve at an end that nothing holds: a trailing edge.</summary>
internal static class EndSlope
{
    // The points that tell the slope lie at least this part of the last interval apart. Closer ones would turn their rounding into
    // a bulge of a long last interval; a greater part would pass over good points of even tables.
    private const double LeastSpacing = 0.5;

    private const int GreatestPointCount = 4;

    /// <summary>dy/ds at an end: that of the cubic through the last four points, closely spaced ones passed over.</summary>
    /// <param name="s">Knots.</param>
    /// <param name="y">Values at the knots.</param>
    /// <param name="at">The knot at the end.</param>
    /// <param name="stop">The last knot that may be used, at least one away from the end.</param>
    public static double At(double[] s, double[] y, int at, int stop)
    {
        var inwards = Math.Sign(stop - at);
        var spacing = LeastSpacing * Math.Abs(s[at + inwards] - s[at]);
        Span<int> chosen = stackalloc int[GreatestPointCount];
        chosen[0] = at;
        var count = 1;
        for (var i = at + inwards; count < GreatestPointCount && (stop - i) * inwards >= 0; i += inwards)
        {
            if (Math.Abs(s[i] - s[chosen[count - 1]]) >= spacing)
            {
                chosen[count++] = i;
            }
        }

        return SlopeAtFirst(s, y, chosen[..count]);
    }

    // Newton's divided differences of the polynomial through the points, differentiated at the first.
    private static double SlopeAtFirst(double[] s, double[] y, ReadOnlySpan<int> points)
    {
        Span<double> difference = stackalloc double[GreatestPointCount];
        for (var i = 0; i < points.Length; i++)
        {
            difference[i] = y[points[i]];
        }

        double slope = 0, product = 1;
        for (var order = 1; order < points.Length; order++)
        {
            for (var i = 0; i < points.Length - order; i++)
            {
                difference[i] = (difference[i + 1] - difference[i]) / (s[points[i + order]] - s[points[i]]);
            }

            slope += difference[0] * product;
            product *= s[points[0]] - s[points[order]];
        }

        return slope;
    }
}
