namespace PlanForge.Airframe.Sections;

/// <summary>Keeps a curve that comes in tangent to a straight run from dipping through the run's line before it lands.</summary>
internal static class Landing
{
    /// <summary>
    /// The slope dy/ds to give to the knot beside the end of a run so that the curve lands without curvature; null when it stays
    /// on its own side of the line as it is.
    /// </summary>
    /// <param name="s">Knots.</param>
    /// <param name="y">Values at the knots.</param>
    /// <param name="slopes">The slopes dy/ds found.</param>
    /// <param name="run">The run.</param>
    /// <param name="at">The knot at its end.</param>
    /// <param name="outwards">1 or −1: the way from it along the curve.</param>
    public static double? Tamed(double[] s, double[] y, double[] slopes, StraightRun run, int at, int outwards)
    {
        // With z the height over the run's line, z and its slope are 0 at the run's end.
        var beside = at + outwards;
        var width = s[beside] - s[at];
        var z = y[beside] - y[at] - (run.Slope * width * (s[beside] + s[at]));
        var slope = slopes[beside] - run.SlopeAt(s[beside]);
        var curvature = 2 * ((3 * z / width) - slope) / width;
        return curvature * z >= 0 ? null : run.SlopeAt(s[beside]) + (3 * z / width);
    }
}
