namespace PlanForge.Airframe.Sections;

/// <summary>A section part of the way from one to another: at equal w, x and y are mixed in proportion.</summary>
public sealed class BlendedSection : Section
{
    private readonly Section _first;
    private readonly Section _second;
    private readonly double _fraction;

    private BlendedSection(Section first, Section second, double fraction)
    {
        _first = first;
        _second = second;
        _fraction = fraction;
        Name = FormattableString.Invariant($"{first.Name} to {second.Name} at {fraction * 100:0.##} %");
        UpperBreaks = SurfaceBreaks.Merged(first.UpperBreaks, second.UpperBreaks);
        LowerBreaks = SurfaceBreaks.Merged(first.LowerBreaks, second.LowerBreaks);
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> UpperBreaks { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> LowerBreaks { get; }

    /// <summary>The section at a fraction of the way: 0 has exactly the points of the first, 1 those of the second.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is not in [0, 1].</exception>
    public static BlendedSection Create(Section first, Section second, double fraction) =>
        fraction is >= 0 and <= 1
            ? new(first, second, fraction)
            : throw new ArgumentOutOfRangeException(nameof(fraction), fraction, "a fraction lies between 0 and 1");

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => Mixed(_first.Upper(w), _second.Upper(w));

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => Mixed(_first.Lower(w), _second.Lower(w));

    private SectionPoint Mixed(SectionPoint a, SectionPoint b)
    {
        var rest = 1 - _fraction;
        return new(
            (rest * a.X) + (_fraction * b.X),
            (rest * a.Y) + (_fraction * b.Y),
            (rest * a.Dx) + (_fraction * b.Dx),
            (rest * a.Dy) + (_fraction * b.Dy));
    }
}
