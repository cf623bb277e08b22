using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Sections;
using PlanForge.Parts.Shapes;

namespace PlanForge.Parts.Tests;

/// <summary>Short ways to put wings and bodies together in tests. Angles in degrees here, for reading.</summary>
internal static class Build
{
    public static readonly SourcePosition Nowhere = SourcePosition.WholeFile("test");

    public static double Degrees(double degrees) => degrees * Math.PI / 180;

    /// <summary>An untapered wing of one panel, root leading edge at (station, height).</summary>
    public static WingShape StraightWing(
        Section section, double chord, double dihedral, double incidence, double station, double height, double length = 600) =>
        Wing([new(length, Degrees(dihedral), new(section, chord, Nowhere), 0, 0, Nowhere)], section, chord, incidence, station, height);

    public static WingShape Wing(
        ImmutableArray<PanelDescription> panels, Section root, double chord, double incidence, double station, double height, WingPlacement placement = WingPlacement.High) =>
        WingShape.Of(WingDescription(panels, root, chord, incidence, station, height, placement), Degrees(incidence));

    public static WingDescription WingDescription(
        ImmutableArray<PanelDescription> panels, Section root, double chord, double incidence, double station, double height, WingPlacement placement = WingPlacement.High) =>
        new(
            placement,
            new SidePoint(station, height),
            new IncidenceDescription(Degrees(incidence), IncidenceReference.Chord, Nowhere),
            new SectionStation(root, chord, Nowhere),
            panels,
            Nowhere);

    public static FuselageStation Box(double station, double halfBreadth, double upper, double lower, Run run = Run.Straight) =>
        new(station, halfBreadth, halfBreadth, upper, lower, default, run, Nowhere);

    public static FuselageStation Ellipse(double station, double halfBreadth, double upper, double lower, Run run = Run.Straight)
    {
        var half = (upper - lower) / 2;
        return new(station, halfBreadth, halfBreadth, upper, lower, new(halfBreadth, half, halfBreadth, half), run, Nowhere);
    }

    public static FuselageShape Body(double skin, params ImmutableArray<FuselageStation> stations) => FuselageShape.Of(
        new FuselageDescription(new(skin, skin, skin), stations, [], Nowhere));
}

/// <summary>A plate of no thickness along the chord line: x = w, so that it has a tangent everywhere.</summary>
internal sealed class PlateSection : Section
{
    public override string Name => "plate";

    public override SectionPoint Upper(double w) => new(w, 0, 1, 0);

    public override SectionPoint Lower(double w) => new(w, 0, 1, 0);
}

/// <summary>A lower surface that is a circular arc through both ends, bulging down (or up when <paramref name="sagitta"/> is negative).</summary>
internal sealed class ArcSection(double sagitta) : Section
{
    private readonly double _radius = (0.25 + (sagitta * sagitta)) / (2 * Math.Abs(sagitta));

    public override string Name => "arc";

    public override SectionPoint Upper(double w) => new(w, 0, 1, 0);

    public override SectionPoint Lower(double w)
    {
        var fromMiddle = w - 0.5;
        var root = Math.Sqrt((_radius * _radius) - (fromMiddle * fromMiddle));
        var sign = Math.Sign(sagitta);
        return new(w, sign * (_radius - Math.Abs(sagitta) - root), 1, sign * fromMiddle / root);
    }
}
