using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Sections;
using PlanForge.Geometry;
using PlanForge.Parts.Bench.Setup;
using PlanForge.Parts.Shapes;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Bench.Setup;

public class LevelRestTests
{
    public static TheoryData<string> All => Tests.Designs.All;

    // Closed form: the lower edge of a flat plate's level rest is straight and makes the incidence with the upper edge.
    [Theory]
    [InlineData(0)]
    [InlineData(1.2)]
    [InlineData(-2)]
    public void On_a_flat_plate_it_is_a_wedge_of_the_incidence(double incidence)
    {
        var wing = StraightWing(new PlateSection(), 200, 0, incidence, 100, 60);
        var rest = LevelRest.On(wing, WingSide.Upper, 300);
        Assert.True(Assert.Single(rest.Profile.Segments).IsLine);
        var edge = rest.Profile.End - rest.Profile.Start;
        Assert.Equal(Degrees(-incidence), edge.Angle, 9);
        Assert.Equal(200, edge.Length, 5);
        Assert.Equal(Degrees(incidence), rest.Incidence, 9);

        // Rise over the chord: the rear is higher by chord times the sine.
        Assert.Equal(200 * Math.Sin(Degrees(incidence)), rest.UpperAtRear - rest.Upper, 5);
    }

    // Closed form: twist grows linearly along the panel; half way out it is half of that at the tip.
    [Fact]
    public void Along_a_twisted_plate_the_wedge_is_incidence_and_twist()
    {
        ImmutableArray<PanelDescription> panels = [new(600, 0, new(new PlateSection(), 200, Nowhere), 0, Degrees(-2), Nowhere)];
        var wing = Wing(panels, new PlateSection(), 200, 1.5, 100, 60);
        foreach (var (across, twist) in new[] { (150.0, -0.5), (300, -1), (540, -1.8) })
        {
            var rest = LevelRest.On(wing, WingSide.Upper, across);
            Assert.Equal(Degrees(-1.5 - twist), (rest.Profile.End - rest.Profile.Start).Angle, 9);
            Assert.Equal(Degrees(1.5 + twist), rest.Incidence, 9);
        }
    }

    // NACA 4-digit thickness (NACA Report 460): the greatest half thickness of a 0012 is 6 % of the chord at 30 % of it.
    [Fact]
    public void On_a_level_symmetrical_section_the_lower_edge_rises_to_half_the_thickness()
    {
        var wing = StraightWing(NacaSection.TryCreate("0012", TrailingEdge.Open, out _)!, 200, 0, 0, 100, 60);
        var rest = LevelRest.On(wing, WingSide.Upper, 300);
        Assert.Equal(12, rest.Profile.Bounds.MaxY, 0.01);
        Assert.Equal(0, rest.Profile.Start.Y, 9);
        Assert.Equal(0, rest.Incidence, 9);
    }

    // The wing's own surface is the gauge: exact points of it, dense and off the samples, lie on the fitted edge.
    [Theory]
    [MemberData(nameof(All))]
    public void Its_lower_edge_is_the_wing_within_a_hundredth_of_a_millimetre(string name)
    {
        var wing = Tests.Designs.Rigged(name).Wing;
        foreach (var across in new[] { 0.2, 0.55, 0.9 })
        {
            var y = across * wing.HalfSpan;
            foreach (var side in new[] { WingSide.Upper, WingSide.Lower })
            {
                var rest = LevelRest.On(wing, side, y);
                var exact = new WingProfile(wing, side, y);
                var nose = exact.At(0).Point;
                for (var i = 0; i <= 777; i++)
                {
                    var at = exact.At(i / 777.0).Point;
                    var local = new Point2(at.X - nose.X, (side == WingSide.Upper ? 1 : -1) * (at.Y - nose.Y));
                    Assert.True(rest.Profile.DistanceTo(local) < 0.01, $"{name} at {y}: {rest.Profile.DistanceTo(local)}");
                }
            }
        }
    }

    // Another way to the same line: the former's cut through the wing at a station finds the height at the same half-breadth.
    [Theory]
    [MemberData(nameof(All))]
    public void It_agrees_with_the_cut_that_formers_get(string name)
    {
        var wing = Tests.Designs.Rigged(name).Wing;
        var y = 0.12 * wing.HalfSpan;
        foreach (var w in new[] { 0.3, 0.6, 0.9 })
        {
            var point = new WingProfile(wing, WingSide.Lower, y).At(w).Point;
            Assert.Equal(WingCut.HeightAt(wing, WingSide.Lower, 0, point.X, y)!.Value, point.Y, 6);
        }
    }

    [Fact]
    public void A_low_wing_gets_a_second_pair_for_its_underside()
    {
        Assert.Equal(["level-rest-wing-root", "level-rest-wing-tip"], Ids(Description.PlateOnBox(0, 0)));
        var low = Description.PlateOnBox(0, 0);
        Assert.Equal(
            ["level-rest-wing-root", "level-rest-wing-tip", "level-rest-wing-root-underside", "level-rest-wing-tip-underside"],
            Ids(low with { Wing = low.Wing with { Placement = WingPlacement.Low } }));
    }

    [Fact]
    public void They_stand_where_the_description_says_else_at_the_pins_and_near_the_tip()
    {
        var description = Description.PlateOnBox(0, 0);
        Assert.Equal(new(55, 540, 0), LevelRestPlaces.Of(Description.Rigged(description)));
        var given = description with { Bench = description.Bench with { LevelRests = new(80, 500, Nowhere) } };
        Assert.Equal(new(80, 500, 0), LevelRestPlaces.Of(Description.Rigged(given)));
    }

    private static IEnumerable<string> Ids(AirframeDescription description) =>
        PartList.Of(description).Parts.Where(part => part.Kind == "Level rests").Select(part => part.Id);
}
