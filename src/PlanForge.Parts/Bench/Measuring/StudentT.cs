using PlanForge.Geometry;

namespace PlanForge.Parts.Bench.Measuring;

/// <summary>Student's t: how many standard uncertainties an interval reaches either way.</summary>
internal static class StudentT
{
    /// <summary>The normal distribution's factor for 95 %.</summary>
    public const double Normal95 = 1.959963984540054;

    /// <summary>The factor that a share of both tails together leaves outside.</summary>
    /// <param name="freedom">Degrees of freedom, 1 or more; a fraction is cut off (JCGM 100:2008 (GUM), G.4.1, note 1, from memory).</param>
    /// <param name="outside">The share outside, over 0 and under 1.</param>
    public static double Factor(double freedom, double outside)
    {
        // Beyond this the distribution differs from the normal one by less than 1 in 10 000.
        const int Greatest = 10000;
        var whole = (int)Math.Clamp(Math.Floor(freedom), 1, Greatest);
        var high = 1.0;
        while (Outside(whole, high) > outside)
        {
            high *= 2;
        }

        return RootFinder.Bracketed(t => Outside(whole, t) - outside, 0, high, 1e-9) ?? high;
    }

    // Both tails by the finite sums for whole degrees of freedom: Abramowitz and Stegun, 26.7.3 and 26.7.4 (from memory).
    private static double Outside(int freedom, double t)
    {
        var angle = Math.Atan(t / Math.Sqrt(freedom));
        var (sin, cos) = Math.SinCos(angle);
        double term = freedom % 2 == 1 ? cos : 1, sum = freedom == 1 ? 0 : term;
        for (var k = freedom % 2 == 1 ? 3 : 2; k <= freedom - 2; k += 2)
        {
            term *= cos * cos * (k - 1) / k;
            sum += term;
        }

        var inside = freedom % 2 == 1 ? 2 / Math.PI * (angle + (sin * sum)) : sin * sum;
        return 1 - inside;
    }
}
