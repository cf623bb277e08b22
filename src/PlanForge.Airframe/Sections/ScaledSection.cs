namespace PlanForge.Airframe.Sections;

/// <summary>Another section made thicker or thinner, or more or less cambered.</summary>
/// <remarks>
/// The line half-way between the surfaces at equal w is scaled in height for camber, the heights of the surfaces over and under
/// it for thickness. Every station stays where it is.
/// </remarks>
public sealed class ScaledSection : Section
{
    // In chords: what is left of camber in a symmetrical table after rounding. Scaling that up would be scaling noise.
    private const double LeastCamber = 1e-5;

    private readonly Section _section;
    private readonly double _camberFactor;
    private readonly double _thicknessFactor;

    private ScaledSection(string name, Section section, double camberFactor, double thicknessFactor)
    {
        Name = name;
        _section = section;
        _camberFactor = camberFactor;
        _thicknessFactor = thicknessFactor;
        UpperBreaks = SurfaceBreaks.Merged(section.UpperBreaks, section.LowerBreaks);
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> UpperBreaks { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> LowerBreaks => UpperBreaks;

    /// <summary>A section with another greatest thickness, another camber, or both.</summary>
    /// <param name="section">The section to start from.</param>
    /// <param name="thickness">The new <see cref="Section.Thickness"/>, in chords, over 0; null leaves it.</param>
    /// <param name="camber">The new <see cref="Section.Camber"/>, in chords; 0 makes it symmetrical; null leaves it.</param>
    /// <returns>The section, or null when camber is asked of a symmetrical section, or thickness of one that has none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Thickness is not a positive finite number, or camber not finite.</exception>
    public static ScaledSection? Create(Section section, double? thickness, double? camber)
    {
        if (thickness is { } t && !(t > 0 && double.IsFinite(t)))
        {
            throw new ArgumentOutOfRangeException(nameof(thickness), t, "a thickness is over 0");
        }

        if (camber is { } c && !double.IsFinite(c))
        {
            throw new ArgumentOutOfRangeException(nameof(camber), c, "a camber is finite");
        }

        double has = section.Thickness, bends = section.Camber;
        if ((thickness is not null && has <= 0) || (camber is not (null or 0) && Math.Abs(bends) < LeastCamber))
        {
            return null;
        }

        var name = section.Name
            + (thickness is null ? "" : FormattableString.Invariant($", {thickness * 100:0.##} % thick"))
            + (camber is null ? "" : FormattableString.Invariant($", {camber * 100:0.##} % camber"));
        return new(name, section, camber switch { null => 1, 0 => 0, _ => camber.Value / bends }, (thickness / has) ?? 1);
    }

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => Scaled(_section.Upper(w), _section.Lower(w));

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => Scaled(_section.Lower(w), _section.Upper(w));

    // Mean and half-thickness as one: y = camber (y + other) / 2 + thickness (y − other) / 2.
    private SectionPoint Scaled(SectionPoint own, SectionPoint other)
    {
        double kept = (_camberFactor + _thicknessFactor) / 2, taken = (_camberFactor - _thicknessFactor) / 2;
        return own with { Y = (kept * own.Y) + (taken * other.Y), Dy = (kept * own.Dy) + (taken * other.Dy) };
    }
}
