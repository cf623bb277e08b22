using PlanForge.Airframe;
using PlanForge.Parts.Saddles;
using PlanForge.Parts.Shapes;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Saddles;

// Closed forms: shared/check-values.md section 12, items 1 to 8, each derived there and recomputed here from elementary trigonometry.
public class SaddleClosedFormTests
{
    [Fact]
    public void Saddle_of_flat_wing_on_slab_side_is_straight_with_the_slope_of_both_angles()
    {
        const double w = 45, i = 3, g = 5;
        var line = Solve(StraightWing(new PlateSection(), 200, g, i, 100, 60), Body(0, Box(0, w, 90, -40), Box(500, w, 90, -40)));

        foreach (var point in line.Points)
        {
            // 12.1, panel tilted by G, then pitched by i: front slope tan G / cos i, along x slope −tan i.
            var rise = (w * Math.Tan(Degrees(g)) / Math.Cos(Degrees(i))) - ((point.Outer.X - 100) * Math.Tan(Degrees(i)));
            Assert.Equal(60 + rise, point.Outer.Z, 9);
            Assert.Equal(w, point.Outer.Y, 9);
        }
    }

    [Fact]
    public void Front_slope_of_a_tilted_and_pitched_plate_is_that_of_the_handbook()
    {
        // 12.1: 5 degrees of dihedral, 3 degrees of incidence: 0.087608728.
        var body = Body(0, Box(0, 40, 90, -40), Box(500, 50, 90, -40));
        var line = Solve(StraightWing(new PlateSection(), 200, 5, 3, 100, 60), body);
        var point = line.Points[0];
        var another = line.Points[^1];
        var slope = (another.Outer.Z - point.Outer.Z + ((another.Outer.X - point.Outer.X) * Math.Tan(Degrees(3)))) / (another.Outer.Y - point.Outer.Y);
        Assert.Equal(0.087608728, slope, 9);
    }

    [Fact]
    public void Saddle_on_a_converging_side_has_the_slope_of_the_three_angles_in_side_view_and_when_unrolled()
    {
        // 12.2 takes G as the trace angle at constant x: tan(trace) = tan(panel tilt)/cos i. i 3, t 2, G 5: 0.055462951 and 0.055429164.
        double i = Degrees(3), t = Degrees(2), trace = Degrees(5);
        var tilt = Math.Atan(Math.Tan(trace) * Math.Cos(i)) * 180 / Math.PI;
        var body = Body(0, Box(0, 60, 90, -40), Box(500, 60 - (500 * Math.Tan(t)), 90, -40));
        var line = Solve(StraightWing(new PlateSection(), 200, tilt, 3, 100, 60), body);
        var (first, last) = (line.Points[0].Outer, line.Points[^1].Outer);
        Assert.Equal(-0.055462951, (last.Z - first.Z) / (last.X - first.X), 9);

        var flat = SaddleDevelopment.Of(body, line, 20);
        var (a, b) = (flat.OuterAt(0).Place, flat.OuterAt(line.Points.Length - 1).Place);
        Assert.Equal(-0.055429164, (b.Y - a.Y) / (b.X - a.X), 9);
        Assert.Equal(0, flat.LeftoverError, 9);
    }

    [Theory]
    [InlineData(6, 20, 20.110166)] // 12.3: 20 mm at 6 degrees: 20.110166
    [InlineData(0, 20, 20)]
    public void A_section_cut_upright_grows_by_the_cosine_of_the_dihedral(double dihedral, double sagitta, double expected)
    {
        const double chord = 200, w = 45;
        var wing = StraightWing(new ArcSection(sagitta / chord), chord, dihedral, 0, 100, 60);
        var line = Solve(wing, Body(0, Box(0, w, 190, -140), Box(500, w, 190, -140)));
        var middle = line.AtStation(200)!;
        Assert.Equal(60 + (w * Math.Tan(Degrees(dihedral))) - expected, middle.Outer.Z, 6);
    }

    [Theory]
    [InlineData(5, 3.936990)] // 12.3: w 45, G 5
    [InlineData(3, 2.358350)] // 12.3: w 45, G 3
    public void Dihedral_raises_the_saddle_by_the_half_breadth_times_its_tangent(double dihedral, double expected)
    {
        var line = Solve(StraightWing(new PlateSection(), 200, dihedral, 0, 100, 60), Body(0, Box(0, 45, 90, -40), Box(500, 45, 90, -40)));
        Assert.All(line.Points, point => Assert.Equal(60 + expected, point.Outer.Z, 6));
    }

    [Theory]
    [InlineData(0, new[] { 46.364761, 46.364761, 46.364761 })]
    [InlineData(2, new[] { 44.144518, 46.364761, 48.513352 })]
    [InlineData(3, new[] { 43.001959, 46.364761, 49.565618 })]
    public void A_round_body_under_a_flat_wing_unrolls_to_the_arc_from_its_top(double incidence, double[] expected)
    {
        // 12.6: R 50 on x, underside at z = 30 − x tan i, developed arc from the top.
        const double radius = 50;
        var body = Body(0, Ellipse(-150, radius, radius, -radius), Ellipse(150, radius, radius, -radius));
        var wing = StraightWing(new PlateSection(), 240, 0, incidence, -120, 30 + (120 * Math.Tan(Degrees(incidence))));
        var line = Solve(wing, body);
        var flat = SaddleDevelopment.Of(body, line, 0);
        double[] stations = [-50, 0, 50];
        for (var i = 0; i < 3; i++)
        {
            var z = line.AtStation(stations[i])!.Outer.Z;
            var flatHeight = flat.At(stations[i], z).Y;

            // The edge at z = 0 lies a quarter circle from the top.
            Assert.Equal(expected[i], (radius * Math.PI / 2) - flatHeight, tolerance: 5e-5);
            Assert.Equal(radius * Math.Acos(z / radius), expected[i], 5);
        }

        Assert.InRange(flat.LeftoverError, 0, 1e-4);
    }

