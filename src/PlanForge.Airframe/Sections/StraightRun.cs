using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>A stretch of one surface whose listed points lie on a straight line: a flat underside, say.</summary>
/// <param name="First">Index of its first point in the outline.</param>
/// <param name="Last">Index of its last point.</param>
/// <param name="Slope">dy/dx.</param>
internal sealed record StraightRun(int First, int Last, double Slope)
{
    // In chords, measured in y. Tables are printed to 1e-4 or finer where a flat is not exactly 0, and a real curve that keeps
    // this close to a line over the spans below is one. Larger would stiffen slight curves, smaller would miss turned flats
    // printed to six decimals.
    private const double Tolerance = 2e-6;

    // Three points of a coarse table are in line by chance now and then; four, or three over a third of the chord, are meant.
    private const double LeastSpanOfFour = 0.15;
    private const double LeastSpanOfThree = 0.3;

    /// <summary>dy/ds of its line where x = s² + constant.</summary>
    public double SlopeAt(double s) => 2 * s * Slope;

    /// <summary>The straight runs from one point of an outline to another, between which x only grows or only falls.</summary>
    public static List<StraightRun> Find(ReadOnlySpan<Point2> outline, int first, int last)
    {
        var runs = new List<StraightRun>();
        var at = first;
        while (at < last)
        {
            var end = Reach(outline, at, last);
            var span = Math.Abs(outline[end].X - outline[at].X);
            if ((end - at >= 3 && span >= LeastSpanOfFour) || (end - at == 2 && span >= LeastSpanOfThree))
            {
                runs.Add(new(at, end, (outline[end].Y - outline[at].Y) / (outline[end].X - outline[at].X)));
                at = end;
            }
            else
            {
                at++;
            }
        }

        return runs;
    }

    // The last point that a line from the first can reach while passing every point between within the tolerance: the slopes
    // such a line may have are an interval that each point narrows.
    private static int Reach(ReadOnlySpan<Point2> outline, int first, int last)
    {
        double low = double.NegativeInfinity, high = double.PositiveInfinity;
        var reached = first + 1;
        for (var i = first + 1; i <= last; i++)
        {
            double dx = outline[i].X - outline[first].X, dy = outline[i].Y - outline[first].Y;
            var slope = dy / dx;

            // The two foremost points may lie one above the other.
            if (dx == 0 || slope < low || slope > high)
            {
                break;
            }

            reached = i;
            low = Math.Max(low, slope - (Tolerance / Math.Abs(dx)));
            high = Math.Min(high, slope + (Tolerance / Math.Abs(dx)));
        }

        return reached;
    }
}
