namespace PlanForge.Geometry;

/// <summary>The endless line or the full circle that carries a segment, with its left side marked.</summary>
/// <remarks>
/// All points p with n·(p − a) − κ|p − a|²/2 = 0, where a is a point on the carrier, n its unit normal to the left and κ its
/// signed curvature. One formula serves lines and circles and stays exact for arcs so shallow that their centre is far away.
/// </remarks>
/// <param name="Through">A point on the carrier.</param>
/// <param name="Left">The unit normal there, to the left of travel.</param>
/// <param name="Curvature">1/mm, positive when the carrier turns left; 0 for a line.</param>
internal readonly record struct Carrier(Point2 Through, Vector2 Left, double Curvature)
{
    // Sine of the angle under which two lines count as parallel: a crossing under it would be far off along both for rounding
    // alone. Too large loses real crossings, too small finds crossings of lines that coincide.
    private const double ParallelSine = 1e-12;

    /// <summary>The carrier of a segment of some length.</summary>
    public static Carrier Of(in Segment2 segment)
    {
        var chord = segment.End - segment.Start;
        var b = segment.Bulge;
        var scale = chord.Length * (1 + (b * b));
        return new(segment.Start, ((chord.Left * (1 - (b * b))) + (chord * (2 * b))) / scale, 4 * b / scale);
    }

    /// <summary>Zero on the carrier, positive to its left; near it the distance δ less κδ²/2.</summary>
    public double Value(Point2 point)
    {
        var offset = point - Through;
        return Left.Dot(offset) - (Curvature / 2 * offset.LengthSquared);
    }

    /// <summary>The distance of a point from the carrier, mm, positive to its left.</summary>
    public double SignedDistance(Point2 point)
    {
        var value = Value(point);

        // 1 − 2κ·value is the squared distance from the centre over the radius; rounding may take it below 0 at the centre.
        return 2 * value / (1 + Math.Sqrt(Math.Max(0, 1 - (2 * Curvature * value))));
    }

    /// <summary>The unit normal to the left at the place of the carrier nearest to a point (not a number at the centre).</summary>
    public Vector2 LeftNear(Point2 point) => (Left - ((point - Through) * Curvature)).Unit();

    /// <summary>The points two carriers share.</summary>
    /// <param name="a">One carrier.</param>
    /// <param name="b">The other.</param>
    /// <param name="touch">Carriers that miss or cut each other by no more than this, mm, touch in one point.</param>
    /// <param name="first">A shared point when the result is at least 1.</param>
    /// <param name="second">The other one when the result is 2.</param>
    /// <returns>0, 1 or 2; 0 also for carriers that coincide.</returns>
    public static int Meet(in Carrier a, in Carrier b, double touch, out Point2 first, out Point2 second)
    {
        if (a.Curvature == 0 && b.Curvature == 0)
        {
            return MeetLines(a, b, out first, out second);
        }

        return Math.Abs(a.Curvature) >= Math.Abs(b.Curvature)
            ? MeetCircle(a, b, touch, out first, out second)
            : MeetCircle(b, a, touch, out first, out second);
    }

    private static int MeetLines(in Carrier a, in Carrier b, out Point2 first, out Point2 second)
    {
        first = second = a.Through;
        var along = new Vector2(a.Left.Y, -a.Left.X);
        var sine = b.Left.Dot(along);
        if (Math.Abs(sine) < ParallelSine)
        {
            return 0;
        }

        first = a.Through + (along * (-b.Value(a.Through) / sine));
        return 1;
    }

    // The circle is the more curved of the two. Taking κ(other)/κ(circle) times the circle's equation from the other's leaves
    // a linear one, the radical axis (the other itself when it is a line); the circle is then met with that axis.
    private static int MeetCircle(in Carrier circle, in Carrier other, double touch, out Point2 first, out Point2 second)
    {
        first = second = circle.Through;
        var gradient = other.Left - ((circle.Through - other.Through) * other.Curvature);
        var axisNormal = gradient - (circle.Left * (other.Curvature / circle.Curvature));
        var squared = axisNormal.LengthSquared;
        if (squared < ParallelSine * ParallelSine)
        {
            return 0;
        }

        var foot = axisNormal * (-other.Value(circle.Through) / squared);
        var along = axisNormal.Left / Math.Sqrt(squared);

        // Along the axis the circle's value is rest + slope·t − κt²/2.
        var rest = circle.Left.Dot(foot) - (circle.Curvature / 2 * foot.LengthSquared);
        var slope = circle.Left.Dot(along);
        var discriminant = (slope * slope) + (2 * circle.Curvature * rest);
        if (Math.Abs(discriminant) <= 2 * Math.Abs(circle.Curvature) * touch)
        {
            first = circle.Through + foot + (along * (slope / circle.Curvature));
            return 1;
        }

        if (discriminant < 0)
        {
            return 0;
        }

        // The root that would cancel is taken from the product of both.
        var sum = slope + Math.CopySign(Math.Sqrt(discriminant), slope);
        first = circle.Through + foot + (along * (-2 * rest / sum));
        second = circle.Through + foot + (along * (sum / circle.Curvature));
        return 2;
    }
}
