using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Shapes;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Arrangement;

public class ArrangementViewsTests
{
    [Fact]
    public void Outlines_of_a_box_body_pass_through_its_stations_and_run_straight_between_them()
    {
        // By definition of the description: a straight run joins the stations' values by straight lines.
        var stations = new[] { Box(0, 30, 40, -20), Box(200, 45, 90, -40), Box(900, 20, 70, 0) };
        var description = Description.PlateOnBox(0, 0);
        var views = ArrangementViews.Of(Description.Rigged(
            description with { Fuselage = description.Fuselage with { Stations = [.. stations] } }));
        for (var i = 0; i + 1 < stations.Length; i++)
        {
            foreach (var t in new[] { 0, 0.3, 1 })
            {
                double At(Func<Airframe.FuselageStation, double> value) => value(stations[i]) + ((value(stations[i + 1]) - value(stations[i])) * t);
                var station = At(s => s.Station);
                AssertOn(views.Side, new(station, At(s => s.Upper)));
                AssertOn(views.Side, new(station, At(s => s.Lower)));
                AssertOn(views.Plan, new(station, At(s => s.UpperHalfBreadth)));
                AssertOn(views.Plan, new(station, -At(s => s.UpperHalfBreadth)));
            }
        }
    }

    [Theory]
    [InlineData(5, 600)]
    [InlineData(0, 600)]
    [InlineData(-3, 450)]
    public void A_level_wing_with_dihedral_carries_its_tip_at_length_times_sine(double dihedral, double length)
    {
        // The height of a straight line of length L at the angle d: L sin d; its breadth L cos d.
        var wing = StraightWing(new PlateSection(), 200, dihedral, 0, 100, 60, length);
        var tip = ArrangedWing.Of(wing);
        Assert.Equal(60 + (length * Math.Sin(Degrees(dihedral))), tip.Tip.Leading.Z, 9);
        Assert.Equal(length * Math.Cos(Degrees(dihedral)), tip.Across[^1], 9);
        Assert.Equal(200, tip.TipChord, 9);
    }

    [Fact]
    public void The_widest_place_of_a_leaning_rounded_side_is_where_rounding_outweighs_the_lean()
    {
        // A side leaning from 30 at the bottom to 50 at the top of a section 100 high with an upper corner 20 x 40:
        // y(θ) = lean(z) (1 − 20 (1 − cos θ)/50), z = 100 − 40 (1 − sin θ); its greatest value by dense tabulation.
        var body = Body(0, new(0, 50, 30, 100, 0, new(20, 40, 0, 0), default, Nowhere), new(100, 50, 30, 100, 0, new(20, 40, 0, 0), default, Nowhere));
        var greatest = 0.0;
        for (var i = 0; i <= 100_000; i++)
        {
            var angle = Math.PI / 2 * i / 100_000;
            var z = 100 - (40 * (1 - Math.Sin(angle)));
            greatest = Math.Max(greatest, (30 + (0.2 * z)) * (1 - (0.4 * (1 - Math.Cos(angle)))));
        }

        Assert.Equal(greatest, BodyCurves.Widest(body.Bays[0].At(50)).Value, 7);
    }

    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void Outlines_keep_to_the_exact_shape_within_a_hundredth(string design)
    {
        var airframe = Designs.Rigged(design);
        var views = ArrangementViews.Of(airframe);
        var body = airframe.Body;
        for (var i = 0; i <= 500; i++)
        {
            var station = body.From + ((body.To - body.From) * i / 500);
            AssertOn(views.Side, new(station, body.UpperAt(station)), 0.01);
            AssertOn(views.Side, new(station, body.LowerAt(station)), 0.01);

            // No place of the section is wider than the plan's outline, and one is as wide.
            var widest = Enumerable.Range(0, 401).Max(step =>
                body.HalfBreadthAt(station, body.LowerAt(station) + ((body.UpperAt(station) - body.LowerAt(station)) * step / 400)));
            AssertOn(views.Plan, new(station, widest), 0.02);
        }

        foreach (var side in new[] { WingSide.Lower, WingSide.Upper })
        {
            for (var i = 0; i <= 300; i++)
            {
                var w = Math.Max(1e-6, i / 300.0);
                var place = airframe.Wing.At(0, side, airframe.Wing.Range(0, side, w, 0).From, w).Point;
                AssertOn(views.Side, new(place.X, place.Z), 0.01);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void Views_share_stations_and_heights(string design)
    {
        var views = ArrangementViews.Of(Designs.Rigged(design));
        foreach (var wing in views.Tailplane is { } tail ? new[] { views.Wing, tail } : [views.Wing])
        {
            foreach (var edge in new[] { wing.Root.Leading, wing.Root.Trailing })
            {
                // The chord line's ends lie within the section's thickness there: half an open trailing edge, a cambered nose.
                AssertOn(views.Side, new(edge.X, edge.Z), 0.006 * wing.RootChord);
                AssertOn(views.Plan, new(edge.X, edge.Y), 1e-6);
            }

            foreach (var (leading, trailing) in wing.Joints)
            {
                AssertOn(views.Plan, new(leading.X, leading.Y), 1e-6);
                AssertOn(views.Plan, new(trailing.X, -trailing.Y), 1e-6);
            }
        }

        // Plan and front are mirror images of themselves in the centre plane, whatever is hidden.
        Assert.Equal(0, BoundsOf(views.Plan).MinY + BoundsOf(views.Plan).MaxY, 9);
        Assert.Equal(0, BoundsOf(views.Front).MinX + BoundsOf(views.Front).MaxX, 9);

        // At the tip the section leans with the panel: its upper and lower side lie up to half a thickness times sin d aside.
        var lean = 0.1 * views.Wing.TipChord * Math.Sin(views.Wing.Dihedrals[^1]);
        Assert.Equal(BoundsOf(views.Plan).MaxY, BoundsOf(views.Front).MaxX, lean + 0.1);
    }

    [Fact]
    public void A_body_above_hides_a_low_wing_and_a_high_wing_hides_the_body()
    {
        // A flat plate wing of breadth 200 through a box 90 wide: above the body, 200 of each side is hidden; below it, 90 of each edge.
        var high = ArrangementViews.Of(Description.Rigged(Description.PlateOnBox(0, 0)));
        Assert.Equal(2 * 200, HiddenLength(high.Plan), 6);
        var description = Description.PlateOnBox(0, 0);
        var low = ArrangementViews.Of(Description.Rigged(
            description with { Wing = description.Wing with { Placement = Airframe.WingPlacement.Low, LeadingEdge = new(100, -10) } }));
        Assert.Equal(2 * 90, HiddenLength(low.Plan), 6);
    }

    private static double HiddenLength(IEnumerable<PartLine> lines) =>
        lines.Where(line => line.Use == LineUse.Hidden).Sum(line => line.Path.Length);

    private static Bounds2 BoundsOf(IEnumerable<PartLine> lines) => lines
        .Where(line => line.Use is LineUse.Edge or LineUse.Hidden)
        .Aggregate(Bounds2.Empty, (all, line) => all.Joined(line.Path.Bounds));

    private static void AssertOn(IEnumerable<PartLine> lines, Point2 place, double tolerance = 1e-6)
    {
        var nearest = lines.Where(line => line.Use is LineUse.Edge or LineUse.Hidden).Min(line => line.Path.DistanceTo(place));
        Assert.True(nearest <= tolerance, $"{place} is {nearest} from the nearest edge.");
    }
}
