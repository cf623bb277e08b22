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

    private readonly Recorded<double> _incidence;
    private readonly Recorded<double> _station;
    private readonly Recorded<Seat> _seat;
    private readonly Recorded<double> _rootChord;
    private readonly Recorded<ImmutableArray<WingPanel>> _panels;

    private WingShape(
        Recorded<double> incidence, Recorded<double> station, Recorded<Seat> seat, Recorded<double> rootChord, Recorded<ImmutableArray<WingPanel>> panels) =>
        (_incidence, _station, _seat, _rootChord, _panels) = (incidence, station, seat, rootChord, panels);

    /// <summary>Angle of the root chord line to the datum line, radians, leading edge up positive.</summary>
    public double Incidence => _incidence.Value;

    /// <summary>Station of the root leading edge, mm.</summary>
    internal double Station => _station.Value;

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

        var incidence = log.RecordNumber(chordIncidence);
        var station = log.RecordNumber(() => description.LeadingEdge.Station);
        var seat = log.Record(() =>
        {
            var (sin, cos) = Math.SinCos(incidence.Value);
            return new Seat(sin, cos, station.Value, description.LeadingEdge.Height);
        });
        return new(
            incidence,
            station,
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
        var inner = index == 0 ? description.Root : described[index - 1].Tip;
        var start = log.Record(() => new Joint(before?.End ?? Point3.Origin));
        var length = log.RecordNumber(() => panel.Length);
        var dihedral = log.RecordNumber(() => panel.Dihedral);
        var sweep = log.RecordNumber(() => panel.Sweep);
        var sections = log.Record(() => new Sections(inner.Section, panel.Tip.Section));
        var chords = log.Record(() => new Ends(inner.Chord, panel.Tip.Chord));
        var twists = log.Record(() => new Ends(index == 0 ? 0 : described[index - 1].Twist, panel.Twist));
        var all = log.Record(() =>
        {
            foreach (var inputs in (ReadOnlySpan<RecordedInputs>)[start.Inputs, length.Inputs, dihedral.Inputs, sweep.Inputs, sections.Inputs, chords.Inputs, twists.Inputs])
            {
                inputs.Use();
            }

            return true;
        });
        var (chord, twist) = (chords.Unnoted, twists.Unnoted);
        return new(
            start.Unnoted.At,
            length.Unnoted,
            dihedral.Unnoted,
            sections.Unnoted.Inner,
            sections.Unnoted.Outer,
            chord.Inner,
            chord.Outer,
            twist.Inner,
            twist.Outer,
            sweep.Unnoted)
        {
            Inputs = new(start.Inputs, length.Inputs, dihedral.Inputs, sweep.Inputs, sections.Inputs, chords.Inputs, twists.Inputs, all.Inputs),
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
        var from = RangeFrom(panel, side, w, seatTape);
        return panel == Panels.Length - 1
            ? (from, it.Length)
            : (from, it.MitreAt(side, w, seatTape, it.End, (it.Dihedral + Panels[panel + 1].Dihedral) / 2));
    }

    /// <summary>Where that surface begins alone.</summary>
    internal double RangeFrom(int panel, WingSide side, double w, double seatTape)
    {
        var it = Panels[panel];
        return it.MitreAt(side, w, seatTape, it.Start, panel == 0 ? 0 : (Panels[panel - 1].Dihedral + it.Dihedral) / 2);
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

    private sealed record Joint(Point3 At);

    private sealed record Sections(Section Inner, Section Outer);

    private sealed record Ends(double Inner, double Outer);

    /// <summary>Where the root leading edge lies and how the wing is turned about it.</summary>
    private sealed record Seat(double Sin, double Cos, double Station, double Height);
}
