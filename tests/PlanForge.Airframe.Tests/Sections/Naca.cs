using CsCheck;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

/// <summary>NACA sections for tests, and the plain construction of their points, written apart from the product's.</summary>
internal static class Naca
{
    /// <summary>Designations of four and five digits in the range that was tested in the tunnel.</summary>
    public static Gen<string> Designations { get; } = Gen.OneOf(
        Gen.Select(Gen.Int[1, 6], Gen.Int[2, 7], Gen.Int[6, 21], (m, p, t) => FormattableString.Invariant($"{m}{p}{t:00}")),
        Gen.Select(Gen.Int[1, 4], Gen.Int[1, 5], Gen.Int[6, 21], (l, p, t) => FormattableString.Invariant($"{l}{p}0{t:00}")),
        Gen.Int[6, 21].Select(t => FormattableString.Invariant($"00{t:00}")));

    public static NacaSection Section(string digits, TrailingEdge trailingEdge = TrailingEdge.Open)
    {
        var section = NacaSection.TryCreate(digits, trailingEdge, out var fault);
        Assert.Null(fault);
        return Assert.IsType<NacaSection>(section);
    }

    /// <summary>The parameter w of a surface at a station x, from the definition of w in the remarks on <see cref="Section"/>.</summary>
    public static double ParameterAt(Func<double, SectionPoint> surface, double x)
    {
        double nose = surface(0).X, end = surface(1).X;
        return Math.Sqrt(Math.Clamp((x - nose) / (end - nose), 0, 1));
    }

    /// <summary>Height of a surface at a station x.</summary>
    public static double HeightAt(Func<double, SectionPoint> surface, double x) => surface(ParameterAt(surface, x)).Y;

    /// <summary>dY/dw by five-point central differences.</summary>
    public static double Rate(Func<double, SectionPoint> surface, double w)
    {
        const double H = 2e-5;
        return (surface(w - (2 * H)).Y - (8 * surface(w - H).Y) + (8 * surface(w + H).Y) - surface(w + (2 * H)).Y) / (12 * H);
    }

    /// <summary>How far a point lies from a surface, measured at right angles to the surface where it has the point's x.</summary>
    public static double DistanceTo(Func<double, SectionPoint> surface, double x, double y)
    {
        var at = surface(ParameterAt(surface, x));
        double dx = x - at.X, dy = y - at.Y;
        return Math.Abs((dx * at.Dy) - (dy * at.Dx)) / Math.Sqrt((at.Dx * at.Dx) + (at.Dy * at.Dy));
    }

    /// <summary>
    /// Upper and lower point at station x of the mean line: xU = x − yt sin θ, yU = yc + yt cos θ and so on, after NACA Report
    /// 460 (four digits) and 537 (five digits).
    /// </summary>
    public static (double XU, double YU, double XL, double YL) Construction(string digits, double x)
    {
        var t = int.Parse(digits[^2..], System.Globalization.CultureInfo.InvariantCulture) / 100.0;
        var yt = 5 * t * ((0.2969 * Math.Sqrt(x)) - (0.1260 * x) - (0.3516 * x * x) + (0.2843 * x * x * x) - (0.1015 * x * x * x * x));
        var (yc, slope) = digits.Length == 4 ? FourDigitLine(digits, x) : FiveDigitLine(digits, x);
        var theta = Math.Atan(slope);
        return (x - (yt * Math.Sin(theta)), yc + (yt * Math.Cos(theta)), x + (yt * Math.Sin(theta)), yc - (yt * Math.Cos(theta)));
    }

    private static (double Height, double Slope) FourDigitLine(string digits, double x)
    {
        double m = (digits[0] - '0') / 100.0, p = (digits[1] - '0') / 10.0;
        return m == 0
            ? (0, 0)
            : x < p
            ? (m / (p * p) * ((2 * p * x) - (x * x)), 2 * m / (p * p) * (p - x))
            : (m / ((1 - p) * (1 - p)) * (1 - (2 * p) + (2 * p * x) - (x * x)), 2 * m / ((1 - p) * (1 - p)) * (p - x));
    }

    private static (double Height, double Slope) FiveDigitLine(string digits, double x)
    {
        var (r, k) = digits[1] switch
        {
            '1' => (0.0580, 361.4),
            '2' => (0.1260, 51.64),
            '3' => (0.2025, 15.957),
            '4' => (0.2900, 6.643),
            _ => (0.3910, 3.230),
        };
        k *= (digits[0] - '0') * 0.15 / 0.3;
        return x < r
            ? (k / 6 * ((x * x * x) - (3 * r * x * x) + (r * r * (3 - r) * x)), k / 6 * ((3 * x * x) - (6 * r * x) + (r * r * (3 - r))))
            : (k * r * r * r / 6 * (1 - x), -k * r * r * r / 6);
    }
}
