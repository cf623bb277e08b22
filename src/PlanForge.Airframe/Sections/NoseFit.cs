using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>Where the foremost point of the curve through an outline lies, which is seldom one of the listed points.</summary>
/// <param name="X">x of the foremost point of the curve, at most that of the foremost listed point.</param>
/// <param name="Along">
/// Square root of the distance in x of the foremost listed point behind it: positive when that point is on the upper surface.
/// </param>
internal readonly record struct NoseFit(double X, double Along)
{
    // How far the curve may run ahead of the listed points, as a part of the distance in y between their neighbours: a half
    // circle would run 0.5 ahead. More would blow up sharp noses, less would cut blunt ones.
    private const double GreatestLead = 0.3;

    // The search goes out from the listed point in so many steps either way. Fewer could step over the nearest solution, which
    // is the right one: others far ahead of the points come from the tails of the cubic.
    private const int StepCount = 32;

    // In square roots of chords; finer than the rounding of any table, coarser than that of the arithmetic.
    private const double Tolerance = 1e-15;

    // dy/ds changes little round a nose. So many times steeper beside the foremost point than beyond its neighbours means that
    // two knots all but coincide, which would throw the curve far out; less would distrust blunt noses.
    private const double GreatestSteepness = 4;

    /// <summary>The nose of a sharp section, or of one that has its foremost point listed.</summary>
    public static NoseFit AtListedPoint(Point2 point) => new(point.X, 0);

    /// <summary>
    /// The nose for which y is a smooth function of s = ±sqrt(x − X) over the five foremost points: a cubic of s through two
    /// points of either surface meets the point between them. Of several, the one nearest to the listed points.
    /// </summary>
    /// <param name="outline">From the lower trailing edge by way of the nose to the upper.</param>
    /// <param name="foremost">Index of the foremost listed point; at least two points follow on either side.</param>
    public static NoseFit Of(ReadOnlySpan<Point2> outline, int foremost)
    {
        var five = outline.Slice(foremost - 2, 5).ToArray();
        var step = Math.Sqrt(GreatestLead * Math.Abs(five[3].Y - five[1].Y)) / StepCount;
        double? nearest = null;
        for (var i = 0; i < StepCount && nearest is null; i++)
        {
            foreach (var side in (ReadOnlySpan<double>)[step, -step])
            {
                var root = RootFinder.Bracketed(along => Miss(five, along), side * i, side * (i + 1), Tolerance);
                if (root is { } found && IsEven(five, found) && !(Math.Abs(found) >= Math.Abs(nearest ?? double.PositiveInfinity)))
                {
                    nearest = found;
                }
            }
        }

        var chosen = nearest ?? (IsEven(five, 0) ? 0 : LeastSteep(five, step));
        return new(five[2].X - (chosen * chosen), chosen);
    }

    private static bool IsEven(Point2[] five, double along)
    {
        Span<double> s = stackalloc double[5];
        Places(five, along, s);
        var beyond = Math.Max(Math.Abs(Slope(five, s, 0)), Math.Abs(Slope(five, s, 3)));
        return Steepness(five, s) <= GreatestSteepness * beyond;
    }

    private static double LeastSteep(Point2[] five, double step)
    {
        Span<double> s = stackalloc double[5];
        double chosen = 0, least = double.PositiveInfinity;
        for (var i = -StepCount; i <= StepCount; i++)
        {
            Places(five, i * step, s);
            var steepness = Steepness(five, s);
            (chosen, least) = steepness < least ? (i * step, steepness) : (chosen, least);
        }

        return chosen;
    }

    // Beside the foremost point; infinite when another one coincides with it in s.
    private static double Steepness(Point2[] five, ReadOnlySpan<double> s) =>
        s[1] < s[2] && s[2] < s[3]
            ? Math.Max(Math.Abs(Slope(five, s, 1)), Math.Abs(Slope(five, s, 2)))
            : double.PositiveInfinity;

    private static double Slope(Point2[] five, ReadOnlySpan<double> s, int i) => (five[i + 1].Y - five[i].Y) / (s[i + 1] - s[i]);

    private static void Places(Point2[] five, double along, Span<double> s)
    {
        var x = five[2].X - (along * along);
        for (var i = 0; i < 5; i++)
        {
            s[i] = i == 2 ? along : Math.CopySign(Math.Sqrt(five[i].X - x), i - 2);
        }
    }

    // How far over the middle point the cubic of s through the four others passes.
    private static double Miss(Point2[] five, double along)
    {
        Span<double> s = stackalloc double[5];
        Places(five, along, s);
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
