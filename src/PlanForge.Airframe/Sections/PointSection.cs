using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>A section given by points of its outline: a smooth curve through all of them.</summary>
/// <remarks>
/// Continuous in curvature, round the nose too, except at the ends of straight runs (the breaks), where only the direction is
/// continuous: a flat stays flat. A sharp nose or corner is made only where straight runs meet. Read one with
/// <see cref="SectionFile.Read"/>.
/// </remarks>
public sealed class PointSection : Section
{
    private readonly OutlineCurve _curve;

    private PointSection(string name, OutlineCurve curve)
    {
        Name = name;
        _curve = curve;
        UpperBreaks = BreaksTowards(curve, curve.UpperEnd);
        LowerBreaks = BreaksTowards(curve, curve.LowerEnd);
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> UpperBreaks { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> LowerBreaks { get; }

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => At(w, _curve.UpperEnd);

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => At(w, _curve.LowerEnd);

    /// <summary>The section through an outline that is known to be one.</summary>
    /// <param name="name">The section's name.</param>
    /// <param name="outline">As <see cref="OutlineFit.Through"/> asks for it, in chords.</param>
    /// <param name="foremost">Index of the foremost point.</param>
    internal static PointSection Through(string name, ReadOnlySpan<Point2> outline, int foremost) =>
        new(name, OutlineFit.Through(outline, foremost));

    private static double[] BreaksTowards(OutlineCurve curve, double end)
    {
        var breaks = new List<double>();
        foreach (var s in curve.Breaks)
        {
            if (s * end > 0)
            {
                breaks.Add(s / end);
            }
        }

        breaks.Sort();
        return [.. breaks];
    }

    private SectionPoint At(double w, double end)
    {
        var s = w * end;
        var (y, slope) = _curve.At(s);
        return new(_curve.NoseX + (s * s), y, 2 * s * end, slope * end);
    }
}
