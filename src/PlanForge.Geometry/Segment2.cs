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
    // Below it an arc's cap counts as a parabola's, with a relative error of the bulge squared. Too large loses accuracy by
    // that, too small by cancellation.
    private const double ShallowBulge = 1e-4;

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

    /// <summary>One over the radius, 1/mm, positive anticlockwise; 0 for a line.</summary>
    public double Curvature => 4 * Bulge / ((End - Start).Length * (1 + (Bulge * Bulge)));

    /// <summary>The length along the segment, mm.</summary>
    public double Length => IsLine ? (End - Start).Length : Radius * Math.Abs(Sweep);

    /// <summary>The area between the arc and its chord, mm², signed like the bulge; 0 for a line.</summary>
    public double CapArea
    {
        get
        {
            var sweep = Sweep;
            var squared = sweep * sweep;

            // r²(θ − sin θ)/2, by the series of θ − sin θ where the difference would cancel.
            var difference = squared < 0.01
                ? sweep * squared / 6 * (1 - (squared / 20 * (1 - (squared / 42 * (1 - (squared / 72))))))
                : sweep - Math.Sin(sweep);
            return IsLine ? 0 : Radius * Radius * difference / 2;
        }
    }

    /// <summary>The first moment of the area between arc and chord about the chord, mm³, never negative; 0 for a line.</summary>
    internal double CapMoment
    {
        get
        {
            var (length, b) = ((End - Start).Length, Math.Abs(Bulge));

            // About the centre the moment is chord³/12; for shallow arcs that cancels, and the cap is a parabola's: 2/5 of the sagitta.
            return b < ShallowBulge
                ? Math.Abs(CapArea) * length * b / 5
                : (length * length * length / 12) - (Math.Abs(CapArea) * length * (1 - (b * b)) / (4 * b));
        }
    }

    /// <summary>The smallest upright rectangle around the segment.</summary>
    public Bounds2 Bounds
    {
        get
        {
            var bounds = Bounds2.Around(Start, End);
            if (IsLine)
            {
                return bounds;
            }

            // An arc reaches furthest along an axis where it runs square to that axis.
            var sweep = Sweep;
            var first = (End - Start).Angle - (sweep / 2);
            var (low, high) = sweep > 0 ? (first, first + sweep) : (first + sweep, first);
            for (var quarter = Math.Ceiling(low / (Math.PI / 2)); quarter * (Math.PI / 2) < high; quarter++)
            {
                bounds = bounds.Including(PointAt(((quarter * (Math.PI / 2)) - first) / sweep));
            }

            return bounds;
        }
    }

    /// <summary>The point at a fraction of the length: 0 exactly the start, 1 exactly the end.</summary>
    public Point2 PointAt(double fraction)
    {
        if (IsLine)
        {
            return fraction <= 0.5 ? Start.Towards(End, fraction) : End.Towards(Start, 1 - fraction);
        }

        // From the nearer end by the chord of the part, not about the centre: the centre of a shallow arc is far away and
        // known only roughly. The chord of an angle a is 2r sin(a/2), and it points half way between the end directions.
        var sweep = Sweep;
        var diameter = (1 + (Bulge * Bulge)) / (2 * Bulge);
        var chord = End - Start;
        return fraction <= 0.5
            ? Start + (chord.Turned(sweep * (fraction - 1) / 2) * (diameter * Math.Sin(sweep * fraction / 2)))
            : End - (chord.Turned(sweep * fraction / 2) * (diameter * Math.Sin(sweep * (1 - fraction) / 2)));
    }

    /// <summary>The unit direction of travel at a fraction of the length.</summary>
    public Vector2 DirectionAt(double fraction)
    {
        var chord = (End - Start).Unit();
        return IsLine ? chord : chord.Turned(Sweep * (fraction - 0.5));
    }

    /// <summary>The same segment travelled the other way. A line stays one with the bulge 0, not −0.</summary>
    public Segment2 Reversed() => new(End, Start, 0 - Bulge);

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

        // The angle about the centre from the middle of the arc, in a frame along the chord: exact for shallow arcs too.
        var length = (End - Start).Length;
        var along = (End - Start) / length;
        var offset = point - Start.Towards(End, 0.5);
        var toCentre = length * (1 - (Bulge * Bulge)) / (4 * Bulge);
        var side = Math.Sign(Bulge);
        var turn = Math.Atan2(offset.Dot(along), side * (toCentre - offset.Dot(along.Left)));
        return Math.Clamp(0.5 + (turn / Math.Abs(Sweep)), 0, 1);
    }

    /// <summary>The shortest distance from a point to the segment, mm.</summary>
    public double DistanceTo(Point2 point) => PointAt(NearestFraction(point)).DistanceTo(point);
}
