using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;

namespace PlanForge.Parts.Shapes;

/// <summary>Which surface of the wing.</summary>
public enum WingSide
{
    /// <summary>The underside.</summary>
    Lower,

    /// <summary>The upper side.</summary>
    Upper,
}

/// <summary>One straight piece of the starboard half wing, before incidence and position: root leading edge at the origin.</summary>
/// <remarks>
/// A section lies in the plane of the x axis and the panel's normal. Chord, leading edge and twist are linear along the
/// panel; twist turns about the quarter chord; between two different sections the shape is blended at equal w.
/// </remarks>
/// <param name="Start">Where the leading edge (untwisted) of the inner end lies.</param>
/// <param name="Length">Length along the panel, mm.</param>
/// <param name="Dihedral">Angle to the horizontal, radians, tip up positive.</param>
/// <param name="Inner">Section at the inner end.</param>
/// <param name="Outer">Section at the outer end.</param>
/// <param name="InnerChord">Chord at the inner end, mm.</param>
/// <param name="OuterChord">Chord at the outer end, mm.</param>
/// <param name="InnerTwist">Twist at the inner end, radians.</param>
/// <param name="OuterTwist">Twist at the outer end, radians.</param>
/// <param name="Sweep">How far the outer leading edge lies aft of the inner, mm.</param>
internal sealed record WingPanel(
    Point3 Start,
    double Length,
    double Dihedral,
    Section Inner,
    Section Outer,
    double InnerChord,
    double OuterChord,
    double InnerTwist,
    double OuterTwist,
    double Sweep)
{
    // The surface is worked out a hundred thousand times: it notes its inputs once and reads these.
    private readonly (double Sin, double Cos) _tilt = Math.SinCos(Dihedral);
    private readonly Point3 _start = Start;
    private readonly (double Length, double Sweep) _along = (Length, Sweep);
    private readonly (Section Inner, Section Outer) _sections = (Inner, Outer);
    private readonly (double Inner, double Outer) _chords = (InnerChord, OuterChord);
    private readonly (double Inner, double Outer) _twists = (InnerTwist, OuterTwist);

    public Point3 Start { get => Noted(field, Inputs?.Start); init; } = Start;

    public double Length { get => Noted(field, Inputs?.Length); init; } = Length;

    public double Dihedral { get => Noted(field, Inputs?.Dihedral); init; } = Dihedral;

    public double Sweep { get => Noted(field, Inputs?.Sweep); init; } = Sweep;

    public Section Inner { get => Noted(field, Inputs?.Sections); init; } = Inner;

    public Section Outer { get => Noted(field, Inputs?.Sections); init; } = Outer;

    public double InnerChord { get => Noted(field, Inputs?.Chords); init; } = InnerChord;

    public double OuterChord { get => Noted(field, Inputs?.Chords); init; } = OuterChord;

    public double InnerTwist { get => Noted(field, Inputs?.Twists); init; } = InnerTwist;

    public double OuterTwist { get => Noted(field, Inputs?.Twists); init; } = OuterTwist;

    /// <summary>What each of these was made from, or null.</summary>
    public PanelInputs? Inputs { get; init; }

    /// <summary>The outer end's leading edge.</summary>
    public Point3 End
    {
        get
        {
            Inputs?.Dihedral.Use();
            return Start + new Vector3(Sweep, Length * _tilt.Cos, Length * _tilt.Sin);
        }
    }

    /// <summary>Chord at a distance along the panel, mm; runs on past the ends.</summary>
    public double ChordAt(double along) => InnerChord + ((OuterChord - InnerChord) * along / Length);

    /// <summary>A point of the chord line at a distance along the panel; fraction 0 is its leading, 1 its trailing edge.</summary>
    public Point3 OnChordLine(double along, double fraction)
    {
        Inputs?.Dihedral.Use();
        var t = along / Length;
        var (sin, cos) = Math.SinCos(InnerTwist + ((OuterTwist - InnerTwist) * t));
        var fromQuarter = (fraction - 0.25) * ChordAt(along);
        double aft = (Sweep * t) + (0.25 * ChordAt(along)) + (fromQuarter * cos), up = -fromQuarter * sin;
        return Start + new Vector3(aft, (along * _tilt.Cos) - (up * _tilt.Sin), (along * _tilt.Sin) + (up * _tilt.Cos));
    }

    /// <summary>The surface at a distance along the panel (parameter u) and section parameter w (parameter v).</summary>
    public Dual3 At(WingSide side, double along, double w)
    {
        var (aft, up) = InSectionPlane(side, Dual.U(along), w);
        var distance = Dual.U(along);
        return new(
            _start.X + aft,
            _start.Y + (distance * _tilt.Cos) - (up * _tilt.Sin),
            _start.Z + (distance * _tilt.Sin) + (up * _tilt.Cos));
    }

    /// <summary>The surface in its own section plane: aft of the inner end's leading edge, and up along the panel's normal, mm.</summary>
    public (Dual Aft, Dual Up) InSectionPlane(WingSide side, Dual along, double w)
    {
        Inputs?.All.Use();
        var fraction = along * (1 / _along.Length);
        var chord = _chords.Inner + ((_chords.Outer - _chords.Inner) * fraction);
        var twist = _twists.Inner + ((_twists.Outer - _twists.Inner) * fraction);
        var (x, y) = SectionAt(side, fraction, w);
        var fromQuarter = chord * (x - 0.25);
        var height = chord * y;
        var turnedAft = fromQuarter;
        var turnedUp = height;
        if (_twists.Inner != 0 || _twists.Outer != 0)
        {
            Dual sin = Dual.Sin(twist), cos = Dual.Cos(twist);
            turnedAft = (fromQuarter * cos) + (height * sin);
            turnedUp = (height * cos) - (fromQuarter * sin);
        }

        return ((_along.Sweep * fraction) + (chord * 0.25) + turnedAft, turnedUp);
    }

    /// <summary>
    /// The distance along the panel at which the surface at w, moved out by <paramref name="seatTape"/>, meets a mitre plane.
    /// The plane holds the x axis direction, passes through <paramref name="joint"/> and is tilted from upright by
    /// <paramref name="tilt"/> radians, as a panel of that dihedral is.
    /// </summary>
    public double MitreAt(WingSide side, double w, double seatTape, Point3 joint, double tilt)
    {
        // The distance from the plane is all but linear along the panel (taper, twist and the turning normal bend it a
        // trace), so each Newton step gains several digits.
        const int GreatestRoundCount = 12;
        const double Tolerance = 1e-12;
        var (sin, cos) = Math.SinCos(tilt);
        var along = joint == Start ? 0 : Length;
        for (var round = 0; round < GreatestRoundCount; round++)
        {
            var (surface, _, seat) = WingSeat.On(side, At(side, along, w), seatTape);
            var distance = ((seat.Y - joint.Y) * cos) + ((seat.Z - joint.Z) * sin);
            if (Math.Abs(distance) < Tolerance)
            {
                break;
            }

            along -= distance / ((surface.Y.Du * cos) + (surface.Z.Du * sin));
        }

        return along;
    }

    private static T Noted<T>(T value, RecordedInputs? inputs)
    {
        inputs?.Use();
        return value;
    }

    private (Dual X, Dual Y) SectionAt(WingSide side, Dual fraction, double w)
    {
        var inner = side == WingSide.Lower ? _sections.Inner.Lower(w) : _sections.Inner.Upper(w);
        Dual x = new(inner.X, 0, inner.Dx), y = new(inner.Y, 0, inner.Dy);
        if (ReferenceEquals(_sections.Inner, _sections.Outer))
        {
            return (x, y);
        }

        var outer = side == WingSide.Lower ? _sections.Outer.Lower(w) : _sections.Outer.Upper(w);
        return (
            x + (fraction * (new Dual(outer.X, 0, outer.Dx) - x)),
            y + (fraction * (new Dual(outer.Y, 0, outer.Dy) - y)));
    }
}

/// <summary>What the values of a panel were made from.</summary>
/// <param name="Start">Where the inner end lies.</param>
/// <param name="Length">Its length.</param>
/// <param name="Dihedral">Its dihedral.</param>
/// <param name="Sweep">Its sweep.</param>
/// <param name="Sections">The sections at both ends.</param>
/// <param name="Chords">The chords at both ends.</param>
/// <param name="Twists">The twists at both ends.</param>
/// <param name="All">All of these: the surface.</param>
internal sealed record PanelInputs(
    RecordedInputs Start,
    RecordedInputs Length,
    RecordedInputs Dihedral,
    RecordedInputs Sweep,
    RecordedInputs Sections,
    RecordedInputs Chords,
    RecordedInputs Twists,
    RecordedInputs All);
