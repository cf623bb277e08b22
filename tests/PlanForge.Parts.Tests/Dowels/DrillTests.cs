using CsCheck;
using PlanForge.Airframe;
using PlanForge.Parts.Dowels;

namespace PlanForge.Parts.Tests.Dowels;

public class DrillTests
{
    // Tap and clearance drill chart, through shared/check-values.md section 6: names and inches.
    [Theory]
    [InlineData(0.1360, "#29")]
    [InlineData(0.1440, "#27")]
    [InlineData(0.1695, "#18")]
    [InlineData(0.1770, "#16")]
    [InlineData(0.1495, "#25")]
    [InlineData(0.1610, "#20")]
    [InlineData(0.1960, "#9")]
    [InlineData(0.2010, "#7")]
    [InlineData(0.1590, "#21")]
    [InlineData(0.2570, "F")]
    [InlineData(0.2660, "H")]
    [InlineData(0.0890, "#43")]
    [InlineData(0.0960, "#41")]
    [InlineData(0.1160, "#32")]
    [InlineData(0.1285, "#30")]
    [InlineData(0.1065, "#36")]
    [InlineData(0.21875, "7/32 in")]
    [InlineData(0.25, "1/4 in")]
    [InlineData(0.5, "1/2 in")]
    public void Inch_drills_have_the_names_of_the_published_chart(double inches, string name)
    {
        var drill = Drill.Nearest(inches * 25.4, DisplayUnit.Inch);
        Assert.Equal(name, drill.Name);
        Assert.Equal(inches * 25.4, drill.Diameter, 1e-9);
        Assert.True(drill.Fits(inches * 25.4));
    }

    // Tenths to 10 mm and halves above: from memory. Half way the larger, so that the dowel enters.
    [Theory]
    [InlineData(8.1, "8.1 mm", 8.1)]
    [InlineData(8.05, "8.1 mm", 8.1)]
    [InlineData(6.12, "6.1 mm", 6.1)]
    [InlineData(9.98, "10 mm", 10)]
    [InlineData(12.1, "12 mm", 12)]
    [InlineData(12.3, "12.5 mm", 12.5)]
    [InlineData(0.01, "0.1 mm", 0.1)]
    public void Metric_drills_come_in_tenths_to_10_mm_and_in_halves_above(double wanted, string name, double diameter)
    {
        var drill = Drill.Nearest(wanted, DisplayUnit.Millimetre);
        Assert.Equal((name, diameter), (drill.Name, Math.Round(drill.Diameter, 9)));
    }

    [Fact]
    public void The_nearest_inch_drill_is_never_farther_than_half_a_sixty_fourth() => Gen.Double[0.5, 26].Sample(
        wanted => Assert.True(Math.Abs(Drill.Nearest(wanted, DisplayUnit.Inch).Diameter - wanted) <= (25.4 / 128) + 1e-9), iter: 500);
}
