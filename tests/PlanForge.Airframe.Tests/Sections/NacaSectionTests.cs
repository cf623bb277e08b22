using CsCheck;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

public sealed class NacaSectionTests
{
    private const double Percent = 0.01;

    // The published symmetrical table has four decimals of a percent: half a unit of the last, and a trace for ties.
    [Theory]
    [InlineData("0006", 1)]
    [InlineData("0010", 2)]
    [InlineData("0012", 3)]
    [InlineData("0015", 4)]
    public void Symmetrical_sections_have_the_published_half_thicknesses(string digits, int column)
    {
        var section = Naca.Section(digits);
        foreach (var row in TableFile.Rows("symmetrical-half-thickness.txt"))
        {
            Assert.Equal(row[column], Naca.HeightAt(section.Upper, row[0] * Percent) / Percent, 5.001e-5);
            Assert.Equal(-row[column], Naca.HeightAt(section.Lower, row[0] * Percent) / Percent, 5.001e-5);
        }
    }

    // Published lists are rounded to 0.01 % chord and a little off the exact construction: the tolerances are the greatest
    // differences from the perpendicular construction that were found over every value, rounded up.
    [Theory]
    [InlineData("2412", 0.02)]
    [InlineData("4412", 0.015)]
    [InlineData("4415", 0.025)]
    [InlineData("23012", 0.035)]
    public void Cambered_sections_have_the_published_ordinates_at_round_stations(string digits, double tolerance)
    {
        var section = Naca.Section(digits);
        foreach (var row in TableFile.Rows($"published-{digits}.txt").Where(row => row[0] is > 0 and < 100))
        {
            Assert.Equal(row[1], Naca.HeightAt(section.Upper, row[0] * Percent) / Percent, tolerance);
            Assert.Equal(row[2], Naca.HeightAt(section.Lower, row[0] * Percent) / Percent, tolerance);
        }
    }

    // The recomputed 23012 seems to use finer constants than the published r and k1: 2e-3 instead of 1e-4 % chord.
    [Theory]
    [InlineData("2412", 1e-4)]
    [InlineData("4412", 1e-4)]
    [InlineData("4415", 1e-4)]
    [InlineData("23012", 2e-3)]
    public void Cambered_sections_pass_through_the_constructed_points(string digits, double tolerance)
    {
        var section = Naca.Section(digits);
        foreach (var row in TableFile.Rows($"construction-{digits}.txt"))
        {
            // The leading edge of the mean line lies on the lower surface, just below the nose.
            var upper = row[0] == 0 ? section.Lower : (Func<double, SectionPoint>)section.Upper;
            Assert.Equal(0, Naca.DistanceTo(upper, row[0] * Percent, row[1] * Percent) / Percent, tolerance);
            Assert.Equal(0, Naca.DistanceTo(section.Lower, row[2] * Percent, row[3] * Percent) / Percent, tolerance);
        }
    }

    // Adding the thickness vertically would give 2.140 % for the upper surface of 4412 at 1.25 %; published is 2.44 %.
    [Fact]
    public void Thickness_is_laid_off_at_right_angles_to_the_mean_line() =>
        Assert.Equal(2.448, Naca.HeightAt(Naca.Section("4412").Upper, 0.0125) / Percent, 5e-4);

    // Source: the formulas of NACA Reports 460 and 537, evaluated by the plain construction in Naca.Construction.
    [Fact]
    public void Every_section_passes_through_its_constructed_points_to_rounding() =>
        Gen.Select(Naca.Designations, Gen.Double[0, 1]).Sample(
            (digits, root) =>
            {
                var section = Naca.Section(digits);
                var (xu, yu, xl, yl) = Naca.Construction(digits, root * root);

                // A short stretch of the upper construction lies below the nose and belongs to the lower surface.
                var upper = root < 0.3 && yu < section.Upper(0).Y ? section.Lower : (Func<double, SectionPoint>)section.Upper;
                Assert.Equal(0, Naca.DistanceTo(upper, xu, yu), 2e-14);
                Assert.Equal(0, Naca.DistanceTo(section.Lower, xl, yl), 2e-14);
            },
            iter: 2000);

    [Fact]
    public void The_nose_is_the_foremost_point_of_the_construction() =>
        Naca.Designations.Sample(
            digits =>
            {
                var section = Naca.Section(digits);
                var foremost = Enumerable.Range(0, 20001).Min(i => Naca.Construction(digits, 0.05 * Math.Pow(i / 20000.0, 2)).XU);
                Assert.InRange(foremost - section.Upper(0).X, -1e-15, 1e-9);
                Assert.True(section.Upper(0).X <= 0);
                Assert.Equal(section.Upper(0), section.Lower(0) with { Dy = section.Upper(0).Dy });
            },
            iter: 60);

    [Fact]
    public void X_runs_with_the_square_of_the_parameter() =>
        Gen.Select(Naca.Designations, Gen.Double[0, 1]).Sample(
            (digits, w) =>
            {
                var section = Naca.Section(digits);
                foreach (var surface in new Func<double, SectionPoint>[] { section.Upper, section.Lower })
                {
                    double nose = surface(0).X, end = surface(1).X;
                    Assert.Equal(nose + ((end - nose) * w * w), surface(w).X, 1e-15);
                    Assert.Equal(2 * (end - nose) * w, surface(w).Dx, 1e-14);
                }
            },
            iter: 500);

