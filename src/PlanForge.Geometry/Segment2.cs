namespace PlanForge.Geometry;

/// <summary>A straight line or a circular arc between two points.</summary>
/// <remarks>
/// The bulge is the tangent of a quarter of the angle the arc turns through: 0 a line, 1 a half circle, positive
/// anticlockwise from start to end. It equals twice the sagitta over the chord. An arc turns through less than a full
/// circle, so the bulge is finite.
/// </remarks>
/// <param name="Start">Where the segment begins.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Bulge">Tangent of a quarter of the turning angle, signed.</param>
public readonly record struct Segment2(Point2 Start, Point2 End, double Bulge)
{
    /// <summary>True for a straight segment.</summary>
    public bool IsLine => Bulge == 0;

    /// <summary>The angle turned through, radians, anticlockwise positive; 0 for a line.</summary>
    public double Sweep => 4 * Math.Atan(Bulge);

    /// <summary>The radius of an arc, mm, always positive; infinite for a line.</summary>
    public double Radius => (End - Start).Length * (1 + (Bulge * Bulge)) / (4 * Math.Abs(Bulge));

    /// <summary>The centre of an arc. A line has none: the result is not finite.</summary>
    public Point2 Centre
    {
        get
        {
            var chord = End - Start;
            return Start.Towards(End, 0.5) + (chord.Left * ((1 - (Bulge * Bulge)) / (4 * Bulge)));
        }
    }

    /// <summary>The length along the segment, mm.</summary>
    public double Length => IsLine ? (End - Start).Length : Radius * Math.Abs(Sweep);

    /// <summary>The smallest upright rectangle around the segment.</summary>
    public Bounds2 Bounds
    {
        get
        {
            var bounds = Bounds2.Empty.Including(Start).Including(End);
            if (IsLine)
            {
                return bounds;
            }

            var (centre, radius) = (Centre, Radius);
            for (var quarter = 0; quarter < 4; quarter++)
            {
                var extreme = centre + (Vector2.FromAngle(quarter * Math.PI / 2) * radius);
                if (IsWithinSweep(extreme))
                {
                    bounds = bounds.Including(extreme);
                }
            }

            return bounds;
        }
    }

    /// <summary>The point at a fraction of the length: 0 the start, 1 the end.</summary>
    public Point2 PointAt(double fraction)
    {
        if (IsLine)
        {
            return Start.Towards(End, fraction);
        }

        var centre = Centre;
        return centre + (Start - centre).Turned(Sweep * fraction);
    }

    /// <summary>The unit direction of travel at a fraction of the length.</summary>
    public Vector2 DirectionAt(double fraction)
    {
        var chord = (End - Start).Unit();
        return IsLine ? chord : chord.Turned(Sweep * (fraction - 0.5));
    }

    /// <summary>The same segment travelled the other way.</summary>
    public Segment2 Reversed() => new(End, Start, -Bulge);

    /// <summary>For a point on the arc's full circle: true when it lies on the arc itself (ends included within rounding).</summary>
    public bool IsWithinSweep(Point2 onCircle)
    {
        // Between the ends of an arc means: on the side of the chord to which the arc bulges.
        var side = (End - Start).Cross(onCircle - Start);
        return Bulge > 0 ? side <= 0 : side >= 0;
    }

    /// <summary>The part between two fractions of the length, in the same direction of travel.</summary>
    public Segment2 Part(double from, double to) =>
        new(from == 0 ? Start : PointAt(from), to == 1 ? End : PointAt(to), IsLine ? 0 : Math.Tan(Sweep * (to - from) / 4));

    /// <summary>The fraction of the length nearest to a point, clamped to 0..1.</summary>
    public double NearestFraction(Point2 point)
    {
        if (IsLine)
        {
            var chord = End - Start;
            var squared = chord.LengthSquared;
            return squared == 0 ? 0 : Math.Clamp((point - Start).Dot(chord) / squared, 0, 1);
        }

        var centre = Centre;
        var from = Start - centre;
        var to = point - centre;
        var turn = Math.Atan2(from.Cross(to), from.Dot(to)) * Math.Sign(Bulge);
        if (turn < 0)
        {
            turn += 2 * Math.PI;
        }

        var sweep = Math.Abs(Sweep);
        return turn <= sweep ? turn / sweep : point.DistanceTo(Start) <= point.DistanceTo(End) ? 0 : 1;
    }

    /// <summary>The shortest distance from a point to the segment, mm.</summary>
    public double DistanceTo(Point2 point) => PointAt(NearestFraction(point)).DistanceTo(point);
}
