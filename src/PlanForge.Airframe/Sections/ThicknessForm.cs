namespace PlanForge.Airframe.Sections;

/// <summary>The NACA four-digit thickness form as a function of q, where q² is the station along the mean line.</summary>
/// <remarks>
/// Half-thickness T = 5t (0.2969 q − 0.1260 q² − 0.3516 q⁴ + 0.2843 q⁶ − 0.1015 q⁸), all in chords. Source: NACA Report 460
/// (1933); the same in NASA TM 4741. Negative q means the lower surface, where T is negative: the whole outline is then one
/// function of q, smooth at the leading edge.
/// </remarks>
internal readonly record struct ThicknessForm
{
    private readonly double _a1;
    private readonly double _a2;
    private readonly double _a4;
    private readonly double _a6;
    private readonly double _a8;

    /// <summary>The form of a section.</summary>
    /// <param name="thickness">Greatest thickness, in chords, over 0.</param>
    /// <param name="trailingEdge">Closed takes −0.1036 for the last coefficient, with which they add up to 0 (common practice).</param>
    public ThicknessForm(double thickness, TrailingEdge trailingEdge)
    {
        var scale = 5 * thickness;
        _a1 = 0.2969 * scale;
        _a2 = -0.1260 * scale;
        _a4 = -0.3516 * scale;
        _a6 = 0.2843 * scale;

        // Subtracted rather than written as -0.1036, so that the surfaces of a closed section meet to the last bit.
        _a8 = trailingEdge == TrailingEdge.Closed ? -(_a1 + _a2 + _a4 + _a6) : -0.1015 * scale;
    }

    /// <summary>T and dT/dq at q in [−1, 1].</summary>
    public (double Half, double Slope) At(double q)
    {
        var a = Math.Abs(q);
        var p = q * q;
        var even = p * (_a2 + (p * (_a4 + (p * (_a6 + (p * _a8))))));
        var evenSlope = a * ((2 * _a2) + (p * ((4 * _a4) + (p * ((6 * _a6) + (p * 8 * _a8))))));
        return ((_a1 * q) + Math.CopySign(even, even * q), _a1 + evenSlope);
    }

    /// <summary>d²T/dq² at q, not negative.</summary>
    public double Bend(double q)
    {
        var p = q * q;
        return (2 * _a2) + (p * ((12 * _a4) + (p * ((30 * _a6) + (p * 56 * _a8)))));
    }

    /// <summary>(T(q) − T(q0)) / (q − q0) without cancellation, for q and q0 not negative.</summary>
    public double Difference(double q, double q0)
    {
        double p = q * q, p0 = q0 * q0, sum = p + p0;
        return _a1 + ((q + q0) * (_a2 + (_a4 * sum) + (_a6 * ((p * sum) + (p0 * p0))) + (_a8 * sum * ((p * p) + (p0 * p0)))));
    }
}
