using CsCheck;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

public sealed class ScaledSectionTests
{
    [Fact]
    public void A_scaled_section_has_the_thickness_and_camber_asked_for() =>
        Gen.Select(Naca.Designations, Gen.Double[0.02, 0.25], Gen.Double[0.005, 0.08]).Sample(
            (digits, thickness, camber) =>
            {
                var section = Naca.Section(digits);
                double? bend = section.Camber == 0 ? null : camber;
                var scaled = Scaled(section, thickness, bend);
                Assert.Equal(thickness, scaled.Thickness, 1e-12);
                Assert.Equal(bend ?? 0, scaled.Camber, 1e-12);
            },
            iter: 100);

    // NACA Report 460: ordinates of symmetrical sections are in proportion to their thickness.
    [Fact]
    public void A_symmetrical_section_scaled_is_the_one_of_the_other_designation()
    {
        Section six = Naca.Section("0006"), twelve = Naca.Section("0012");
        var scaled = Scaled(twelve, six.Thickness, null);
        Assert.Equal(0, DatText.Difference(six, scaled), 1e-15);
        Assert.Equal("NACA 0012, 6 % thick", scaled.Name);
    }

    [Fact]
    public void What_is_not_asked_for_stays()
    {
        var section = Naca.Section("4412");
        Assert.Equal(0, DatText.Difference(section, Scaled(section, null, null)), 1e-16);
        var thin = Scaled(section, 0.08, null);
        Assert.Equal(section.Camber, thin.Camber, 1e-14);
        var flat = Scaled(section, null, 0);
        Assert.Equal(section.Thickness, flat.Thickness, 1e-14);
        Assert.Equal(flat.Upper(0.4).Y, -flat.Lower(0.4).Y, 1e-16);
    }

    [Fact]
    public void Both_surfaces_break_where_either_did()
    {
        var section = Naca.Section("2412");
        var scaled = Scaled(section, 0.1, 0.03);
        Assert.Equal(section.UpperBreaks.Concat(section.LowerBreaks).Order(), scaled.UpperBreaks);
        Assert.Equal(scaled.UpperBreaks, scaled.LowerBreaks);
        Assert.Equal("NACA 2412, 10 % thick, 3 % camber", scaled.Name);
    }

    [Fact]
    public void Derivatives_agree_with_finite_differences() =>
        Gen.Select(Gen.Double[0.01, 0.6], Gen.Double[0.04, 0.2], Gen.Double[-0.05, 0.05]).Sample(
            (w, thickness, camber) =>
            {
                var scaled = Scaled(Naca.Section("2412"), thickness, camber);
                Assert.Equal(Naca.Rate(scaled.Upper, w), scaled.Upper(w).Dy, 1e-8);
                Assert.Equal(Naca.Rate(scaled.Lower, w), scaled.Lower(w).Dy, 1e-8);
            },
            iter: 200);

    [Fact]
    public void Camber_cannot_be_asked_of_a_symmetrical_section()
    {
        Assert.Null(ScaledSection.Create(Naca.Section("0012"), null, 0.02));
        Assert.NotNull(ScaledSection.Create(Naca.Section("0012"), null, 0));
    }

    [Theory]
    [InlineData(0.0, 0.02)]
    [InlineData(-0.1, 0.02)]
    [InlineData(double.NaN, 0.02)]
    [InlineData(double.PositiveInfinity, 0.02)]
    [InlineData(0.1, double.NaN)]
    public void Numbers_that_are_no_proportions_are_refused(double thickness, double camber) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ScaledSection.Create(Naca.Section("2412"), thickness, camber));

    private static ScaledSection Scaled(Section section, double? thickness, double? camber)
    {
        var scaled = ScaledSection.Create(section, thickness, camber);
        Assert.NotNull(scaled);
        return scaled;
    }
}
