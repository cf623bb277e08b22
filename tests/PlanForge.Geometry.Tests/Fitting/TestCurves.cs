using MathNet.Numerics.Integration;
using PlanForge.Geometry.Fitting;

namespace PlanForge.Geometry.Tests.Fitting;

/// <summary>Curves with known formulas, each with a range of its parameter.</summary>
internal sealed record TestCurve(string Name, Func<double, CurveSample> At, double From, double To)
{
    /// <summary>Curvature growing with the arc length, κ = rate·s (Euler spiral), integrated by Gauss-Legendre quadrature.</summary>
    public static TestCurve Clothoid(double rate, double from, double to) => new(
        "clothoid",
        s => new(
            new(
                GaussLegendreRule.Integrate(t => Math.Cos(rate * t * t / 2), 0, s, 64),
                GaussLegendreRule.Integrate(t => Math.Sin(rate * t * t / 2), 0, s, 64)),
            Vector2.FromAngle(rate * s * s / 2)),
        from,
        to);

    public static TestCurve Ellipse(double a, double b, double from, double to) => new(
        "ellipse",
        t => new(new(a * Math.Cos(t), b * Math.Sin(t)), new Vector2(-a * Math.Sin(t), b * Math.Cos(t)).Unit()),
        from,
        to);

    public static TestCurve Parabola { get; } = Graph("parabola", x => x * x / 100, x => x / 50, -60, 90);

    /// <summary>A sine wave: inflections at every multiple of 40π.</summary>
    public static TestCurve Wave { get; } = Graph("wave", x => 12 * Math.Sin(x / 40), x => 0.3 * Math.Cos(x / 40), 0, 400);

    public static TestCurve Circle(Point2 centre, double radius, double from, double to) => new(
        "circle", t => new(centre + (Vector2.FromAngle(t) * radius), Vector2.FromAngle(t).Left), from, to);

    public static TestCurve Line(Point2 start, Point2 end) =>
        new("line", t => new(start.Towards(end, t), (end - start).Unit()), 0, 1);

    /// <summary>
    /// The four-digit thickness form of 12 % on a chord of 200 mm, around the nose from trailing edge to trailing edge:
    /// 5t(0.2969√x − 0.1260x − 0.3516x² + 0.2843x³ − 0.1015x⁴) (NACA Report 460, 1933), with x = u² so that the square root
    /// at the nose becomes regular.
    /// </summary>
    public static TestCurve Nose { get; } = new("nose", AtNose, -1, 1);

    public static TestCurve Graph(string name, Func<double, double> y, Func<double, double> slope, double from, double to) =>
        new(name, x => new(new(x, y(x)), new Vector2(1, slope(x)).Unit()), from, to);

    /// <summary>Samples at equal steps of the parameter, both ends included.</summary>
    public CurveSample[] Samples(int count)
    {
        var samples = new CurveSample[count];
        for (var i = 0; i < count; i++)
        {
            samples[i] = At(From + ((To - From) * i / (count - 1)));
        }

        return samples;
    }

    private static CurveSample AtNose(double u)
    {
        const double Chord = 200;
        var v = Math.Abs(u);
        var y = 0.6 * ((0.2969 * v) - (0.1260 * v * v) - (0.3516 * Math.Pow(v, 4)) + (0.2843 * Math.Pow(v, 6)) - (0.1015 * Math.Pow(v, 8)));
        var dy = 0.6 * (0.2969 - (0.2520 * v) - (1.4064 * Math.Pow(v, 3)) + (1.7058 * Math.Pow(v, 5)) - (0.8120 * Math.Pow(v, 7)));
        return new(new(Chord * u * u, -Math.Sign(u) * Chord * y), new Vector2(2 * u, -dy).Unit());
    }
}
