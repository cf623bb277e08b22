namespace PlanForge.Airframe.Sections;

/// <summary>A point of a section's surface with its derivative by the surface parameter w, all in chords.</summary>
/// <param name="X">Aft of the leading edge, in chords.</param>
/// <param name="Y">Above the chord line, in chords.</param>
/// <param name="Dx">dX/dw.</param>
/// <param name="Dy">dY/dw.</param>
public readonly record struct SectionPoint(double X, double Y, double Dx, double Dy);

/// <summary>An aerofoil section of unit chord: leading edge at (0, 0), trailing edge about (1, 0). Immutable.</summary>
/// <remarks>
/// Both surfaces start at the nose, the foremost point of the outline (for cambered sections it lies a trace before and
/// beside the leading edge), and run to the trailing edge, where an open section leaves a gap. Each is a smooth curve of
/// the parameter w in [0, 1] with x = x(nose) + (x(end) − x(nose)) w², so that a surface which is round at the nose is a
/// smooth function of w there. Two sections at the same w are at the same fraction of their own extent: that is what
/// blending means by "equal chord fractions".
/// </remarks>
public abstract class Section
{
    /// <summary>What to call the section on sheets and in messages, such as <c>NACA 2412</c> or <c>Otter 9</c>.</summary>
    public abstract string Name { get; }

    /// <summary>The upper surface at w in [0, 1]: 0 the nose, 1 the trailing edge.</summary>
    public abstract SectionPoint Upper(double w);

    /// <summary>The lower surface at w in [0, 1]: 0 the nose, 1 the trailing edge.</summary>
    public abstract SectionPoint Lower(double w);

    /// <summary>
    /// Values of w strictly between 0 and 1 where the upper surface has a break in slope or curvature (where a mean line
    /// changes formula, say), ascending; curve fitting starts a new piece there. Empty for a smooth surface.
    /// </summary>
    /// <remarks>At a break itself <see cref="Upper"/> gives the derivatives of one of the two sides.</remarks>
    public virtual IReadOnlyList<double> UpperBreaks => [];

    /// <summary>The same of the lower surface; a mean line's change of formula meets the two surfaces at different w.</summary>
    public virtual IReadOnlyList<double> LowerBreaks => [];

    /// <summary>
    /// Greatest thickness, in chords: the greatest difference in height of the two surfaces at equal w. Computed from the
    /// surfaces at every call (some tens of microseconds).
    /// </summary>
    public double Thickness => SectionMeasures.Thickness(this);

    /// <summary>
    /// Camber, in chords: the height of the mean line (half-way between the surfaces at equal w) where it is farthest from
    /// the chord line; negative when that is below. Computed from the surfaces at every call (some tens of microseconds).
    /// </summary>
    public double Camber => SectionMeasures.Camber(this);

    /// <summary>
    /// The line a straightedge held against the lower surface finds, or null when the surface is so convex that it would
    /// rock. Computed from the surface at every call (some tens of microseconds).
    /// </summary>
    public UndersideLine? Underside => UndersideFinder.Find(this);
}
