using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>The finished outside of the wing in its place on the airframe: starboard half; port mirrors it in y = 0.</summary>
/// <remarks>
/// The wing is built with its root leading edge at the origin, turned by the incidence about the y axis (leading edge up
/// positive), then moved to its leading edge. Panels meet in the plane that halves their dihedral angle, at the centre
/// line in y = 0. Where the taper or twist changes at a joint the two surfaces may miss each other there by a trace;
/// nothing is blended over it.
/// </remarks>
public sealed class WingShape
{
    /// <summary>
    /// Where the surfaces begin in w: so near the nose that nothing is lost (1e-16 of a chord), yet a sharp nose, which has
    /// no tangent at 0 itself, already has one.
    /// </summary>
    internal const double Nose = 1e-8;

    private readonly (double Sin, double Cos) _pitch;
    private readonly SidePoint _leadingEdge;

    private WingShape(WingDescription description, double incidence, ImmutableArray<WingPanel> panels)
    {
        (Incidence, Panels) = (incidence, panels);
        (_pitch, _leadingEdge) = (Math.SinCos(incidence), description.LeadingEdge);
        RootChord = description.Root.Chord;
    }

    /// <summary>Angle of the root chord line to the datum line, radians, leading edge up positive.</summary>
    public double Incidence { get; }

    /// <summary>Root chord, mm.</summary>
    public double RootChord { get; }

    /// <summary>Half the wing's span, mm: the y of the outer end's leading edge.</summary>
    public double HalfSpan => Panels[^1].End.Y;

    internal ImmutableArray<WingPanel> Panels { get; }

    /// <summary>Builds the wing.</summary>
    /// <param name="description">The wing as described.</param>
    /// <param name="chordIncidence">Angle of the root chord line to the datum line, radians.</param>
    public static WingShape Of(WingDescription description, double chordIncidence)
    {
        var panels = ImmutableArray.CreateBuilder<WingPanel>(description.Panels.Length);
        var start = Point3.Origin;
        var inner = description.Root;
        var twist = 0.0;
        foreach (var panel in description.Panels)
        {
            var built = new WingPanel(
                start,
                panel.Length,
                panel.Dihedral,
                inner.Section,
                panel.Tip.Section,
                inner.Chord,
                panel.Tip.Chord,
                twist,
                panel.Twist,
                panel.Sweep);
            panels.Add(built);
            (start, inner, twist) = (built.End, panel.Tip, panel.Twist);
        }

        return new(description, chordIncidence, panels.MoveToImmutable());
    }

    /// <summary>The surface of one panel, u along the panel in mm, v the section parameter w.</summary>
    internal Dual3 At(int panel, WingSide side, double along, double w) => InPlace(Panels[panel].At(side, along, w));

    /// <summary>That surface moved out by the seat tape.</summary>
    internal WingSeat SeatAt(int panel, WingSide side, double along, double w, double seatTape) =>
        WingSeat.On(side, At(panel, side, along, w), seatTape);

    /// <summary>Index of the panel whose leading edge passes a distance from the centre line; the last one beyond the tip.</summary>
    internal int PanelAt(double across)
    {
        var panel = 0;
        while (panel < Panels.Length - 1 && across > Panels[panel].End.Y)
        {
            panel++;
        }

        return panel;
    }

    /// <summary>Where a panel's surface at w, moved out by the seat tape, begins and ends between its mitre planes, mm along the panel.</summary>
    internal (double From, double To) Range(int panel, WingSide side, double w, double seatTape)
    {
        var it = Panels[panel];
        var innerTilt = panel == 0 ? 0 : (Panels[panel - 1].Dihedral + it.Dihedral) / 2;
        var from = it.MitreAt(side, w, seatTape, it.Start, innerTilt);
        return panel == Panels.Length - 1
            ? (from, it.Length)
            : (from, it.MitreAt(side, w, seatTape, it.End, (it.Dihedral + Panels[panel + 1].Dihedral) / 2));
    }

    /// <summary>A place on or near the wing given in its own axes before incidence: x aft along the root chord, y, z up.</summary>
    internal Point3 InPlace(Point3 own) => InPlace(new Dual3(own.X, own.Y, own.Z)).Point;

    /// <summary>A direction given in the wing's own axes.</summary>
    internal Vector3 InPlace(Vector3 own) => new(
        (own.X * _pitch.Cos) + (own.Z * _pitch.Sin), own.Y, (own.Z * _pitch.Cos) - (own.X * _pitch.Sin));

    private Dual3 InPlace(Dual3 own) => new(
        (own.X * _pitch.Cos) + (own.Z * _pitch.Sin) + _leadingEdge.Station,
        own.Y,
        (own.Z * _pitch.Cos) - (own.X * _pitch.Sin) + _leadingEdge.Height);
}
