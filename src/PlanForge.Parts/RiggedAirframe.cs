using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Inputs;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Bench;
using PlanForge.Parts.Saddles;
using PlanForge.Parts.Shapes;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts;

/// <summary>A description with its wing and body built and brought together: what all kinds of parts are made from.</summary>
public sealed class RiggedAirframe
{
    private readonly Recorded<MeasureText> _text;
    private readonly Recorded<SaddleLine?> _saddleLine;
    private readonly Shared<double> _lowestPoint;

    private RiggedAirframe(AirframeDescription description, WingShape wing, FuselageShape body, InputLog inputs, KeptParts kept)
    {
        (Description, Wing, Body, Inputs, Kept) = (description, wing, body, inputs, kept);
        _text = inputs.Record(() => new MeasureText(description.DisplayUnit, description.Sheets.HasBothUnits));
        _lowestPoint = new(inputs, () => BoardHeight.LowestPoint(this));
        _saddleLine = inputs.Record(Solve);
    }

    /// <summary>Writes down what is read of the description, of the shapes and of everything else here.</summary>
    internal InputLog Inputs { get; }

    /// <summary>Parts of an earlier run.</summary>
    internal KeptParts Kept { get; }

    /// <summary>The description, watched by <see cref="Inputs"/>.</summary>
    public AirframeDescription Description { get; }

    /// <summary>The wing's outside.</summary>
    public WingShape Wing { get; }

    /// <summary>The fuselage's outside and inside.</summary>
    public FuselageShape Body { get; }

    /// <summary>The wing's surface that meets the body: the lower of a high wing, the upper of a low one.</summary>
    public WingSide WingSide => Description.Wing.Placement == WingPlacement.High ? WingSide.Lower : WingSide.Upper;

    /// <summary>Writes lengths in the description's unit.</summary>
    internal MeasureText Text => _text.Value;

    /// <summary>The solved saddle line of the starboard side, or null where wing and body do not meet.</summary>
    internal SaddleLine? SaddleLine => _saddleLine.Value;

    /// <summary>Height of the airframe's lowest point above the datum line, mm.</summary>
    internal double LowestPoint => _lowestPoint.Value;

    /// <summary>Builds wing and body.</summary>
    /// <param name="description">A checked description.</param>
    /// <param name="findings">Takes errors that only geometry shows.</param>
    /// <returns>The airframe, or null when an error was added.</returns>
    public static RiggedAirframe? Of(AirframeDescription description, ICollection<Diagnostic> findings) => Of(description, findings, new());

    /// <summary>The same, where parts may be kept from an earlier run.</summary>
    internal static RiggedAirframe? Of(AirframeDescription description, ICollection<Diagnostic> findings, KeptParts kept)
    {
        var inputs = new InputLog();
        description = description.Watched(inputs);
        var wing = description.Wing;
        if (Rigging.ChordIncidence.Of(wing.Incidence, wing.Root.Section) is null)
        {
            findings.Add(Diagnostic.Error(
                wing.Incidence.At,
                $"the underside of {wing.Root.Section.Name} is convex, no straight line rests on it: give the incidence with 'reference: chord'"));
            return null;
        }

        var body = FuselageShape.Of(description.Fuselage, inputs);
        if (!BodyCheck.Check(description, body, findings))
        {
            return null;
        }

        var rigged = new RiggedAirframe(
            description, WingShape.Of(wing, () => Rigging.ChordIncidence.Of(wing.Incidence, wing.Root.Section)!.Value, inputs), body, inputs, kept);
        return SaddleMeeting.Check(rigged, findings) ? rigged : null;
    }

    /// <summary>A piece that is kept from run to run, see <see cref="KeptParts.Piece"/>.</summary>
    internal Recorded<T> Piece<T>(string what, Func<T> make) => Kept.Piece(Inputs, what, make);

    private SaddleLine? Solve()
    {
        var line = Piece("the saddle line", () => SolvedLine.Of(Solver(), Body, Description.Saddle.From, Description.Saddle.To));
        return line.Value is { } solved ? new(Solver(), solved) : null;

        // Made anew where it is used: what it reads counts there.
        SaddleSolver Solver() => new(Wing, Body, WingSide, Description.Saddle.SeatTape);
    }

    /// <summary>The line in which a plane cuts the wing, from the centre outboard; null where it misses the wing.</summary>
    internal ImmutableArray<CurveSample>? WingCutAt(double station, double halfBreadth) =>
        WingCut.Half(Wing, WingSide, Description.Saddle.SeatTape, station, halfBreadth);

    /// <summary>Height of that line at a half-breadth, mm; null where the plane misses the wing there.</summary>
    internal double? WingCutHeightAt(double station, double halfBreadth) =>
        WingCut.HeightAt(Wing, WingSide, Description.Saddle.SeatTape, station, halfBreadth);
}
