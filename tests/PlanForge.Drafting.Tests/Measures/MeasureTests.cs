using System.Globalization;
using CsCheck;
using PlanForge.Airframe;
using PlanForge.Drafting.Measures;

namespace PlanForge.Drafting.Tests.Measures;

public class MeasureTests
{
    [Theory]
    [InlineData(12.0, 1, "12")]
    [InlineData(12.34, 1, "12.3")]
    [InlineData(12.345, 2, "12.35")]
    [InlineData(100.0, 0, "100")]
    [InlineData(-0.04, 1, "0")]
    [InlineData(-0.4, 1, "-0.4")]
    [InlineData(1e-7, 2, "0")]
    public void Millimetres_have_no_unit_sign_and_no_empty_decimals(double millimetres, int decimals, string expected) =>
        Assert.Equal(expected, Measure.Length(millimetres, DisplayUnit.Millimetre, decimals));

    [Fact]
    public void Centimetres_keep_the_decimals_of_the_millimetre() =>
        Assert.Equal("1.23", Measure.Length(12.34, DisplayUnit.Centimetre));

    [Theory]
    [InlineData(2.25, "2 1⁄4")]
    [InlineData(0.046875, "3⁄64")]
    [InlineData(0.5, "1⁄2")]
    [InlineData(3.0, "3")]
    [InlineData(0.0, "0")]
    [InlineData(-1.5, "-1 1⁄2")]
    [InlineData(0.9999, "1")]
    [InlineData(2.257, "2.257")]
    [InlineData(-0.0001, "0")]
    public void Inches_are_fractions_where_one_is_near_and_thousandths_where_none_is(double inches, string expected) =>
        Assert.Equal(expected, Measure.InchFraction(inches));

    // 3 5/8 in is 92.075 mm: 1 in = 25.4 mm exactly.
    [Theory]
    [InlineData(DisplayUnit.Millimetre, false, 92.075, "92.1")]
    [InlineData(DisplayUnit.Millimetre, true, 92.075, "92.1 [3 5⁄8″]")]
    [InlineData(DisplayUnit.Centimetre, true, 92.075, "9.21 [3 5⁄8″]")]
    [InlineData(DisplayUnit.Inch, true, 92.075, "3 5⁄8″ [92.1]")]
    [InlineData(DisplayUnit.Millimetre, true, 92, "92 [3.622″]")]
    public void Dimensions_in_both_units_have_the_other_one_in_brackets(DisplayUnit unit, bool isBoth, double millimetres, string expected) =>
        Assert.Equal(expected, Measure.Dimension(millimetres, new(unit, isBoth)));

    [Fact]
    public void An_inch_is_25_4_mm() => Assert.Equal("1″", Measure.Length(25.4, DisplayUnit.Inch));

    [Fact]
    public void Every_sixtyfourth_reads_back_exactly_and_in_lowest_terms()
    {
        for (var n = -640; n <= 640; n++)
        {
            var text = Measure.InchFraction(n / 64.0);
            Assert.Equal(n / 64.0, Read(text));
            if (text.IndexOf('⁄', StringComparison.Ordinal) is > 0 and var slash)
            {
                Assert.True((text[slash - 1] - '0') % 2 == 1, text);
            }
        }
    }

    [Fact]
    public void Whatever_is_written_in_inches_reads_back_within_two_thousandths() =>
        Gen.Double[-100, 100].Sample(
            inches => Assert.Equal(inches, Read(Measure.InchFraction(inches)), 0.002 + 1e-12), iter: 2000, seed: "0000000000009");

    [Theory]
    [InlineData(1.25, "1.25°", "1° 15′")]
    [InlineData(3, "3°", "3° 00′")]
    [InlineData(-2.5, "-2.5°", "-2° 30′")]
    [InlineData(0.9999, "1°", "1° 00′")]
    [InlineData(-0.001, "0°", "0° 00′")]
    public void Angles_are_degrees_or_degrees_and_minutes(double degrees, string inDegrees, string inMinutes)
    {
        var radians = degrees * Math.PI / 180;
        Assert.Equal(inDegrees, Measure.Angle(radians));
        Assert.Equal(inMinutes, Measure.AngleInMinutes(radians));
    }

    [Fact]
    public void A_bevel_shows_its_step_in_the_sheet() =>
        // shared/check-values.md section 12, item 10: 60 to 54 mm in 100 mm is 3.433630°, over 3 mm a step of 0.18 mm.
        Assert.Equal("3.43°, 0.18 over 3 mm", Measure.Bevel(Math.Atan(0.06), 3, DisplayUnit.Millimetre));

    [Fact]
    public void Numbers_do_not_follow_the_culture_of_the_machine()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NegativeSign = "~" } };
            Assert.Equal("-1.5", Measure.Number(-1.5, 2));
            Assert.Equal("2 1⁄4", Measure.InchFraction(2.25));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static double Read(string text)
    {
        var sign = text.StartsWith('-') ? -1 : 1;
        var total = 0.0;
        foreach (var word in text.TrimStart('-').Split(' '))
        {
            var parts = word.Split('⁄').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToArray();
            total += parts.Length == 2 ? parts[0] / parts[1] : parts[0];
        }

        return sign * total;
    }
}
