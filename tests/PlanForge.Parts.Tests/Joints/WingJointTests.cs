using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Joints;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Joints;

public class WingJointTests
{
    [Fact]
    public void Trailing_edge_stands_where_the_chord_turned_by_the_incidence_ends()
    {
        // Chord c turned by i about the leading edge at (100, 60): (100 + c cos i, 60 − c sin i).
        var part = Description.Single(Description.PlateOnBox(0, 3), "wing-joint-side");
        Assert.Equal(100 + (200 * Math.Cos(Degrees(3))), part.Value("joint.trailing_edge.station"), 9);
        Assert.Equal(60 - (200 * Math.Sin(Degrees(3))), part.Value("joint.trailing_edge.height"), 9);
    }

    [Theory]
    [InlineData(0, 2)]
    [InlineData(4, 0)]
    public void Seat_of_a_plate_on_slab_sides_is_a_straight_line_at_the_dihedral(double dihedral, double incidence)
    {
        // At the side, y = 45 out, the plate lies 45 tan d above the centre line (both turned by the incidence i):
        // the seat's edge is the straight line z = 60 − (x − 100) tan i + 45 tan d / cos i.
        var part = Description.Single(Description.PlateOnBox(dihedral, incidence), "wing-joint-side");
        var near = part.Lines(LineUse.Edge).Single(path => path.Bounds.MaxY > 85);
        foreach (var station in new[] { 120.0, 180, 250 })
        {
            var height = 60 - ((station - 100) * Math.Tan(Degrees(incidence))) + (45 * Math.Tan(Degrees(dihedral)) / Math.Cos(Degrees(incidence)));
            Assert.True(near.DistanceTo(new(station, height)) < 0.01, $"the seat misses {height} at {station}");
        }
    }

    // Run on behind its end the body's ellipse has shrunk to nothing: there is no cross-section to draw.
    [Fact]
    public void A_wing_whose_quarter_chord_lies_behind_the_body_is_told_of_not_crashed_on()
    {
        const string Text = """
            planforge: 1
            name: Test
            units: mm
            wing: {leading_edge: {station: 282, height: 20}, incidence: 2 deg, root: {section: naca 2412, chord: 150}, panels: [{length: 400}]}
            fuselage:
              stations:
                - {station: 0, half_breadth: 30, upper: 30, lower: -30}
                - {station: 300, half_breadth: 1, upper: 22, lower: 16, shape: ellipse}
            """;
        var list = PartList.Of(Airframe.Reading.AirframeReader.Read("t.yaml", Text, _ => null).Airframe!);
        Assert.Contains(list.Findings, finding => finding.Severity == Airframe.Diagnostics.Severity.Error);
    }

    [Fact]
    public void The_body_goes_on_at_its_own_height_before_and_behind_the_seat()
    {
        var part = Description.Single(Description.PlateOnBox(0, 0), "wing-joint-side");
        var near = part.Lines(LineUse.Edge).Single(path => path.Bounds.MaxY > 85);
        Assert.Equal(0, near.DistanceTo(new(90, 90)), 6);
        Assert.Equal(0, near.DistanceTo(new(310, 90)), 6);
        Assert.Equal(new Bounds2(85, 60, 315, 90), Rounded(near.Bounds));

        static Bounds2 Rounded(Bounds2 b) => new(Math.Round(b.MinX, 4), Math.Round(b.MinY, 4), Math.Round(b.MaxX, 4), Math.Round(b.MaxY, 4));
    }

    [Fact]
    public void Faces_of_a_former_are_hidden_between_the_skins_and_the_wing()
    {
        // Skins of 3 on a box from −40 to 90, a level plate at 60 over it: from −37 to 60, 3 apart.
        var part = Description.Single(Description.PlateOnBox(0, 0, Description.Former("F2", 200)), "wing-joint-side");
        foreach (var station in new[] { 200.0, 203 })
        {
            var face = part.Lines(LineUse.Hidden).Single(path => path.Start.X == station && path.End.X == station);
            Assert.Equal((-37, 60), (Math.Round(face.Bounds.MinY, 6), Math.Round(face.Bounds.MaxY, 6)));
        }
    }

    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void Dowel_and_bolt_lie_where_their_own_templates_have_them(string design)
    {
        // The former's drilled hole and the bolt plate are drawn by other kinds: the assembly must agree with them.
        var airframe = Designs.Rigged(design);
        var parts = PartList.Of(airframe.Description).Parts;
        var side = new JointSideView(airframe);
        var former = airframe.Description.Formers.Single(former => former.IsCrossFormer);
        var middle = former.Station + (former.Thickness / 2);
        var holes = parts.Single(part => part.Id == $"former-{former.Name}").Lines(LineUse.Cut).Select(path => path.Bounds.Centre.Y);
        Assert.Contains(holes, height => Math.Abs(height - side.Dowel!.HeightAt(middle)) < 1e-6);

        var plate = airframe.Description.Bolts!.Plate;
        var drawn = parts.Single(part => part.Id == "wing-joint-side");
        Assert.Contains(
            drawn.Lines(LineUse.Hidden),
            path => path.IsClosed && Math.Abs(path.Bounds.Width - plate.Length) < 1e-9 && Math.Abs(path.Bounds.Height - plate.Thickness) < 1e-9);
    }

    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void Seat_line_is_the_saddle_line_of_the_templates_seen_from_the_side(string design)
    {
        var airframe = Designs.Rigged(design);
        var side = new JointSideView(airframe);
        foreach (var point in airframe.SaddleLine!.Points)
        {
            Assert.True(side.Body.Near.DistanceTo(new(point.Outer.X, point.Outer.Z)) < 0.01);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(6)]
    public void The_cross_section_shows_the_wing_as_a_v_of_the_dihedral(double dihedral)
    {
        // A plate without incidence: at y out it lies y tan d higher than on the centre line.
        var part = Description.Single(Description.PlateOnBox(dihedral, 0), "wing-joint-section");
        var wing = part.Lines(LineUse.Edge).First(path => Math.Abs(path.Bounds.Width - (2 * (45 + 25))) < 1e-6);
        foreach (var y in new[] { -60.0, -20, 0, 45 })
        {
            Assert.True(wing.DistanceTo(new(y, 60 + (Math.Abs(y) * Math.Tan(Degrees(dihedral))))) < 0.01);
        }
    }

    [Fact]
    public void The_outside_section_of_an_ellipse_is_that_ellipse()
    {
        // (y/30)² + (z/20)² = 1.
        var outline = BodySection.Outside(Body(0, Ellipse(0, 30, 20, -20), Ellipse(100, 30, 20, -20)), 50);
        for (var i = 0; i < 360; i++)
        {
            var angle = Degrees(i);
            Assert.True(outline.DistanceTo(new(30 * Math.Cos(angle), 20 * Math.Sin(angle))) < 0.01);
        }

        Assert.Equal(Math.PI * 30 * 20, outline.SignedArea, 0.5);
    }
}
