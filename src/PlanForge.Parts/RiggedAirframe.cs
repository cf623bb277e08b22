using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry.Fitting;
using PlanForge.Parts.Saddles;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts;

/// <summary>A description with its wing and body built and brought together: what all kinds of parts are made from.</summary>
public sealed class RiggedAirframe
{
    private RiggedAirframe(AirframeDescription description, WingShape wing, FuselageShape body)
    {
        (Description, Wing, Body) = (description, wing, body);
        WingSide = description.Wing.Placement == WingPlacement.High ? WingSide.Lower : WingSide.Upper;
        Text = new(description.DisplayUnit, description.Sheets.HasBothUnits);
        var saddle = description.Saddle;
        SaddleLine = SaddleLine.Solve(wing, body, WingSide, saddle.SeatTape, saddle.From, saddle.To);
    }

    private RiggedAirframe(RiggedAirframe airframe, AirframeDescription description)
    {
        (Description, Wing, Body) = (description, airframe.Wing, airframe.Body);
        (WingSide, Text, SaddleLine) = (airframe.WingSide, airframe.Text, airframe.SaddleLine);
    }

    /// <summary>The description.</summary>
    public AirframeDescription Description { get; }

    /// <summary>The wing's outside.</summary>
    public WingShape Wing { get; }

    /// <summary>The fuselage's outside and inside.</summary>
    public FuselageShape Body { get; }

    /// <summary>The wing's surface that meets the body: the lower of a high wing, the upper of a low one.</summary>
    public WingSide WingSide { get; }

    /// <summary>Writes lengths in the description's unit.</summary>
    internal Wording.MeasureText Text { get; }

    /// <summary>The solved saddle line of the starboard side, or null where wing and body do not meet.</summary>
    internal SaddleLine? SaddleLine { get; }

    /// <summary>Builds wing and body.</summary>
    /// <param name="description">A checked description.</param>
    /// <param name="findings">Takes errors that only geometry shows.</param>
    /// <returns>The airframe, or null when an error was added.</returns>
    public static RiggedAirframe? Of(AirframeDescription description, ICollection<Diagnostic> findings)
    {
        var wing = description.Wing;
        if (Rigging.ChordIncidence.Of(wing.Incidence, wing.Root.Section) is not { } incidence)
        {
            findings.Add(Diagnostic.Error(
                wing.Incidence.At,
                $"the underside of {wing.Root.Section.Name} is convex, no straight line rests on it: give the incidence with 'reference: chord'"));
            return null;
        }

        var body = FuselageShape.Of(description.Fuselage);
        if (!BodyCheck.Check(description, body, findings))
        {
            return null;
        }

        var rigged = new RiggedAirframe(description, WingShape.Of(wing, incidence), body);
        return SaddleMeeting.Check(rigged, findings) ? rigged : null;
    }

    /// <summary>The same wing and body without a former.</summary>
    internal RiggedAirframe WithoutFormers() => new(this, Description with { Formers = [] });

    /// <summary>The line in which a plane cuts the wing, from the centre outboard; null where it misses the wing.</summary>
    internal ImmutableArray<CurveSample>? WingCutAt(double station, double halfBreadth) =>
        WingCut.Half(Wing, WingSide, Description.Saddle.SeatTape, station, halfBreadth);

    /// <summary>Height of that line at a half-breadth, mm; null where the plane misses the wing there.</summary>
    internal double? WingCutHeightAt(double station, double halfBreadth) =>
        WingCut.HeightAt(Wing, WingSide, Description.Saddle.SeatTape, station, halfBreadth);
}
