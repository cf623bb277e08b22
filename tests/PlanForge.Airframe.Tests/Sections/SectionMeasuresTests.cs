using CsCheck;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

public sealed class SectionMeasuresTests
{
    // Source: the published half-thicknesses at 30 %, where these forms are thickest; the data file names their source.
    [Theory]
    [InlineData("0006", 1)]
    [InlineData("0010", 2)]
    [InlineData("0012", 3)]
    [InlineData("0015", 4)]
    public void Symmetrical_sections_are_as_thick_as_published_and_have_no_camber(string digits, int column)
    {
        var published = TableFile.Rows("symmetrical-half-thickness.txt").Single(row => row[0] == 30)[column];
        Assert.Equal(2 * published / 100, Naca.Section(digits).Thickness, 1.1e-6);
        Assert.Equal(0, Naca.Section(digits).Camber);
    }

    // What the digits of the designation say (NACA Report 460); measured upright instead of across the mean line: 5e-4.
    [Theory]
    [InlineData("2412", 0.12, 0.02)]
    [InlineData("4412", 0.12, 0.04)]
    [InlineData("4415", 0.15, 0.04)]
    [InlineData("6409", 0.09, 0.06)]
    public void Cambered_sections_measure_what_their_digits_say(string digits, double thickness, double camber)
    {
        Assert.Equal(thickness, Naca.Section(digits).Thickness, 5e-4);
        Assert.Equal(camber, Naca.Section(digits).Camber, 1e-4);
    }

    // Source: NACA Reports 502 / 352: 11.7 % at 30 %, over the flat, here over the chord that is 1.97° off it.
    [Fact]
    public void Clark_Y_is_as_thick_as_published()
    {
        var section = SectionFile.Read("clark-y.dat", TableFile.Text("clark-y.dat")).Section;
        Assert.NotNull(section);
        Assert.Equal(0.117, section.Thickness, 2e-4);
    }

    [Fact]
    public void Nothing_on_the_section_is_thicker_or_more_cambered_than_measured() =>
        Gen.Select(Naca.Designations, Gen.Double[0, 1]).Sample(
            (digits, w) =>
            {
                var section = Naca.Section(digits);
                double upper = section.Upper(w).Y, lower = section.Lower(w).Y;
                Assert.True(upper - lower <= section.Thickness + 1e-13);
                Assert.True(Math.Abs(upper + lower) / 2 <= Math.Abs(section.Camber) + 1e-13);
            },
            iter: 500);

    [Fact]
    public void A_section_bent_downwards_has_negative_camber()
    {
        var section = Naca.Section("2412");
        var turned = ScaledSection.Create(section, null, -0.03);
        Assert.NotNull(turned);
        Assert.Equal(-0.03, turned.Camber, 1e-13);
    }
}
