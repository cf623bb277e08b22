using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>
/// An outline as a function: y as a chain of cubics in s, where s² is the distance in x behind the foremost point, s over 0 on
/// the upper surface and under 0 on the lower. All in chords.
/// </summary>
/// <remarks>
/// On a round nose y is a smooth function of s, while it has a vertical tangent as a function of x; published tables, dense in
/// x at the nose, are nearly even in s; and x can never run back.
/// </remarks>
internal sealed class OutlineCurve
{
    private readonly double[] _knots;
    private readonly Cubic[] _pieces;

    /// <param name="noseX">x of the foremost point.</param>
    /// <param name="knots">Values of s, strictly ascending.</param>
    /// <param name="pieces">One cubic from each knot to the next.</param>
    /// <param name="breaks">Knots where the curvature or the direction jumps, ascending, ends and nose left out.</param>
    public OutlineCurve(double noseX, double[] knots, Cubic[] pieces, IReadOnlyList<double> breaks)
    {
        NoseX = noseX;
        _knots = knots;
        _pieces = pieces;
        Breaks = breaks;
    }

    /// <summary>x of the foremost point.</summary>
    public double NoseX { get; }

    /// <summary>s of the lower trailing edge, under 0.</summary>
    public double LowerEnd => _knots[0];

    /// <summary>s of the upper trailing edge, over 0.</summary>
    public double UpperEnd => _knots[^1];

    /// <summary>Values of s, ascending, where the curvature or the direction jumps; ends and nose are not among them.</summary>
    public IReadOnlyList<double> Breaks { get; }

    /// <summary>y and dy/ds at s between the ends.</summary>
    /// <remarks>At a knot, those of the piece aft of it: 0 is the nose of the upper surface and −0 that of the lower.</remarks>
    public (double Y, double Slope) At(double s)
    {
        var isLower = double.IsNegative(s);
        int low = 0, high = _pieces.Length;
        while (high - low > 1)
        {
            var middle = (low + high) >>> 1;
            var isBehind = isLower ? s > _knots[middle] : s >= _knots[middle];
            (low, high) = isBehind ? (middle, high) : (low, middle);
        }

        return _pieces[low].At(s - _knots[low]);
    }

    /// <summary>Points of the curve at even steps of s from end to end.</summary>
    public Point2[] Sampled(int intervals)
    {
        var points = new Point2[intervals + 1];
        for (var i = 0; i <= intervals; i++)
        {
            var s = LowerEnd + ((UpperEnd - LowerEnd) * i / intervals);
            points[i] = new(NoseX + (s * s), At(s).Y);
        }

        return points;
    }
}

/// <summary>The cubic C0 + C1 t + C2 t² + C3 t³.</summary>
internal readonly record struct Cubic(double C0, double C1, double C2, double C3)
{
    /// <summary>The cubic over [0, width] with given values and slopes at both ends.</summary>
    public static Cubic Between(double width, double y0, double slope0, double y1, double slope1)
    {
        var rate = (y1 - y0) / width;
        return new(y0, slope0, ((3 * rate) - (2 * slope0) - slope1) / width, (slope0 + slope1 - (2 * rate)) / (width * width));
    }

    /// <summary>Value and derivative at t.</summary>
    public (double Y, double Slope) At(double t) =>
        (C0 + (t * (C1 + (t * (C2 + (t * C3))))), C1 + (t * ((2 * C2) + (t * 3 * C3))));
}