    [Fact]
    public void A_round_body_under_an_arched_wing_gives_the_tabled_heights_breadths_and_arcs()
    {
        // 12.7: round body R 50, circular-arc underside R 400 about (0, −370): an underside that arches over the body.
        const double radius = 50, chord = 200;
        var sagitta = 400 - Math.Sqrt((400 * 400) - (chord * chord / 4));
        var body = Body(0, Ellipse(-150, radius, radius, -radius), Ellipse(150, radius, radius, -radius));
        var wing = StraightWing(new ArcSection(-sagitta / chord), chord, 0, 0, -chord / 2, 30 - sagitta);
        var line = Solve(wing, body);
        var flat = SaddleDevelopment.Of(body, line, 0);
        (double X, double Z, double Y, double S)[] table =
        [
            (0, 30, 40, 46.364761),
            (20, 29.499687, 40.370391, 46.987262),
            (40, 27.994975, 41.428027, 48.826592),
            (60, 25.474399, 43.023889, 51.810335),
            (80, 21.918359, 44.939799, 55.850757),
        ];
        foreach (var (x, z, y, s) in table)
        {
            var point = line.AtStation(x)!;
            Assert.Equal(z, point.Outer.Z, 6);
            Assert.Equal(y, point.Outer.Y, 6);
            Assert.Equal(s, (radius * Math.PI / 2) - flat.At(x, point.Outer.Z).Y, tolerance: 2e-4);
        }
    }

    [Fact]
    public void Inner_line_lies_one_skin_thickness_inside_measured_along_the_normal()
    {
        // A side that converges by t: at constant station the skin measures thickness/cos t (12.10: 2.5 at its slope: 2.504496).
        var t = Math.Atan(6.0 / 100);
        var body = Body(2.5, Box(0, 60, 90, -40), Box(100, 54, 90, -40));
        Assert.Equal(2.504496, 2.5 / Math.Cos(t), 6);
        var line = Solve(StraightWing(new PlateSection(), 60, 0, 0, 20, 60), body);
        foreach (var point in line.Points)
        {
            var outsideThere = body.HalfBreadthAt(point.Inner.X, point.Inner.Z);
            Assert.Equal(2.504496, outsideThere - point.Inner.Y, 6);
            Assert.Equal(60, point.Inner.Z, 9);
        }
    }

    [Fact]
    public void Bevel_on_a_slab_side_is_the_dihedral()
    {
        var line = Solve(StraightWing(new PlateSection(), 200, 5, 0, 100, 60), Body(3, Box(0, 45, 90, -40), Box(500, 45, 90, -40)));
        Assert.All(line.Points, point => Assert.Equal(Degrees(5), point.Bevel, 12));

        // The inner line lies lower by the thickness times the tangent of the bevel.
        Assert.All(line.Points, point => Assert.Equal(3 * Math.Tan(Degrees(5)), point.Outer.Z - point.Inner.Z, 9));
    }

    [Fact]
    public void Seat_tape_lowers_the_saddle_by_its_thickness_square_to_the_underside()
    {
        var body = Body(0, Box(0, 45, 90, -40), Box(500, 45, 90, -40));
        var wing = StraightWing(new PlateSection(), 200, 0, 4, 100, 60);
        var bare = SaddleLine.Solve(wing, body, WingSide.Lower, 0, null, null)!;
        var taped = SaddleLine.Solve(wing, body, WingSide.Lower, 1, null, null)!;
        var drop = bare.AtStation(200)!.Outer.Z - taped.AtStation(200)!.Outer.Z;
        Assert.Equal(1 / Math.Cos(Degrees(4)), drop, 9);
    }

    [Fact]
    public void A_fold_of_the_side_in_plan_unrolls_to_its_true_length()
    {
        // Two flats that meet at station 200: the edge's length is the sum of two hypotenuses, and nothing is left over.
        var body = Body(0, Box(0, 50, 90, -40), Box(200, 50, 90, -40), Box(400, 30, 90, -40));
        var line = Solve(StraightWing(new PlateSection(), 200, 3, 2, 100, 60), body);
        var flat = SaddleDevelopment.Of(body, line, 20);
        var aft = (line.To - 200) * Math.Sqrt(1 + (0.1 * 0.1));
        Assert.Equal(200 - line.From + aft, (flat.Edge[^1] - flat.Edge[0]).Length, 9);
        Assert.Equal(0, flat.LeftoverError, 9);
        Assert.All(flat.Edge, edge => Assert.Equal(20, edge.Y, 9));
    }

    [Fact]
    public void A_side_curved_both_ways_reports_what_cannot_be_unrolled()
    {
        var body = Body(
            0, Ellipse(0, 20, 20, -20, Run.Fair), Ellipse(150, 60, 60, -60, Run.Fair), Ellipse(300, 20, 20, -20, Run.Fair));
        var line = Solve(StraightWing(new PlateSection(), 160, 0, 0, 70, 20), body);
        Assert.True(SaddleDevelopment.Of(body, line, -10).LeftoverError > 0.01);
    }

    [Fact]
    public void A_wing_that_passes_beside_the_body_has_no_saddle()
    {
        var body = Body(0, Box(0, 45, 90, -40), Box(500, 45, 90, -40));
        Assert.Null(SaddleLine.Solve(StraightWing(new PlateSection(), 200, 0, 0, 100, 60, length: 30), body, WingSide.Lower, 0, null, null));
    }

    private static SaddleLine Solve(WingShape wing, FuselageShape body) =>
        SaddleLine.Solve(wing, body, WingSide.Lower, 0, null, null)!;
}
