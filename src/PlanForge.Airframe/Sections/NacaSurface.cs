namespace PlanForge.Airframe.Sections;

/// <summary>One surface of a cambered NACA section, from the nose to the trailing edge, as a function of w.</summary>
internal sealed class NacaSurface
{
    // Newton's method squares the error, so that a step this small leaves one of about its square. Larger would lose digits,
    // smaller costs one more step for nothing.
    private const double LastStep = 1e-9;

    // Each step at worst halves the interval; doubles have no more halves than this.
    private const int GreatestStepCount = 64;

    // Below this w the derivative is that at the nose itself: elsewhere it is a quotient of two numbers that both vanish there.
    private const double NoseReach = 1e-8;

    private readonly NacaOutline _outline;
    private readonly double _side;
    private readonly double _extent;
    private readonly double _noseRate;

    /// <param name="outline">The outline.</param>
    /// <param name="side">1 for the upper surface, −1 for the lower.</param>
    public NacaSurface(NacaOutline outline, int side)
    {
        _outline = outline;
        _side = side;
        _extent = Math.Sqrt(outline.At(side).X - outline.NosePoint.X);
        var junction = side * outline.Junction;
        Break = Math.Sqrt(outline.Behind(junction, outline.At(junction).X)) / _extent;
        _noseRate = side * _extent * Math.Sqrt(2 / outline.NoseBend);
    }

    /// <summary>w where the mean line changes formula.</summary>
    public double Break { get; }

    /// <summary>The point at w in [0, 1].</summary>
    public SectionPoint At(double w)
    {
        var root = _extent * w;
        var dx = 2 * root * _extent;
        var point = w > 0 ? _outline.At(Station(w, root)) : _outline.NosePoint;
        var rate = w < NoseReach ? _noseRate : dx / point.Dx;
        return new(_outline.NosePoint.X + (root * root), point.Y, dx, point.Dy * rate);
    }

    // q at w: Newton's method for sqrt(x(q) − x(nose)) = root, which is nearly linear in q, between ends that close in.
    private double Station(double w, double root)
    {
        double nose = _outline.Nose, junction = _side * _outline.Junction;
        var (near, far) = w < Break ? (nose, junction) : (junction, _side);
        var q = nose + ((_side - nose) * w);
        q = _side * Math.Clamp(_side * q, _side * near, _side * far);
        for (var i = 0; i < GreatestStepCount; i++)
        {
            var point = _outline.At(q);
            var reached = Math.Sqrt(Math.Max(_outline.Behind(q, point.X), 0));
            (near, far) = reached < root ? (q, far) : (near, q);
            var step = 2 * reached * (root - reached) / point.Dx;
            if (Math.Abs(step) < LastStep)
            {
                return q + step;
            }

            q = (q + step - near) * (q + step - far) <= 0 ? q + step : (near + far) / 2;
        }

        return q;
    }
}
