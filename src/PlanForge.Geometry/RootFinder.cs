namespace PlanForge.Geometry;

/// <summary>Roots of continuous functions of one variable between two values of opposite sign.</summary>
public static class RootFinder
{
    // Enough for 60 halvings of any interval plus as many rejected interpolations; more means the function is not continuous.
    private const int GreatestStepCount = 200;

    /// <summary>The place where a function crosses zero, by Brent's method.</summary>
    /// <remarks>Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4, "zeroin".</remarks>
    /// <param name="function">Continuous on the interval; never called outside it.</param>
    /// <param name="low">One end.</param>
    /// <param name="high">The other end.</param>
    /// <param name="tolerance">Greatest half width of the final bracket, over 0. Rounding adds a few units in the last place.</param>
    /// <returns>The root, or null when the values at the ends have the same sign or are not numbers.</returns>
    public static double? Bracketed(Func<double, double> function, double low, double high, double tolerance)
    {
        double a = low, b = high, fa = function(a), fb = function(b);
        if (fa == 0)
        {
            return a;
        }

        if (!(fa < 0 && fb >= 0) && !(fa > 0 && fb <= 0))
        {
            return null;
        }

        double c = a, fc = fa, step = b - a, previousStep = step;
        for (var i = 0; i < GreatestStepCount && fb != 0; i++)
        {
            if (fb > 0 == fc > 0)
            {
                (c, fc) = (a, fa);
                step = previousStep = b - a;
            }

            if (Math.Abs(fc) < Math.Abs(fb))
            {
                (a, b, c) = (b, c, b);
                (fa, fb, fc) = (fb, fc, fb);
            }

            var least = (2 * double.Epsilon) + (2.3e-16 * Math.Abs(b)) + (tolerance / 2);
            var half = (c - b) / 2;
            if (Math.Abs(half) <= least)
            {
                break;
            }

            if (Math.Abs(previousStep) >= least && Math.Abs(fa) > Math.Abs(fb))
            {
                (step, previousStep) = Interpolated(a, b, c, fa, fb, fc, half, step, previousStep, least);
            }
            else
            {
                step = previousStep = half;
            }

            (a, fa) = (b, fb);
            b += Math.Abs(step) > least ? step : Math.CopySign(least, half);
            fb = function(b);
        }

        return b;
    }

    // Inverse quadratic interpolation, or the secant when only two points differ; bisection when the result is not trusted.
    private static (double Step, double PreviousStep) Interpolated(
        double a, double b, double c, double fa, double fb, double fc, double half, double step, double previousStep, double least)
    {
        double p, q;
        var s = fb / fa;
        if (a == c)
        {
            p = 2 * half * s;
            q = 1 - s;
        }
        else
        {
            q = fa / fc;
            var r = fb / fc;
            p = s * ((2 * half * q * (q - r)) - ((b - a) * (r - 1)));
            q = (q - 1) * (r - 1) * (s - 1);
        }

        q = p > 0 ? -q : q;
        p = Math.Abs(p);
        return 2 * p < Math.Min((3 * half * q) - Math.Abs(least * q), Math.Abs(previousStep * q))
            ? (p / q, step)
            : (half, half);
    }
}
