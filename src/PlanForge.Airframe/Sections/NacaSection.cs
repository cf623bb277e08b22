namespace PlanForge.Airframe.Sections;

/// <summary>
/// A NACA section of the four-digit series, or of the five-digit series with a plain mean line, evaluated by formula.
/// </summary>
/// <remarks>
/// The chord line runs from the leading edge of the mean line at (0, 0) to its end at (1, 0). The nose of a cambered section
/// lies on the upper side of that leading edge. The station for a given w is solved for to about 1e-15 chords.
/// </remarks>
public sealed class NacaSection : Section
{
    private readonly ThicknessForm _form;
    private readonly NacaSurface? _upper;
    private readonly NacaSurface? _lower;

    private NacaSection(string name, TrailingEdge trailingEdge, ThicknessForm form, NacaOutline? outline)
    {
        Name = name;
        TrailingEdge = trailingEdge;
        _form = form;
        if (outline is not null)
        {
            _upper = new(outline, 1);
            _lower = new(outline, -1);
        }
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <summary>How the section ends.</summary>
    public TrailingEdge TrailingEdge { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<double> UpperBreaks => _upper is null ? [] : [_upper.Break];

    /// <inheritdoc/>
    public override IReadOnlyList<double> LowerBreaks => _lower is null ? [] : [_lower.Break];

    /// <summary>The section of a designation, or null with the reason in <paramref name="fault"/>.</summary>
    /// <param name="digits">Four digits, such as <c>2412</c>, or five with a mean line from 210 to 250, such as <c>23012</c>.</param>
    /// <param name="trailingEdge">How the section ends.</param>
    /// <param name="fault">What is wrong with the designation: one sentence without a full stop. Null when nothing is.</param>
    public static NacaSection? TryCreate(string digits, TrailingEdge trailingEdge, out string? fault)
    {
        if (NacaDesignation.TryRead(digits, out fault) is not { } designation)
        {
            return null;
        }

        var form = new ThicknessForm(designation.Thickness, trailingEdge);
        if (designation.MeanLine == MeanLine.Straight)
        {
            return new($"NACA {digits}", trailingEdge, form, null);
        }

        var outline = new NacaOutline(designation.MeanLine, form);
        if (TurnsBack(outline))
        {
            fault = $"NACA {digits} turns back on itself: its mean line bends too sharply for its thickness";
            return null;
        }

        return new($"NACA {digits}", trailingEdge, form, outline);
    }

    /// <inheritdoc/>
    public override SectionPoint Upper(double w) => _upper?.At(w) ?? Symmetrical(w, 1);

    /// <inheritdoc/>
    public override SectionPoint Lower(double w) => _lower?.At(w) ?? Symmetrical(w, -1);

    private SectionPoint Symmetrical(double w, double side)
    {
        var (half, slope) = _form.At(w);
        return new(w * w, side * half, 2 * w, side * slope);
    }

    // A surface on the hollow side of a strongly bent mean line may fold. The fold, if any, is as long as the bend, so that
    // some of a few hundred places lie in it; a missed one would be of no size.
    private static bool TurnsBack(NacaOutline outline)
    {
        const int PlaceCount = 256;
        for (var i = 1; i <= PlaceCount; i++)
        {
            var w = (double)i / PlaceCount;
            if (!(outline.At(outline.Nose + ((1 - outline.Nose) * w)).Dx > 0)
                || !(outline.At(outline.Nose - ((1 + outline.Nose) * w)).Dx < 0))
            {
                return true;
            }
        }

        return false;
    }
}
