using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Sections;
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

    private readonly Recorded<Seat> _seat;
    private readonly Recorded<double> _rootChord;
    private readonly Recorded<ImmutableArray<WingPanel>> _panels;

    private WingShape(Recorded<Seat> seat, Recorded<double> rootChord, Recorded<ImmutableArray<WingPanel>> panels) =>
        (_seat, _rootChord, _panels) = (seat, rootChord, panels);

    /// <summary>Angle of the root chord line to the datum line, radians, leading edge up positive.</summary>
    public double Incidence => _seat.Value.Incidence;

    /// <summary>Root chord, mm.</summary>
    public double RootChord => _rootChord.Value;

    /// <summary>Half the wing's span, mm: the y of the outer end's leading edge.</summary>
    public double HalfSpan => Panels[^1].End.Y;

    internal ImmutableArray<WingPanel> Panels => _panels.Value;

    /// <summary>Builds the wing.</summary>
    /// <param name="description">The wing as described.</param>
    /// <param name="chordIncidence">Angle of the root chord line to the datum line, radians.</param>
    public static WingShape Of(WingDescription description, double chordIncidence) => Of(description, () => chordIncidence, new InputLog());

    /// <summary>Builds the wing of a description that a log watches; each of its panels knows what it was made from.</summary>
    internal static WingShape Of(WingDescription description, Func<double> chordIncidence, InputLog log)
    {
        var described = log.Record(() => description.Panels);
        var panels = ImmutableArray.CreateBuilder<WingPanel>(described.Unnoted.Length);
        WingPanel? before = null;
        for (var i = 0; i < described.Unnoted.Length; i++)
        {
            panels.Add(Panel(description, described.Value, i, before, log));
            before = panels[i];
        }

        var seat = log.Record(() =>
        {
            var (incidence, leadingEdge) = (chordIncidence(), description.LeadingEdge);
            var (sin, cos) = Math.SinCos(incidence);
            return new Seat(incidence, sin, cos, leadingEdge.Station, leadingEdge.Height);
        });
        return new(
            seat,
            log.RecordNumber(() => description.Root.Chord),
            log.Record(() =>
            {
                described.Inputs.Use();
                return panels.MoveToImmutable();
            }));
    }

    private static WingPanel Panel(WingDescription description, ImmutableArray<PanelDescription> described, int index, WingPanel? before, InputLog log)
    {
        var panel = described[index];
        var frame = log.Record(() => new Frame(before?.End ?? Point3.Origin, panel.Length, panel.Dihedral, panel.Sweep));
        var form = log.Record(() =>
        {
            var inner = index == 0 ? description.Root : described[index - 1].Tip;
            var twist = index == 0 ? 0 : described[index - 1].Twist;
            return new Form(inner.Section, panel.Tip.Section, inner.Chord, panel.Tip.Chord, twist, panel.Twist);
        });
        var (at, shape) = (frame.Unnoted, form.Unnoted);
        return new(
            at.Start, at.Length, at.Dihedral, shape.Inner, shape.Outer, shape.InnerChord, shape.OuterChord, shape.InnerTwist, shape.OuterTwist, at.Sweep)
        {
            FrameInputs = frame.Inputs,
            FormInputs = form.Inputs,
        };
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
    internal Vector3 InPlace(Vector3 own)
    {
        var seat = _seat.Value;
        return new((own.X * seat.Cos) + (own.Z * seat.Sin), own.Y, (own.Z * seat.Cos) - (own.X * seat.Sin));
    }

    private Dual3 InPlace(Dual3 own)
    {
        var seat = _seat.Value;
        return new(
            (own.X * seat.Cos) + (own.Z * seat.Sin) + seat.Station,
            own.Y,
            (own.Z * seat.Cos) - (own.X * seat.Sin) + seat.Height);
    }

    private sealed record Frame(Point3 Start, double Length, double Dihedral, double Sweep);

    private sealed record Form(Section Inner, Section Outer, double InnerChord, double OuterChord, double InnerTwist, double OuterTwist);

    /// <summary>Where the root leading edge lies and how the wing is turned about it.</summary>
    private sealed record Seat(double Incidence, double Sin, double Cos, double Station, double Height);
}
