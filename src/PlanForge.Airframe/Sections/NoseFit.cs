using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>Where the foremost point of the curve through an outline lies, which is seldom one of the listed points.</summary>
/// <param name="X">x of the foremost point of the curve, at most that of the foremost listed point.</param>
/// <param name="Along">
/// Square root of the distance in x of the foremost listed point behind it: positive when that point is on the upper surface.
/// </param>
internal readonly record struct NoseFit(double X, double Along)
{
    // The curve may run this far ahead of the listed points, as a part of the distance in y between their neighbours: a half
    // circle would run 0.5 ahead. More would blow up sharp noses, less would cut blunt ones.
    private const double GreatestLead = 0.3;

    // Finer than the rounding of any table, coarser than that of the arithmetic.
    private const double Tolerance = 1e-15;

    /// <summary>The nose of a sharp section, or of one that has its foremost point listed.</summary>
    public static NoseFit AtListedPoint(Point2 point) => new(point.X, 0);

    /// <summary>
    /// The nose for which y is a smooth function of s = ±sqrt(x − X) over the five foremost points: a cubic of s through two
    /// points of either surface meets the point between them.
    /// </summary>
    /// <param name="outline">From the lower trailing edge by way of the nose to the upper.</param>
    /// <param name="foremost">Index of the foremost listed point; at least two points follow on either side.</param>
    public static NoseFit Of(ReadOnlySpan<Point2> outline, int foremost)
    {
        Point2 below = outline[foremost - 1], at = outline[foremost], above = outline[foremost + 1];
        double fall = below.Y - at.Y, rise = above.Y - at.Y;
        double back = below.X - at.X, ahead = above.X - at.X;
        if (fall >= 0 || rise <= 0)
        {
            return Unfitted(at, back, ahead, Math.Abs(rise - fall));
        }

        // The parabola x = at.X + a u + b u² in u = y − at.Y through the three foremost points.
        var b = ((back / fall) - (ahead / rise)) / (fall - rise);
        var a = (ahead / rise) - (b * rise);
        var along = a / (2 * Math.Sqrt(b));
        var greatest = Math.Sqrt(GreatestLead * (rise - fall));
        if (!(Math.Abs(along) <= greatest))
        {
            return Unfitted(at, back, ahead, rise - fall);
        }

        // Where two points share the foremost x, the nose lies between them.
        var half = 0.5 * Math.Sqrt(Math.Max(back, ahead));
        var low = Math.Max(along - half, back > 0 ? -greatest : along / 2);
        var high = Math.Min(along + half, ahead > 0 ? greatest : along / 2);
        Point2[] five = [outline[foremost - 2], below, at, above, outline[foremost + 2]];
        along = RootFinder.Bracketed(trial => Miss(five, trial), low, high, Tolerance) ?? along;
        return new(at.X - (along * along), along);
    }

    // Two points that share the foremost x must keep the nose between them; their lead is a guess that rounds the corners.
    private static NoseFit Unfitted(Point2 at, double back, double ahead, double depth)
    {
        var lead = back == 0 || ahead == 0 ? GreatestLead / 2 * depth : 0;
        return new(at.X - lead, back == 0 ? Math.Sqrt(lead) : -Math.Sqrt(lead));
    }

    // How far over the middle point the cubic of s through the four others passes.
    private static double Miss(Point2[] five, double along)
    {
        var x = five[2].X - (along * along);
        Span<double> s =
        [
            -Math.Sqrt(five[0].X - x), -Math.Sqrt(five[1].X - x), along, Math.Sqrt(five[3].X - x), Math.Sqrt(five[4].X - x),
        ];
        var sum = -five[2].Y;
        for (var i = 0; i < 5; i++)
        {
            var weight = i == 2 ? 0 : five[i].Y;
            for (var j = 0; j < 5; j++)
            {
                weight *= j == i || j == 2 ? 1 : (along - s[j]) / (s[i] - s[j]);
            }

            sum += weight;
        }

        return sum;
    }
}
