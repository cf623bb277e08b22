using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>
/// The outline of a cambered NACA section as a function of q: q² is the station along the mean line, q over 0 on the upper
/// side and under 0 on the lower. Thickness is laid off at right angles to the mean line (NACA Report 460).
/// </summary>
internal sealed class NacaOutline
{
    private readonly MeanLine _line;
    private readonly ThicknessForm _form;
    private readonly double _noseHalf;
    private readonly double _noseSlope;
    private readonly double _noseSecant;

    public NacaOutline(MeanLine line, ThicknessForm form)
    {
        _line = line;
        _form = form;
        Junction = Math.Sqrt(line.Junction);

        // dx/dq is negative at q = 0, where the outline runs up at right angles to the mean line, and positive at the
        // junction, where the mean line falls or is level: between them lies the nose.
        Nose = RootFinder.Bracketed(q => At(q).Dx, 0, Junction, 0) ?? 0;
        NosePoint = At(Nose);
        _noseHalf = form.At(Nose).Half;
        _noseSlope = line.Forward.Slope(Nose * Nose);
        _noseSecant = Math.Sqrt(1 + (_noseSlope * _noseSlope));
        NoseBend = BendAtNose();
    }

    /// <summary>|q| where the mean line changes formula.</summary>
    public double Junction { get; }

    /// <summary>q of the foremost point.</summary>
    public double Nose { get; }

    /// <summary>The foremost point, with derivatives by q.</summary>
    public SectionPoint NosePoint { get; }

    /// <summary>d²x/dq² at the nose, over 0.</summary>
    public double NoseBend { get; }

    /// <summary>The point at q, with derivatives by q; behind the junction at the junction itself.</summary>
    public SectionPoint At(double q)
    {
        var p = q * q;
        var piece = Math.Abs(q) < Junction ? _line.Forward : _line.Aft;
        var slope = piece.Slope(p);
        var cos = 1 / Math.Sqrt(1 + (slope * slope));
        var (half, halfSlope) = _form.At(q);

        // d(sin)/dq = turn, d(cos)/dq = −slope · turn
        var turn = 2 * q * piece.Bend(p) * cos * cos * cos;
        return new(
            p - (half * slope * cos),
            piece.Height(p) + (half * cos),
            (2 * q) - (cos * halfSlope * slope) - (half * turn),
            (2 * q * slope) + (halfSlope * cos) - (half * slope * turn));
    }

    /// <summary>x(q) − x(nose), free of cancellation close to the nose, where it vanishes like (q − nose)².</summary>
    public double Behind(double q, double x)
    {
        double p = q * q, nose = Nose * Nose;
        var slope = _line.Forward.Slope(p);
        if (q < 0 || q >= Junction || slope <= 0)
        {
            return x - NosePoint.X;
        }

        // x = q² − T sin: the difference of each factor is divided by q − nose in closed form.
        var secant = Math.Sqrt(1 + (slope * slope));
        var slopeDifference = _line.Forward.SlopeDifference(p, nose) * (q + Nose);
        var sinDifference = slopeDifference * (slope + _noseSlope)
            / (((slope * _noseSecant) + (_noseSlope * secant)) * secant * _noseSecant);
        var ratio = q + Nose - (_form.Difference(q, Nose) * slope / secant) - (_noseHalf * sinDifference);
        return (q - Nose) * ratio;
    }

    private double BendAtNose()
    {
        var p = Nose * Nose;
        var cos = 1 / _noseSecant;
        var cubed = cos * cos * cos;
        var bend = _line.Forward.Bend(p);
        var sin = _noseSlope * cos;
        var turn = 2 * Nose * bend * cubed;
        var turnRate = (2 * bend * cubed) + (4 * p * ((_line.Forward.Third * cubed) - (3 * _noseSlope * bend * bend * cubed * cos * cos)));
        return 2 - (_form.Bend(Nose) * sin) - (2 * _form.At(Nose).Slope * turn) - (_noseHalf * turnRate);
    }
}
