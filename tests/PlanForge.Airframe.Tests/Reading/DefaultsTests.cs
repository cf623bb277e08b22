using PlanForge.Airframe.Diagnostics;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>What a description that gives only what is required says. The values are those the format promises.</summary>
public class DefaultsTests
{
    private static readonly AirframeDescription Airframe = Description.ReadSound(BrokenDescription.Sound);

    [Fact]
    public void What_is_absent_has_its_default()
    {
        var at = Airframe.Saddle.At;
        Assert.Equal(("", "", 0, 0), (Airframe.Issue.Revision, Airframe.Issue.Owner, Airframe.Notes.Length, Airframe.Parameters.Length));
        Assert.Equal(WingPlacement.High, Airframe.Wing.Placement);
        Assert.Equal(new IncidenceDescription(0, IncidenceReference.Chord, Airframe.Wing.At), Airframe.Wing.Incidence);
        Assert.Equal(default, Airframe.Fuselage.Skin);
        Assert.Empty(Airframe.Fuselage.Longerons);
        Assert.All(Airframe.Fuselage.Stations, s => Assert.Equal((default, Run.Straight), (s.Shape, s.RunAft)));
        Assert.Empty(Airframe.Formers);
        Assert.Equal(new SaddleDescription(0, 0, 25, 0, 40, null, null, at), Airframe.Saddle);
        Assert.Null(Airframe.Dowels);
        Assert.Null(Airframe.Bolts);
        Assert.Null(Airframe.Tailplane);
        Assert.Equal(new ShimsDescription(Degrees(-1), Degrees(1), Degrees(0.5), 12, at), Airframe.Shims);
        Assert.Null(Airframe.ThrustLine);
        Assert.Equal(new BenchDescription(10, 50, new(null, null, "light ply", 4, 60, at), new(null, null, at), null, at), Airframe.Bench);
        Assert.Empty(Airframe.Stock);
        var sheets = Airframe.Sheets;
        Assert.Equal(new("A3", null, null), sheets.Paper);
        Assert.Equal((false, false, false, at), (sheets.IsPortrait, sheets.IsThirdAngle, sheets.HasBothUnits, sheets.At));
        Assert.Equal(new TileDescription(new("A4", null, null), 10, 10, at), Assert.Single(sheets.Tiles));
        Assert.Equal(("", "", "", 0), (Airframe.Issue.Creator, Airframe.Issue.Approver, Airframe.Issue.Date, Airframe.Issue.Revisions.Length));
        Assert.Equal(new CutterDescription(null, at), Airframe.Cutter);
    }

    [Fact]
    public void What_is_absent_in_a_mapping_has_its_default()
    {
        var airframe = Description.ReadSound(BrokenDescription.Sound + """
            retention:
              dowels: {diameter: 8, protrusion: 12}
              bolts: {thread: 1/4-20, ahead_of_trailing_edge: 20, plate: {thickness: 4}}
            tailplane: {leading_edge: {station: 500, height: 0}, span: 300, root: {section: naca 0009, chord: 80}}
            thrust_line: {down: 2}
            """);
        var dowels = airframe.Dowels!;
        Assert.Equal((0.0, 0.0, 0.1), (dowels.Spacing, dowels.AboveChord, dowels.Fit));
        var bolts = airframe.Bolts!;
        Assert.Equal((0.0, "", 40.0, 0.0), (bolts.Spacing, bolts.Plate.Material, bolts.Plate.Length, bolts.Plate.Gap));
        var tailplane = airframe.Tailplane!;
        Assert.Equal(("NACA 0009", 80.0, 0.0, 20.0), (tailplane.Tip.Section.Name, tailplane.Tip.Chord, tailplane.Sweep, tailplane.SeatWidth));
        Assert.Equal(0, airframe.ThrustLine!.Right);
        Assert.Null(airframe.ThrustLine.Mount);
    }

    [Fact]
    public void Skins_not_given_are_as_the_sides()
    {
        var text = BrokenDescription.Sound.Replace("fuselage:", "fuselage:\n  skin: {side: 3, top: 2}", StringComparison.Ordinal);
        Assert.Equal(new SkinDescription(3, 2, 3), Description.ReadSound(text).Fuselage.Skin);
    }

    // Lengths among the defaults carry their unit: they stay what they are in a description in inches.
    [Fact]
    public void Defaults_do_not_depend_on_the_unit_of_the_description()
    {
        var inches = Description.ReadSound(BrokenDescription.Sound.Replace("units: mm", "units: in", StringComparison.Ordinal));
        Assert.Equal(Airframe.Saddle with { At = default }, inches.Saddle with { At = default });
        Assert.Equal(Airframe.Bench with { At = default }, inches.Bench with { At = default });
        Assert.Equal(5080, inches.Wing.Root.Chord);
    }

    [Fact]
    public void What_the_description_does_not_give_stands_where_it_would() =>
        Assert.Equal(new SourcePosition("complete.yaml", 1, 1, 9), Airframe.Saddle.At);

    private static double Degrees(double degrees) => degrees * (Math.PI / 180);
}
