using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>An affine map as SVG's <c>matrix(a b c d e f)</c> writes it: x' = ax + cy + e, y' = bx + dy + f (SVG 1.1, 7.4; from memory).</summary>
internal readonly record struct SvgMatrix(double A, double B, double C, double D, double E, double F)
{
    // Relative difference of the axes up to which a circle stays one: what numbers of six digits lose.
    private const double Alike = 1e-5;

    public static SvgMatrix Identity => new(1, 0, 0, 1, 0, 0);

    public static SvgMatrix Move(double x, double y) => new(1, 0, 0, 1, x, y);

    public static SvgMatrix Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    public static SvgMatrix Turn(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new(cos, sin, -sin, cos, 0, 0);
    }

    public double Determinant => (A * D) - (B * C);

    /// <summary>True when circles stay circles.</summary>
    public bool KeepsCircles
    {
        get
        {
            var size = (A * A) + (B * B) + (C * C) + (D * D);
            return Math.Abs((A * C) + (B * D)) <= Alike * size && Math.Abs((A * A) + (B * B) - (C * C) - (D * D)) <= Alike * size;
        }
    }

    public Point2 Apply(Point2 point) => new((A * point.X) + (C * point.Y) + E, (B * point.X) + (D * point.Y) + F);

    /// <summary>The map that does another first, then this.</summary>
    public SvgMatrix After(SvgMatrix inner) => new(
        (A * inner.A) + (C * inner.B), (B * inner.A) + (D * inner.B), (A * inner.C) + (C * inner.D), (B * inner.C) + (D * inner.D),
        (A * inner.E) + (C * inner.F) + E, (B * inner.E) + (D * inner.F) + F);
}
