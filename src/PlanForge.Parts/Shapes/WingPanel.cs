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
    private readonly (double Sin, double Cos) _tilt = Math.SinCos(Dihedral);

    public Point3 Start { get => Frame(field); init; } = Start;

    public double Length { get => Frame(field); init; } = Length;

    public double Dihedral { get => Frame(field); init; } = Dihedral;

    public double Sweep { get => Frame(field); init; } = Sweep;

    public Section Inner { get => Form(field); init; } = Inner;

    public Section Outer { get => Form(field); init; } = Outer;

    public double InnerChord { get => Form(field); init; } = InnerChord;

    public double OuterChord { get => Form(field); init; } = OuterChord;

    public double InnerTwist { get => Form(field); init; } = InnerTwist;

    public double OuterTwist { get => Form(field); init; } = OuterTwist;

    /// <summary>What place and direction of the panel were made from, or null.</summary>
    public RecordedInputs? FrameInputs { get; init; }

    /// <summary>What its sections, chords and twists were made from, or null.</summary>
    public RecordedInputs? FormInputs { get; init; }

    /// <summary>The outer end's leading edge.</summary>
    public Point3 End => Start + new Vector3(Sweep, Length * _tilt.Cos, Length * _tilt.Sin);

    /// <summary>Chord at a distance along the panel, mm; runs on past the ends.</summary>
    public double ChordAt(double along) => InnerChord + ((OuterChord - InnerChord) * along / Length);

    /// <summary>A point of the chord line at a distance along the panel; fraction 0 is its leading, 1 its trailing edge.</summary>
    public Point3 OnChordLine(double along, double fraction)
    {
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
            Start.X + aft,
            Start.Y + (distance * _tilt.Cos) - (up * _tilt.Sin),
            Start.Z + (distance * _tilt.Sin) + (up * _tilt.Cos));
    }

    /// <summary>The surface in its own section plane: aft of the inner end's leading edge, and up along the panel's normal, mm.</summary>
    public (Dual Aft, Dual Up) InSectionPlane(WingSide side, Dual along, double w)
    {
        var fraction = along * (1 / Length);
        var chord = InnerChord + ((OuterChord - InnerChord) * fraction);
        var twist = InnerTwist + ((OuterTwist - InnerTwist) * fraction);
        var (x, y) = SectionAt(side, fraction, w);
        var fromQuarter = chord * (x - 0.25);
        var height = chord * y;
        var turnedAft = fromQuarter;
        var turnedUp = height;
        if (InnerTwist != 0 || OuterTwist != 0)
        {
            Dual sin = Dual.Sin(twist), cos = Dual.Cos(twist);
            turnedAft = (fromQuarter * cos) + (height * sin);
            turnedUp = (height * cos) - (fromQuarter * sin);
        }

        return ((Sweep * fraction) + (chord * 0.25) + turnedAft, turnedUp);
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

    private T Frame<T>(T value)
    {
        FrameInputs?.Use();
        return value;
    }

    private T Form<T>(T value)
    {
        FormInputs?.Use();
        return value;
    }

    private (Dual X, Dual Y) SectionAt(WingSide side, Dual fraction, double w)
    {
        var inner = side == WingSide.Lower ? Inner.Lower(w) : Inner.Upper(w);
        Dual x = new(inner.X, 0, inner.Dx), y = new(inner.Y, 0, inner.Dy);
        if (ReferenceEquals(Inner, Outer))
        {
            return (x, y);
        }

        var outer = side == WingSide.Lower ? Outer.Lower(w) : Outer.Upper(w);
        return (
            x + (fraction * (new Dual(outer.X, 0, outer.Dx) - x)),
            y + (fraction * (new Dual(outer.Y, 0, outer.Dy) - y)));
    }
}
