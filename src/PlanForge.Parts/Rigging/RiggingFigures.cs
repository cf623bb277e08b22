using System.Collections.Immutable;
using PlanForge.Parts.Bench;

namespace PlanForge.Parts.Rigging;

/// <summary>The figures of the airframe as a whole: angles, spans, areas, pins.</summary>
/// <remarks>
/// Mean chords and their places: see <see cref="WingPlan"/>. Aspect ratio: span² over area. Tail moment distance: along the datum
/// line from the quarter chord of the wing's mean chord to that of the tailplane's. Tailplane volume ratio: tailplane area times
/// that distance over wing area times the wing's mean chord (Etkin and Reid, Dynamics of Flight; shared/check-values.md section 8).
/// Decalage: wing incidence less tailplane incidence, both of the root chord lines. Length: from the foremost to the rearmost
/// point of body, wing and tailplane along the datum line.
/// </remarks>
public static class RiggingFigures
{
    /// <summary>All figures, in the order a builder asks for them.</summary>
    public static ImmutableArray<Figure> Of(RiggedAirframe airframe)
    {
        var figures = ImmutableArray.CreateBuilder<Figure>();
        AddWing(airframe, figures);
        AddTailplane(airframe, figures);
        figures.Add(new("length", "Length over all", Arrangement.OverallLength.Of(airframe).Length, FigureQuantity.Length));
        if (airframe.Description.ThrustLine is { } thrust)
        {
            figures.Add(new("thrust.down", "Down-thrust", thrust.Down, FigureQuantity.Angle));
            figures.Add(new("thrust.right", "Side-thrust to starboard", thrust.Right, FigureQuantity.Angle));
        }

        var pins = PinPoints.Of(airframe);
        figures.Add(new("pins.across", "Pins, from the centre line", pins.Across, FigureQuantity.Length));
        figures.Add(new("pins.front", "Pins, front above the board", pins.FrontAboveBoard, FigureQuantity.Length));
        figures.Add(new("pins.rear", "Pins, rear above the board", pins.RearAboveBoard, FigureQuantity.Length));
        figures.Add(new("pins.rise", "Pins, front above rear", pins.Rise, FigureQuantity.Length));
        return figures.ToImmutable();
    }

    private static void AddWing(RiggedAirframe airframe, ImmutableArray<Figure>.Builder figures)
    {
        var wing = airframe.Wing;
        var plan = WingPlan.Of(wing);
        figures.Add(new("wing.span", "Wing span", plan.Span, FigureQuantity.Length));
        figures.Add(new("wing.area", "Wing area, projected", plan.Area, FigureQuantity.Area));
        figures.Add(new("wing.mean_chord", "Wing mean aerodynamic chord", plan.MeanChord, FigureQuantity.Length));
        var (leading, quarter) = (wing.InPlace(plan.MeanLeadingEdge), plan.QuarterChord(wing));
        figures.Add(new("wing.mean_chord.across", "Mean chord, from the centre line", leading.Y, FigureQuantity.Length));
        figures.Add(new("wing.mean_chord.station", "Mean chord, leading edge station", leading.X, FigureQuantity.Length));
        figures.Add(new("wing.mean_chord.quarter", "Mean chord, quarter chord station", quarter.X, FigureQuantity.Length));
        figures.Add(new("wing.aspect_ratio", "Wing aspect ratio", plan.AspectRatio, FigureQuantity.Number));
        figures.Add(new("wing.root_chord", "Wing root chord", wing.RootChord, FigureQuantity.Length));
        figures.Add(new("wing.tip_chord", "Wing tip chord", wing.Panels[^1].OuterChord, FigureQuantity.Length));
        figures.Add(new("wing.sweep", "Wing tip, leading edge aft of root", wing.Panels[^1].End.X, FigureQuantity.Length));
        figures.Add(new("wing.incidence", "Wing incidence, root chord line", wing.Incidence, FigureQuantity.Angle));
        if (airframe.Description.Wing.Root.Section.Underside is { } underside)
        {
            figures.Add(new("wing.incidence_underside", "Wing incidence, underside", wing.Incidence + underside.Angle, FigureQuantity.Angle));
        }

        figures.Add(new("wing.rise", "Wing rise over the root chord", wing.RootChord * Math.Sin(wing.Incidence), FigureQuantity.Length));
        for (var i = 0; i < wing.Panels.Length; i++)
        {
            var number = FormattableString.Invariant($"{i + 1}");
            figures.Add(new($"wing.panel.{number}.dihedral", $"Wing panel {number}, dihedral", wing.Panels[i].Dihedral, FigureQuantity.Angle));
            figures.Add(new($"wing.panel.{number}.twist", $"Wing panel {number}, twist at its tip", wing.Panels[i].OuterTwist, FigureQuantity.Angle));
        }

        var tip = Arrangement.ArrangedWing.Of(wing).Tip.Leading;
        figures.Add(new("wing.tip_height", "Wing tip, height of leading edge", tip.Z, FigureQuantity.Length));
    }

    private static void AddTailplane(RiggedAirframe airframe, ImmutableArray<Figure>.Builder figures)
    {
        if (airframe.Description.Tailplane is not { } tail || TailplaneShape.Of(tail) is not { } shape)
        {
            return;
        }

        WingPlan plan = WingPlan.Of(shape), wing = WingPlan.Of(airframe.Wing);
        var arm = plan.QuarterChord(shape).X - wing.QuarterChord(airframe.Wing).X;
        figures.Add(new("tailplane.span", "Tailplane span", plan.Span, FigureQuantity.Length));
        figures.Add(new("tailplane.area", "Tailplane area", plan.Area, FigureQuantity.Area));
        figures.Add(new("tailplane.root_chord", "Tailplane root chord", tail.Root.Chord, FigureQuantity.Length));
        figures.Add(new("tailplane.mean_chord", "Tailplane mean aerodynamic chord", plan.MeanChord, FigureQuantity.Length));
        figures.Add(new("tailplane.aspect_ratio", "Tailplane aspect ratio", plan.AspectRatio, FigureQuantity.Number));
        figures.Add(new("tailplane.moment_distance", "Tail moment distance", arm, FigureQuantity.Length));
        figures.Add(new("tailplane.volume_ratio", "Tailplane volume ratio", plan.Area * arm / (wing.Area * wing.MeanChord), FigureQuantity.Number));
        if (ChordIncidence.Of(tail.Incidence, tail.Root.Section) is { } incidence)
        {
            figures.Add(new("tailplane.incidence", "Tailplane incidence, root chord", incidence, FigureQuantity.Angle));
            figures.Add(new("decalage", "Decalage, wing less tailplane", airframe.Wing.Incidence - incidence, FigureQuantity.Angle));
        }
    }
}
