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

/// <summary>A whole description with plain defaults, for tests that change one thing.</summary>
internal static class Description
{
    public static FormerDescription Former(string name, double station, double thickness = 3) => new(
        name, station, thickness, "ply", GrainDirection.Across, false, default, null, [], null, [], [], Build.Nowhere);

    public static AirframeDescription Airframe(
        WingDescription wing, ImmutableArray<FuselageStation> stations, double skin = 3, params ImmutableArray<FormerDescription> formers) => new(
            "Test",
            new("", "", "", "", "", [], new Fingerprint([0, 0, 0, 0]), [Build.Nowhere, Build.Nowhere, Build.Nowhere, Build.Nowhere, Build.Nowhere, Build.Nowhere]),
            [],
            DisplayUnit.Millimetre,
            [],
            wing,
            new FuselageDescription(new(skin, skin, skin), stations, [], Build.Nowhere),
            formers,
            new SaddleDescription(0, 0, 25, 0, 40, null, null, Build.Nowhere),
            null,
            null,
            null,
            new ShimsDescription(Build.Degrees(-1), Build.Degrees(1), Build.Degrees(0.5), 12, Build.Nowhere),
            null,
            new BenchDescription(10, 50, new(null, null, "ply", 4, 60, Build.Nowhere), new(null, null, Build.Nowhere), null, Build.Nowhere),
            [],
            new SheetsDescription(new("A3", null, null), false, false, false, [], Build.Nowhere),
            new CutterDescription(null, Build.Nowhere));

    /// <summary>A plate wing of given dihedral and incidence (degrees) at station 100, height 60, on a box 90 wide.</summary>
    public static AirframeDescription PlateOnBox(double dihedral, double incidence, params ImmutableArray<FormerDescription> formers) => Airframe(
        Build.WingDescription(
            [new(600, Build.Degrees(dihedral), new(new PlateSection(), 200, Build.Nowhere), 0, 0, Build.Nowhere)],
            new PlateSection(),
            200,
            incidence,
            100,
            60),
        [Build.Box(0, 45, 90, -40), Build.Box(500, 45, 90, -40)],
        3,
        formers);

    public static RiggedAirframe Rigged(AirframeDescription description)
    {
        var findings = new List<Diagnostic>();
        var rigged = RiggedAirframe.Of(description, findings);
        Assert.DoesNotContain(findings, finding => finding.Severity == Severity.Error);
        return rigged!;
    }

    public static Part Single(AirframeDescription description, string id) => PartList.Of(description).Parts.Single(part => part.Id == id);

    public static double Value(this Part part, string key) => part.Figures.Single(figure => figure.Key == key).Value;

    public static IEnumerable<Geometry.Path2> Lines(this Part part, LineUse use) => part.Lines.Where(line => line.Use == use).Select(line => line.Path);
}