    // Five-point central differences of the values, away from the breaks: error of order h⁴, and rounding of 1e-16 / h.
    [Fact]
    public void Derivatives_agree_with_finite_differences() =>
        Gen.Select(Naca.Designations, Gen.Double[1e-4, 1 - 1e-4]).Sample(
            (digits, w) =>
            {
                var section = Naca.Section(digits);
                if (section.UpperBreaks.Concat(section.LowerBreaks).All(place => Math.Abs(place - w) > 1e-4))
                {
                    Assert.Equal(Naca.Rate(section.Upper, w), section.Upper(w).Dy, 1e-8);
                    Assert.Equal(Naca.Rate(section.Lower, w), section.Lower(w).Dy, 1e-8);
                }
            },
            iter: 2000);

    [Fact]
    public void The_surface_leaves_the_nose_evenly_down_to_the_smallest_parameters()
    {
        foreach (var digits in (string[])["2412", "4415", "21012", "6309"])
        {
            var section = Naca.Section(digits);
            var (upper, lower) = (section.Upper(0), section.Lower(0));

            // One smooth curve rounds the nose, so that both surfaces have the same radius there: y'² / 2 x'' with x'' from x(w).
            Assert.Equal(-upper.Dy / Math.Sqrt(section.Upper(1).Dx), lower.Dy / Math.Sqrt(section.Lower(1).Dx), 1e-12);
            for (var w = 1e-3; w > 1e-12; w /= 10)
            {
                // A smooth curve: y = y(0) + y' w + O(w²), and y(0) has some 1e-18 of rounding.
                Assert.Equal(upper.Dy, (section.Upper(w).Y - upper.Y) / w, (3 * w) + (4e-17 / w));
                Assert.Equal(lower.Dy, (section.Lower(w).Y - lower.Y) / w, (3 * w) + (4e-17 / w));
                Assert.Equal(upper.Dy, section.Upper(w).Dy, (6 * w) + 1e-7);
            }
        }
    }

    // Source: NACA Report 460, r = 1.1019 t² (0009 by formula). On x = w² the radius at the nose is y'² / 2.
    [Theory]
    [InlineData("0006", 0.397)]
    [InlineData("0009", 0.893)]
    [InlineData("0012", 1.587)]
    [InlineData("0015", 2.479)]
    public void Leading_edge_radii_are_the_published_ones(string digits, double percent)
    {
        var rate = Naca.Section(digits).Upper(0).Dy;
        Assert.Equal(percent, rate * rate / 2 / Percent, 6e-4);
    }

    // Sum of the published coefficients 0.0021, times 5 t.
    [Fact]
    public void An_open_trailing_edge_gapes_by_its_published_half_gap_on_either_side()
    {
        var section = Naca.Section("0012");
        Assert.Equal(0.00126, section.Upper(1).Y, 1e-15);
        Assert.Equal(-0.00126, section.Lower(1).Y, 1e-15);
        Assert.Equal(1, section.Upper(1).X, 1e-15);
    }

    // Source: the last rows of construction-4412.txt: the two ends of a cambered open section lie either side of x = 100: 100.0167 and 99.9833 for 4412.
    [Fact]
    public void A_cambered_open_trailing_edge_is_cut_at_right_angles_to_the_mean_line()
    {
        var section = Naca.Section("4412");
        Assert.Equal(1.000167, section.Upper(1).X, 5e-7);
        Assert.Equal(0.999833, section.Lower(1).X, 5e-7);
    }

    [Theory]
    [InlineData("0012")]
    [InlineData("2412")]
    [InlineData("23015")]
    public void A_closed_trailing_edge_meets_on_the_chord_line(string digits)
    {
        var section = Naca.Section(digits, TrailingEdge.Closed);
        foreach (var end in (SectionPoint[])[section.Upper(1), section.Lower(1)])
        {
            Assert.Equal(1, end.X, 1e-15);
            Assert.Equal(0, end.Y, 1e-15);
        }

        // -0.1036 for the last coefficient (common practice): 5 t (−0.1036 + 0.1015) x⁴ is all that changes.
        Assert.Equal(
            Naca.HeightAt(Naca.Section("0012").Upper, 0.5) - (0.6 * 0.0021 / 16),
            Naca.HeightAt(Naca.Section("0012", TrailingEdge.Closed).Upper, 0.5),
            1e-15);
    }

    // The mean line changes formula at 40 % (24xx) and at 20.25 % (230xx); NACA Reports 460 and 537.
    [Theory]
    [InlineData("2412", 0.4)]
    [InlineData("23012", 0.2025)]
    public void The_breaks_lie_over_and_under_the_junction_of_the_mean_line(string digits, double junction)
    {
        var section = Naca.Section(digits);
        var (xu, yu, xl, yl) = Naca.Construction(digits, junction);
        var upper = section.Upper(Assert.Single(section.UpperBreaks));
        var lower = section.Lower(Assert.Single(section.LowerBreaks));
        Assert.Equal((xu, yu, xl, yl), (upper.X, upper.Y, lower.X, lower.Y), Close(1e-14));
    }

    [Fact]
    public void A_symmetrical_section_has_no_breaks()
    {
        var section = Naca.Section("0012");
        Assert.Empty(section.UpperBreaks);
        Assert.Empty(section.LowerBreaks);
        Assert.Equal("NACA 0012", section.Name);
    }

    private static Func<(double A, double B, double C, double D), (double A, double B, double C, double D), bool> Close(double tolerance) =>
        (p, q) => Math.Abs(p.A - q.A) < tolerance && Math.Abs(p.B - q.B) < tolerance
            && Math.Abs(p.C - q.C) < tolerance && Math.Abs(p.D - q.D) < tolerance;
}
