using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe;

#pragma warning disable CS1591 // The parameters of each record say what its properties are.

/// <summary>The wing, symmetric about the plane y = 0. Its outside is the finished outside.</summary>
/// <param name="Placement">Whether the wing lies on the body or the body on the wing.</param>
/// <param name="LeadingEdge">The root section's leading edge on the centre line.</param>
/// <param name="Incidence">The angle of the root section.</param>
/// <param name="Root">The section on the centre line.</param>
/// <param name="Panels">The panels of the starboard half, outboard from the centre line; at least one.</param>
/// <param name="At">Where the wing stands in the description.</param>
public sealed record WingDescription(
    WingPlacement Placement,
    SidePoint LeadingEdge,
    IncidenceDescription Incidence,
    SectionStation Root,
    ImmutableArray<PanelDescription> Panels,
    SourcePosition At)
{
    public WingPlacement Placement { get => Origin.Read(field, WingFormat.Placement); init; } = Placement;

    public ImmutableArray<PanelDescription> Panels { get => Origin.Members(field, WingFormat.Panels); init; } = Panels;

    internal Origin Origin { get; init; }

    internal WingDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        LeadingEdge = LeadingEdge.Watched(log),
        Incidence = Incidence.Watched(log),
        Root = Root.Watched(log),
        Panels = Panels.Watched(log),
    };
}

/// <summary>Which part rests on which.</summary>
public enum WingPlacement
{
    /// <summary>The wing lies on the saddles: its underside meets the body sides.</summary>
    High,

    /// <summary>The fuselage lies on the wing: the wing's upper side meets the body sides.</summary>
    Low,
}

/// <summary>A point on the centre line.</summary>
/// <param name="Station">x, mm, aft positive.</param>
/// <param name="Height">z, mm above the datum line.</param>
public readonly record struct SidePoint(double Station, double Height)
{
    public double Station { get => Origin.Read(field, WingFormat.Station); init; } = Station;

    public double Height { get => Origin.Read(field, WingFormat.Height); init; } = Height;

    internal Origin Origin { get; init; }

    internal SidePoint Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>A section and the chord it is drawn at.</summary>
/// <param name="Section">The section of unit chord.</param>
/// <param name="Chord">Chord, mm, over 0.</param>
/// <param name="At">Where it stands.</param>
public sealed record SectionStation(Section Section, double Chord, SourcePosition At)
{
    public Section Section { get => Origin.Read(field, WingFormat.Section); init; } = Section;

    public double Chord { get => Origin.Read(field, WingFormat.Chord); init; } = Chord;

    internal Origin Origin { get; init; }

    internal SectionStation Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>A straight piece of a half wing. Chord, sweep and twist vary linearly along it.</summary>
/// <param name="Length">Length along the panel (not its projection), mm, over 0.</param>
/// <param name="Dihedral">Angle to the horizontal of the uninclined wing, radians, tip up positive; each panel's own, not added to its neighbour's.</param>
/// <param name="Tip">Section and chord at the outer end; the inner end's again when the description gives none.</param>
/// <param name="Sweep">How far the leading edge of the outer end lies aft of that of the inner end, mm.</param>
/// <param name="Twist">Twist of the outer end against the root section, radians, leading edge up positive, about the quarter chord.</param>
/// <param name="At">Where it stands.</param>
public sealed record PanelDescription(
    double Length, double Dihedral, SectionStation Tip, double Sweep, double Twist, SourcePosition At) : IDescribed<PanelDescription>
{
    public double Length { get => Origin.Read(field, WingFormat.PanelLength); init; } = Length;

    public double Dihedral { get => Origin.Read(field, WingFormat.Dihedral); init; } = Dihedral;

    public double Sweep { get => Origin.ReadWithin(field, WingFormat.PanelTip, WingFormat.Sweep); init; } = Sweep;

    public double Twist { get => Origin.ReadWithin(field, WingFormat.PanelTip, WingFormat.Twist); init; } = Twist;

    internal Origin Origin { get; init; }

    public PanelDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        Tip = Tip.Watched(log),
    };

    /// <summary>True when the description gives the outer end no section: it is the inner end's.</summary>
    public bool SectionIsInnerEnds { get => Origin.ReadWithin(field, WingFormat.PanelTip, WingFormat.TipSection); init; }

    /// <summary>True when the description gives the outer end no chord: it is the inner end's.</summary>
    public bool ChordIsInnerEnds { get => Origin.ReadWithin(field, WingFormat.PanelTip, WingFormat.TipChord); init; }
}

/// <summary>What the incidence angle is measured on.</summary>
public enum IncidenceReference
{
    /// <summary>The chord line, leading to trailing edge.</summary>
    Chord,

    /// <summary>The flat of the lower surface, or the line that touches it at two places.</summary>
    Underside,
}

/// <summary>The incidence of the root section as written.</summary>
/// <param name="Angle">The angle of the <paramref name="Reference"/> line to the datum line, radians, leading edge up positive.</param>
/// <param name="Reference">What that angle is measured on.</param>
/// <param name="At">Where it stands.</param>
/// <remarks>
/// A rise over the chord is the height of the front end over the rear end measured along the chord: angle = asin(rise/chord).
/// A rise over a length is measured along the datum line: angle = atan(rise/length).
/// </remarks>
public sealed record IncidenceDescription(double Angle, IncidenceReference Reference, SourcePosition At)
{
    public double Angle { get => Origin.ReadAll(field, IncidenceFormat.Rise); init; } = Angle;

    public IncidenceReference Reference { get => Origin.Read(field, IncidenceFormat.Reference); init; } = Reference;

    internal Origin Origin { get; init; }

    internal IncidenceDescription Watched(InputLog log) => this with { Origin = Origin.Watched(log) };
}

/// <summary>The tailplane, symmetric, without dihedral: one straight-tapered panel a side.</summary>
/// <param name="LeadingEdge">The root section's leading edge on the centre line.</param>
/// <param name="Incidence">The angle of the root section.</param>
/// <param name="Span">Whole span, mm, over 0.</param>
/// <param name="Root">Section and chord on the centre line.</param>
/// <param name="Tip">Section and chord at the tips.</param>
/// <param name="Sweep">How far the tip's leading edge lies aft of the root's, mm.</param>
/// <param name="SeatWidth">Width of the seat the tailplane rests on, mm.</param>
/// <param name="At">Where it stands.</param>
public sealed record TailplaneDescription(
    SidePoint LeadingEdge,
    IncidenceDescription Incidence,
    double Span,
    SectionStation Root,
    SectionStation Tip,
    double Sweep,
    double SeatWidth,
    SourcePosition At)
{
    public double Span { get => Origin.Read(field, WingFormat.Span); init; } = Span;

    public double Sweep { get => Origin.ReadWithin(field, WingFormat.TailplaneTip, WingFormat.Sweep); init; } = Sweep;

    public double SeatWidth { get => Origin.Read(field, WingFormat.SeatWidth); init; } = SeatWidth;

    internal Origin Origin { get; init; }

    internal TailplaneDescription Watched(InputLog log) => this with
    {
        Origin = Origin.Watched(log),
        LeadingEdge = LeadingEdge.Watched(log),
        Incidence = Incidence.Watched(log),
        Root = Root.Watched(log),
        Tip = Tip.Watched(log),
    };
}
