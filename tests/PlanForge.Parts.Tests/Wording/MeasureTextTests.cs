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
    [InlineData(0.1, "0")]
    [InlineData(-0.1, "0")]
    [InlineData(25.3, "1")]
    public void Inches_for_marking_out_are_the_nearest_sixty_fourth_in_lowest_terms(double millimetres, string expected) =>
        Assert.Equal(expected, new MeasureText(DisplayUnit.Inch).Coarse(millimetres));

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
    public void A_fraction_read_back_is_within_half_a_sixty_fourth() => Gen.Double[0, 2000].Sample(
        millimetres =>
        {
            var inches = new MeasureText(DisplayUnit.Inch).Coarse(millimetres).Split(' ', '/').Select(double.Parse).ToArray();
            var read = inches.Length switch { 1 => inches[0], 2 => inches[0] / inches[1], _ => inches[0] + (inches[1] / inches[2]) };
            Assert.Equal(millimetres / 25.4, read, tolerance: (0.5 / 64) + 1e-12);
        },
        iter: 2000);
}
