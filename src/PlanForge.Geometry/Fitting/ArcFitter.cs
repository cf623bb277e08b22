using System.Collections.Immutable;

namespace PlanForge.Geometry.Fitting;

/// <summary>Replaces smooth curves by chains of lines and arcs that join without a kink.</summary>
/// <remarks>
/// Pairs of tangent arcs (biarcs) run from sample to sample, each as far as the tolerance allows. The error of a biarc over a
/// length h of a curve is about |dκ/ds|·h³/324 (D. S. Meek and D. J. Walton, Approximating smooth planar curves by arc splines,
/// Journal of Computational and Applied Mathematics 59, 1995), so a tenth of the tolerance takes about twice the segments.
/// <para>
/// Why the whole curve stays within the tolerance, not only its samples: let e be the curve's distance from the fit. At each
/// sample both e and its slope (the sine of the angle between curve and fit) are known. Between two samples h apart e is its
/// cubic Hermite interpolant, whose greatest value is at most the greater end value plus 4h/27 of both slopes, give or
/// take a term of order h⁴ that samples this dense keep far below the share of the tolerance left for it. The sum is what
/// is compared with the tolerance.
/// </para>
/// </remarks>
public static class ArcFitter
{
    // Lines are joined to lines and arcs to arcs of one carrier when nothing moves by more than this, mm.
    private const double MergeTolerance = 1e-7;

    /// <summary>An open path through the ends of a sampled curve.</summary>
    /// <param name="samples">
    /// At least two, in order, dense: between neighbours the curve turns little and one way or the other, with no feature of
    /// its own. Two samples at one point mark a corner, or a place where the curvature jumps: the fit has a vertex there.
    /// </param>
    /// <param name="tolerance">Greatest distance between curve and fit, mm, over 0.</param>
    /// <returns>
    /// A path that starts and ends exactly at the first and the last sample, without kinks (to 1e-6 radians) except at corners.
    /// Straight runs are single lines, and a piece that is one arc (up to 350°) is one arc.
    /// </returns>
    /// <exception cref="CurveException">One point only, values that are not finite, or samples too far apart.</exception>
    /// <exception cref="ArgumentException">No samples.</exception>
    public static Path2 Fit(IReadOnlyList<CurveSample> samples, double tolerance) =>
        Path2.Open(Vertices(samples, tolerance)).Merged(MergeTolerance);

    /// <summary>A closed path along a sampled closed curve; a circle becomes a circle.</summary>
    /// <param name="samples">
    /// As for an open curve; the first sample may be repeated at the end or not. Where the seam is a corner, it must be, with the
    /// direction in which the curve arrives.
    /// </param>
    /// <param name="tolerance">Greatest distance between curve and fit, mm, over 0.</param>
    /// <exception cref="CurveException">One point only, values that are not finite, or samples too far apart.</exception>
    /// <exception cref="ArgumentException">No samples.</exception>
    public static Path2 FitClosed(IReadOnlyList<CurveSample> samples, double tolerance)
    {
        var isRepeated = samples.Count > 0 && samples[^1].Point == samples[0].Point;
        var vertices = Vertices(isRepeated || samples.Count == 0 ? samples : [.. samples, samples[0]], tolerance);
        vertices.RemoveAt(vertices.Count - 1);
        return Path2.Closed(vertices).Merged(MergeTolerance);
    }

    /// <summary>An open path along a curve given by a function.</summary>
    /// <param name="curve">
    /// Point and unit direction at a parameter; the direction is that of growing parameter, and the point moves with a finite
    /// speed that is nowhere 0.
    /// </param>
    /// <param name="from">The first parameter.</param>
    /// <param name="to">The last parameter, greater than <paramref name="from"/>.</param>
    /// <param name="breaks">
    /// Parameters at which the curve may have a corner or its curvature may jump, ascending; those not between the ends are
    /// left out. The fit has a vertex there, unless a line or an arc simply runs on.
    /// </param>
    /// <param name="tolerance">Greatest distance between curve and fit, mm, over 0.</param>
    /// <exception cref="ArgumentException">The curve is not finite, or has a corner that is not among the breaks.</exception>
    public static Path2 Fit(
        Func<double, CurveSample> curve, double from, double to, IReadOnlyList<double> breaks, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        return Fit(new CurveSampler(curve, tolerance).Sample(from, to, breaks), tolerance);
    }

    private static List<PathVertex> Vertices(IReadOnlyList<CurveSample> samples, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var vertices = new List<PathVertex>();
        var run = ImmutableArray.CreateBuilder<CurveSample>(samples.Count);
        foreach (var sample in samples)
        {
            if (run.Count > 0 && run[^1].Point == sample.Point)
            {
                AddRun(vertices, run, tolerance);
                run.Clear();
            }

            run.Add(sample);
        }

        AddRun(vertices, run, tolerance);
        if (vertices.Count == 0)
        {
            throw samples.Count == 0
                ? new ArgumentException("A curve needs samples.", nameof(samples))
                : new CurveException("A curve needs samples at two points at least, all lie", samples[0].Point);
        }

        vertices.Add(new(samples[^1].Point));
        return vertices;
    }

    private static void AddRun(List<PathVertex> vertices, ImmutableArray<CurveSample>.Builder run, double tolerance)
    {
        if (run.Count > 1)
        {
            new SmoothFit(run.ToImmutable(), tolerance).AddTo(vertices);
        }
    }
}
