using CsCheck;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

public sealed class BlendedSectionTests
{
    [Fact]
    public void A_blend_of_equal_sections_is_that_section() =>
        Gen.Select(Naca.Designations, Gen.Double[0, 1]).Sample(
            (digits, fraction) => Assert.Equal(
                0, DatText.Difference(Naca.Section(digits), BlendedSection.Create(Naca.Section(digits), Naca.Section(digits), fraction)), 1e-15),
            iter: 30);

    [Fact]
    public void A_blend_starts_at_the_first_section_and_ends_at_the_second_exactly()
    {
        Section first = Naca.Section("2412"), second = Naca.Section("23015");
        Assert.Equal(0, DatText.Difference(first, BlendedSection.Create(first, second, 0)));
        Assert.Equal(0, DatText.Difference(second, BlendedSection.Create(first, second, 1)));
    }

    // NACA Report 460: symmetrical ordinates are in proportion to thickness, so that half-way from 6 to 12 % lies 9 %.
    [Fact]
    public void Half_way_from_0006_to_0012_lies_0009()
    {
        var blend = BlendedSection.Create(Naca.Section("0006"), Naca.Section("0012"), 0.5);
        Assert.Equal(0, DatText.Difference(Naca.Section("0009"), blend), 1e-15);
        Assert.Equal("NACA 0006 to NACA 0012 at 50 %", blend.Name);
    }

    [Fact]
    public void A_blend_keeps_the_meaning_of_the_parameter_and_its_derivatives() =>
        Gen.Select(Naca.Designations, Naca.Designations, Gen.Double[0, 1], Gen.Double[0.01, 0.99]).Sample(
            (first, second, fraction, w) =>
            {
                var blend = BlendedSection.Create(Naca.Section(first), Naca.Section(second), fraction);
                double nose = blend.Upper(0).X, end = blend.Upper(1).X;
                Assert.Equal(nose + ((end - nose) * w * w), blend.Upper(w).X, 1e-15);
                if (blend.UpperBreaks.All(place => Math.Abs(place - w) > 1e-4))
                {
                    Assert.Equal(Naca.Rate(blend.Upper, w), blend.Upper(w).Dy, 1e-7);
                }
            },
            iter: 200);

    [Fact]
    public void A_blend_breaks_where_either_section_does()
    {
        Section first = Naca.Section("2412"), second = Naca.Section("23015");
        var blend = BlendedSection.Create(first, second, 0.3);
        Assert.Equal(first.UpperBreaks.Concat(second.UpperBreaks).Order(), blend.UpperBreaks);
        Assert.Equal(first.LowerBreaks.Concat(second.LowerBreaks).Order(), blend.LowerBreaks);
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_fraction_outside_the_way_is_refused(double fraction) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BlendedSection.Create(Naca.Section("0012"), Naca.Section("0009"), fraction));
}
