using PlanForge.Airframe;
using PlanForge.Parts.Bench.Setup;
using PlanForge.Parts.Dowels;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Bench.Setup;

public class DrillingAndThrustTests
{
    // Closed form: the axis climbs towards the nose by the incidence; plates of 4 mm, 20 apart, have their middles 2 and 26 behind the face.
    [Fact]
    public void Holes_of_the_guide_drop_with_the_tangent_of_the_incidence_behind_the_former()
    {
        var description = WithDowels(2);
        var near = Description.Single(description, "drill-guide-F-near");
        var far = Description.Single(description, "drill-guide-F-far");
        Assert.Equal(-2 * Math.Tan(Degrees(2)), near.Value("drill_guide.near.drop"), 9);
        Assert.Equal(-26 * Math.Tan(Degrees(2)), far.Value("drill_guide.far.drop"), 9);
        Assert.Equal(near.Lines(LineUse.Cut).First().Bounds, far.Lines(LineUse.Cut).First().Bounds);
    }

    [Fact]
    public void Both_hands_of_the_guide_are_mirror_images_on_the_axes()
    {
        var description = WithDowels(1);
        var part = Description.Single(description, "drill-guide-F-far");
        var holes = part.Lines(LineUse.Cut).Skip(1).Select(hole => hole.Bounds.Centre).OrderBy(centre => centre.X).ToList();
        var axis = DowelAxis.Of(Description.Rigged(description))!;
        Assert.Equal(2, holes.Count);
        Assert.Equal(-25, holes[0].X, 6);
        Assert.Equal(25, holes[1].X, 6);
        Assert.All(holes, hole => Assert.Equal(axis.HeightAt(93 + 26), hole.Y, 6));
    }

    // Closed form: bolts square to a chord at 3 degrees lean 60 tan 3° over a gauge 60 high; the upper end leans aft.
    [Fact]
    public void The_gauge_on_the_plate_leans_by_the_incidence()
    {
        var description = Description.PlateOnBox(0, 3) with
        {
            Bolts = new("M5", 40, 30, new("ply", 4, 40, 0, Nowhere), Nowhere),
        };
        var over = Description.Single(description, "bolt-gauge-plate").Value("bolt_gauge.plate.over");
        Assert.Equal(60 * Math.Tan(Degrees(3)), over, 9);

        // On the flat wing the same edge is square to the lower edge.
        var gauge = Description.Single(description, "bolt-gauge-wing").Lines(LineUse.Cut).Single();
        var corner = gauge.Segments.Zip(gauge.Segments.Skip(1)).First();
        Assert.Equal(0, corner.First.DirectionAt(1).Dot(corner.Second.DirectionAt(0)), 9);
    }

    // Closed form: pattern times the tangent of the angle. Down-thrust needs washers above; thrust to starboard needs them to port.
    [Theory]
    [InlineData(2, 0, 1.3968, 1.3968, 0, 0)] // 40 tan 2° = 1.39683
    [InlineData(0, 2, 1.3968, 0, 1.3968, 0)]
    [InlineData(2, 1.5, 2.4443, 1.3968, 1.0474, 0)] // 40 tan 1.5° = 1.04744
    [InlineData(-2, 0, 0, 0, 1.3968, 1.3968)]
    [InlineData(0, -1.5, 0, 1.0474, 0, 1.0474)]
    public void Washers_are_the_pattern_times_the_tangent_and_nothing_at_the_least(
        double down, double right, double upperPort, double upperStarboard, double lowerPort, double lowerStarboard)
    {
        var mount = new MountDescription(40, 40, Nowhere);
        var washers = ThrustWashers.Of(new(Degrees(down), Degrees(right), mount, Nowhere), mount);
        Assert.Equal(
            [upperPort, upperStarboard, lowerPort, lowerStarboard],
            washers.Named.Select(washer => washer.Thickness),
            (a, b) => Math.Abs(a - b) < 1e-4);
    }

    [Fact]
    public void Without_a_mount_there_are_no_washers()
    {
        var description = Description.PlateOnBox(0, 0) with { ThrustLine = new(Degrees(2), 0, null, Nowhere) };
        Assert.DoesNotContain(PartList.Of(description).Parts, part => part.Id == "thrust-washers");
        description = description with { ThrustLine = new(Degrees(2), 0, new(40, 30, Nowhere), Nowhere) };
        Assert.Equal(30 * Math.Tan(Degrees(2)), Description.Single(description, "thrust-washers").Value("thrust.washer.upper_port"), 9);
    }

    private static AirframeDescription WithDowels(double incidence) =>
        Description.PlateOnBox(0, incidence, Description.Former("F", 90) with { IsCrossFormer = true }) with
        {
            Dowels = new(8, 50, 0, 12, 0.1, Nowhere),
        };
}
