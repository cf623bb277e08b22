using CsCheck;
using PlanForge.Geometry.Deviations;

namespace PlanForge.Geometry.Tests.Deviations;

public sealed class OutlineDeviationTests
{
    private const double Tolerance = 0.001;
    private const double Threshold = 0.05;

    [Fact]
    public void A_wider_rectangle_is_short_on_both_sides()
    {
        var found = Compare([Box(-40, 0, 40, 60)], [Box(-41, 0, 41, 60)]);

        Assert.Equal([DeviationSide.Lack, DeviationSide.Lack], found.Zones.Select(zone => zone.Side));
        Assert.All(found.Zones, zone => Assert.Equal(1, zone.Largest.Distance, 1e-9));
        Assert.Equal([-41, 41], found.Zones.Select(zone => zone.Middle.X).Order().Select(x => Math.Round(x, 6)));
        Assert.All(found.Zones, zone => Assert.Equal(30, zone.Middle.Y, 0.1));
        Assert.Null(found.WorstOf(DeviationSide.Surplus));
    }

    [Fact]
    public void A_narrower_rectangle_is_to_come_off_on_both_sides() =>
        Assert.Equal([DeviationSide.Surplus, DeviationSide.Surplus], Compare([Box(-41, 0, 41, 60)], [Box(-40, 0, 40, 60)]).Zones.Select(zone => zone.Side));

    [Fact]
    public void A_moved_rectangle_is_both()
    {
        var found = Compare([Box(0, 0, 40, 60)], [Box(0.5, 0, 40.5, 60)]);

        Assert.Equal(0.5, found.WorstOf(DeviationSide.Surplus)!.Largest.Distance, 1e-9);
        Assert.Equal(0.5, found.Zones.Single(zone => zone.Side == DeviationSide.Surplus).Middle.X, 1e-6);
        Assert.Equal(40.5, found.Zones.Single(zone => zone.Side == DeviationSide.Lack).Middle.X, 1e-6);
    }

    [Fact]
    public void A_larger_opening_is_wood_to_come_off()
    {
        var zone = Assert.Single(Compare([Box(0, 0, 60, 60), Hole(10)], [Box(0, 0, 60, 60), Hole(11)]).Zones);

        Assert.Equal((DeviationSide.Surplus, false, false), (zone.Side, zone.IsOnOld, zone.IsAlone));
        Assert.Equal(1, zone.Largest.Distance, 1e-9);
        Assert.True(zone.Run.IsClosed);
    }

    [Fact]
    public void A_new_opening_and_one_that_is_gone_stand_alone()
    {
        Path2 box = Box(0, 0, 60, 60), hole = Hole(10);
        var fresh = Assert.Single(Compare([box], [box, hole]).Zones);
        var gone = Assert.Single(Compare([box, hole], [box]).Zones);

        Assert.Equal((DeviationSide.Surplus, false, true), (fresh.Side, fresh.IsOnOld, fresh.IsAlone));
        Assert.Equal((DeviationSide.Lack, true, true), (gone.Side, gone.IsOnOld, gone.IsAlone));
    }

    [Fact]
    public void A_tab_that_goes_is_to_come_off_by_its_whole_height()
    {
        var tabbed = Path2.Polygon(new(0, 0), new(60, 0), new(60, 40), new(34, 40), new(34, 46), new(26, 46), new(26, 40), new(0, 40));
        var zone = Assert.Single(Compare([tabbed], [Box(0, 0, 60, 40)]).Zones);

        Assert.Equal(DeviationSide.Surplus, zone.Side);
        Assert.Equal(6, zone.Largest.Distance, Tolerance);
        Assert.Equal(40, zone.Largest.At.Y, 1e-9);
    }

    [Fact]
    public void What_is_under_the_threshold_makes_no_zone_and_is_measured()
    {
        var found = Compare([Box(0, 0, 60, 60)], [Box(0, 0, 60.03, 60)]);

        Assert.Empty(found.Zones);
        Assert.Equal(0.03, found.Largest.Distance, 1e-9);
    }

    [Fact]
    public void A_run_over_the_start_of_a_contour_is_one()
    {
        // The first vertex lies in the middle of the side that moves.
        var old = Path2.Polygon(new(30, 0), new(60, 0), new(60, 60), new(0, 60), new(0, 0));
        var now = Path2.Polygon(new(30, -1), new(60, -1), new(60, 60), new(0, 60), new(0, -1));

        Assert.Equal(30, Assert.Single(Compare(old: [old], now: [now]).Zones).Middle.X, 0.1);
    }

    [Fact]
    public void Turning_old_and_new_round_turns_the_sides_round() =>
        Gen.Select(Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.Star), Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.Star)).Sample(
            (a, b) =>
            {
                var (there, back) = (Compare([a], [b]), Compare([b], [a]));
                foreach (var (side, other) in new[] { (DeviationSide.Lack, DeviationSide.Surplus), (DeviationSide.Surplus, DeviationSide.Lack) })
                {
                    Assert.Equal(there.WorstOf(side)?.Largest.Distance ?? 0, back.WorstOf(other)?.Largest.Distance ?? 0, 0.02);
                }

                // The worst place of all is the worst of one side.
                Assert.Equal(there.Largest.Distance, there.Zones.Max(zone => zone.Largest.Distance), 0.02);
            },
            iter: 200);

    [Fact]
    public void Equal_outlines_do_not_differ() => Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.RoundedRectangle, Shapes.Star).Sample(
        outline =>
        {
            var found = Compare([outline], [outline.Reversed()]);
            Assert.Empty(found.Zones);
            Assert.InRange(found.Largest.Distance, 0, 1e-9);
        },
        iter: 200);

    private static OutlineDeviation Compare(IReadOnlyList<Path2> old, IReadOnlyList<Path2> now) => OutlineDeviation.Of(old, now, Tolerance, Threshold);

    private static Path2 Box(double left, double lower, double right, double upper) => Path2.Rectangle(new(left, lower, right, upper));

    private static Path2 Hole(double radius) => Path2.Circle(new(30, 30), radius).Reversed();
}
