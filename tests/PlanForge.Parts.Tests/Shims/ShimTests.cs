using PlanForge.Airframe;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Shims;

public class ShimTests
{
    [Theory]
    [InlineData(200, 1, 3.4910)] // shared/check-values.md 12.11: L tan i
    [InlineData(200, 2, 6.9842)]
    [InlineData(250, 3, 13.1019)]
    public void A_shim_is_its_base_times_the_tangent_thick(double length, double angle, double expected)
    {
        var description = Description.PlateOnBox(0, 0);
        description = description with
        {
            Wing = description.Wing with { Panels = [description.Wing.Panels[0] with { Tip = new(new PlateSection(), length, Nowhere) }], Root = new(new PlateSection(), length, Nowhere) },
            Shims = new(Degrees(-angle), Degrees(angle), Degrees(angle), 12, Nowhere),
        };
        var part = Description.Single(description, "shims-wing");
        Assert.Equal(expected, part.Value(FormattableString.Invariant($"shims.wing.{angle}")), 4);
        Assert.Equal(expected, part.Value(FormattableString.Invariant($"shims.wing.{-angle}")), 4);
    }

    [Fact]
    public void More_incidence_puts_the_thick_end_in_front_under_a_high_wing_and_behind_over_a_low_one()
    {
        var high = Description.PlateOnBox(0, 0);
        Assert.Equal("3.49", RowOf(high, "+1°")[1]);
        Assert.Equal("0", RowOf(high, "+1°")[2]);
        var low = high with { Wing = high.Wing with { Placement = WingPlacement.Low } };
        Assert.Equal("0", RowOf(low, "+1°")[1]);
        Assert.Equal("3.49", RowOf(low, "+1°")[2]);
    }

    [Fact]
    public void No_shim_is_made_for_no_change()
    {
        var rows = Description.Single(Description.PlateOnBox(0, 0), "shims-wing").Tables[0].Rows;
        Assert.Equal(["-1°", "-0.5°", "+0.5°", "+1°"], rows.Select(row => row[0]));
    }

    private static IReadOnlyList<string> RowOf(AirframeDescription description, string change) =>
        Description.Single(description, "shims-wing").Tables[0].Rows.Single(row => row[0] == change);
}
