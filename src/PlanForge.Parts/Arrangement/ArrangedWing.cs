using System.Collections.Immutable;
using PlanForge.Geometry;
using PlanForge.Parts.Rigging;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Arrangement;

/// <summary>Places and sizes of a wing or tailplane on the airframe: starboard half, mm.</summary>
/// <param name="Joints">
/// Leading and trailing edge of the chord line at the centre line, at every joint of panels and at the tip, outboard in order.
/// </param>
/// <param name="Across">Distance of each of them from the centre line, mm: of the untwisted edge, so that the last is half the span.</param>
/// <param name="Dihedrals">Dihedral of each panel, radians: one less than joints.</param>
/// <param name="Incidence">Angle of the root chord line to the datum line, radians.</param>
/// <param name="MeanChord">Mean aerodynamic chord.</param>
/// <param name="MeanLeading">Leading edge of the mean chord.</param>
/// <param name="MeanQuarter">Its quarter chord point.</param>
public sealed record ArrangedWing(
    ImmutableArray<WingChord> Joints,
    ImmutableArray<double> Across,
    ImmutableArray<double> Dihedrals,
    double Incidence,
    double MeanChord,
    Point3 MeanLeading,
    Point3 MeanQuarter)
{
    /// <summary>Leading and trailing edge on the centre line.</summary>
    public WingChord Root => Joints[0];

    /// <summary>Leading and trailing edge at the tip.</summary>
    public WingChord Tip => Joints[^1];

    /// <summary>Root chord, mm.</summary>
    public double RootChord => Root.Leading.DistanceTo(Root.Trailing);

    /// <summary>Tip chord, mm.</summary>
    public double TipChord => Tip.Leading.DistanceTo(Tip.Trailing);

    /// <summary>Station of the foremost point of the edges.</summary>
    public double Foremost => Joints.Min(joint => joint.Leading.X);

    /// <summary>Station of the rearmost point of the edges.</summary>
    public double Rearmost => Joints.Max(joint => joint.Trailing.X);

    internal static ArrangedWing Of(WingShape wing)
    {
        var joints = ImmutableArray.CreateBuilder<WingChord>(wing.Panels.Length + 1);
        joints.Add(Edges(wing, wing.Panels[0], 0));
        foreach (var panel in wing.Panels)
        {
            joints.Add(Edges(wing, panel, panel.Length));
        }

        var plan = WingPlan.Of(wing);
        return new(
            joints.MoveToImmutable(),
            [0, .. wing.Panels.Select(panel => panel.End.Y)],
            [.. wing.Panels.Select(panel => panel.Dihedral)],
            wing.Incidence,
            plan.MeanChord,
            wing.InPlace(plan.MeanLeadingEdge),
            plan.QuarterChord(wing));
    }

    /// <summary>Leading and trailing edge on the centre line alone.</summary>
    internal static WingChord RootOf(WingShape wing) => Edges(wing, wing.Panels[0], 0);

    /// <summary>The leading edge at the tip alone.</summary>
    internal static Point3 TipLeading(WingShape wing) => wing.InPlace(wing.Panels[^1].OnChordLine(wing.Panels[^1].Length, 0));

    private static WingChord Edges(WingShape wing, WingPanel panel, double along) =>
        new(wing.InPlace(panel.OnChordLine(along, 0)), wing.InPlace(panel.OnChordLine(along, 1)));
}

/// <summary>A chord line in place.</summary>
/// <param name="Leading">Its leading edge.</param>
/// <param name="Trailing">Its trailing edge.</param>
public sealed record WingChord(Point3 Leading, Point3 Trailing);
