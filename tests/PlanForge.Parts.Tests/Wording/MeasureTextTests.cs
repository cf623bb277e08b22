using CsCheck;
using PlanForge.Airframe;
using PlanForge.Parts.Wording;

namespace PlanForge.Parts.Tests.Wording;

public class MeasureTextTests
{
    // 1 in = 25.4 mm exactly (NIST SP 811 App. B.8, through shared/check-values.md section 11).
    [Theory]
    [InlineData(25.4, "1")]
    [InlineData(0.79375, "1/32")]
    [InlineData(57.15, "2 1/4")]
    [InlineData(-9.525, "-3/8")]
    [InlineData(0.01, "0")]
    [InlineData(-0.01, "0")]
    [InlineData(25.36, "1")]
    [InlineData(25.3, "0.996")]
    [InlineData(0.1, "0.004")]
    public void Inches_are_a_sixty_fourth_where_they_are_one_and_thousandths_elsewhere(double millimetres, string expected) =>
        Assert.Equal(expected, new MeasureText(DisplayUnit.Inch).Coarse(millimetres));

    [Theory]
    [InlineData(DisplayUnit.Millimetre, 92.075, "92.1 mm [3 5/8 in]", "92.08 mm [3.625 in]")]
    [InlineData(DisplayUnit.Centimetre, 12.7, "1.27 cm [1/2 in]", "1.27 cm [0.5 in]")]
    [InlineData(DisplayUnit.Inch, 19.05, "3/4 in [19.1 mm]", "0.75 in [19.05 mm]")]
    public void Both_units_stand_beside_each_other_where_wanted(DisplayUnit unit, double millimetres, string coarse, string fine)
    {
        var text = new MeasureText(unit, showsBoth: true);
        Assert.Equal(coarse, text.CoarseWithUnit(millimetres));
        Assert.Equal(fine, text.FineWithUnit(millimetres));
    }

    [Theory]
    [InlineData(DisplayUnit.Millimetre, 12.345, "12.3", "12.35")]
    [InlineData(DisplayUnit.Centimetre, 12.345, "1.23", "1.235")]
    [InlineData(DisplayUnit.Millimetre, -0.001, "0", "0")]
    [InlineData(DisplayUnit.Inch, 25.4254, "1", "1.001")]
    public void Lengths_are_written_in_the_descriptions_unit(DisplayUnit unit, double millimetres, string coarse, string fine)
    {
        var text = new MeasureText(unit);
        Assert.Equal(coarse, text.Coarse(millimetres));
        Assert.Equal(fine, text.Fine(millimetres));
    }

    [Fact]
    public void Inches_read_back_are_within_the_two_thousandths_at_which_a_fraction_is_written() => Gen.Double[0, 2000].Sample(
        millimetres =>
        {
            var inches = new MeasureText(DisplayUnit.Inch).Coarse(millimetres).Split(' ', '/').Select(double.Parse).ToArray();
            var read = inches.Length switch { 1 => inches[0], 2 => inches[0] / inches[1], _ => inches[0] + (inches[1] / inches[2]) };
            Assert.Equal(millimetres / 25.4, read, tolerance: 0.002 + 1e-9);
        },
        iter: 2000);
}
