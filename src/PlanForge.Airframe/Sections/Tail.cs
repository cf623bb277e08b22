namespace PlanForge.Airframe.Sections;

/// <summary>Keeps the last interval of a fitted surface, which nothing holds from behind, from bulging.</summary>
internal static class Tail
{
    // The curvature at the trailing edge may be so many times what the last listed points show. More lets the last interval
    // bulge after a kink in the data; less distrusts the thin tails of coarse tables, where 2.5 times is right.
    private const double GreatestBend = 4;

    /// <summary>
    /// The slope dy/ds to give to a trailing edge at which the curve would bend the wrong way or far more than the data: that of
    /// the parabola in x through the last three points. Null when the slope found is good, or when there are too few points.
    /// </summary>
    /// <param name="s">Knots.</param>
    /// <param name="y">Values at the knots.</param>
    /// <param name="slopes">The slopes dy/ds found.</param>
    /// <param name="at">The knot at the trailing edge.</param>
    /// <param name="inwards">1 or −1: the way to the next knot.</param>
    /// <param name="count">How many knots there are that way before the stretch ends.</param>
    public static double? Tamed(double[] s, double[] y, double[] slopes, int at, int inwards, int count)
    {
        if (count < 3)
        {
            return null;
        }

        int one = at + inwards, two = one + inwards, three = two + inwards;
        var rate = (y[one] - y[at]) / ((s[one] - s[at]) * (s[one] + s[at]));
        var bend = Bend(s, y, at, one, two);

        // d²y/ds² at the end of the cubic, then d²y/dx² from x = s².
        var curvature = 2 * ((2 * slopes[at]) + slopes[one] - (3 * (y[one] - y[at]) / (s[one] - s[at]))) / (s[at] - s[one]);
        var bendFound = (curvature - (slopes[at] / s[at])) / (4 * s[at] * s[at]);
        var greatest = GreatestBend * Math.Max(Math.Abs(bend), Math.Abs(Bend(s, y, one, two, three)));
        return bendFound * bend >= 0 && Math.Abs(bendFound) <= greatest
            ? null
            : 2 * s[at] * (rate + (bend / 2 * (s[at] - s[one]) * (s[at] + s[one])));
    }

    // d²y/dx² of the parabola through three points.
    private static double Bend(double[] s, double[] y, int a, int b, int c)
    {
        double ab = (s[b] - s[a]) * (s[b] + s[a]), bc = (s[c] - s[b]) * (s[c] + s[b]), ac = ab + bc;
        return 2 * (((y[c] - y[b]) / bc) - ((y[b] - y[a]) / ab)) / ac;
    }
}
