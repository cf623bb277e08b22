using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

public sealed class NacaDesignationTests
{
    [Theory]
    [InlineData("", "'' is not the designation of a NACA section read here: write four digits (2412) or five (23012)")]
    [InlineData("241", "'241' is not the designation of a NACA section read here: write four digits (2412) or five (23012)")]
    [InlineData("24-12", "'24-12' is not the designation of a NACA section read here: write four digits (2412) or five (23012)")]
    [InlineData("٢٤١٢", "'٢٤١٢' is not the designation of a NACA section read here: write four digits (2412) or five (23012)")]
    [InlineData("0000", "NACA 0000 has no thickness: the last two digits are its thickness in percent of the chord")]
    [InlineData("23000", "NACA 23000 has no thickness: the last two digits are its thickness in percent of the chord")]
    [InlineData("0412", "NACA 0412 gives a place of greatest camber but no camber: a symmetrical section is written 0012")]
    [InlineData("2012", "NACA 2012 gives camber but no place for it: the second digit is the place of greatest camber in tenths of the chord, 1 to 9")]
    [InlineData("23112", "NACA 23112 has a reflexed mean line (231); of the five-digit sections only those with the plain mean lines 210, 220, 230, 240 and 250 are read: give this one as a coordinate file")]
    [InlineData("26012", "NACA 26012 has no standard mean line: the second and third digit are 10, 20, 30, 40 or 50")]
    [InlineData("23212", "NACA 23212 has no standard mean line: the second and third digit are 10, 20, 30, 40 or 50")]
    [InlineData("03012", "NACA 03012 has no camber: the first digit, 1 to 9, sets its design lift coefficient")]
    [InlineData("9199", "NACA 9199 turns back on itself: its mean line bends too sharply for its thickness")]
    public void A_designation_that_means_no_section_is_refused_with_the_reason(string digits, string expected)
    {
        Assert.Null(NacaSection.TryCreate(digits, TrailingEdge.Open, out var fault));
        Assert.Equal(expected, fault);
    }

    // Source: NACA mean line 64 = 0.06 camber at 0.4; Abbott and von Doenhoff App. II as recomputed in kurtsansom/pdas
    // docs/source/meanlines.rst (confirmed); % chord, then slope.
    [Theory]
    [InlineData(0, 0, 0.3000)]
    [InlineData(0.5, 0.1491, 0.2962)]
    [InlineData(1.25, 0.3691, 0.2906)]
    [InlineData(2.5, 0.7266, 0.2812)]
    [InlineData(5, 1.4063, 0.2625)]
    [InlineData(7.5, 2.0391, 0.2437)]
    [InlineData(10, 2.6250, 0.2250)]
    public void Mean_line_64_is_the_published_one(double x, double height, double slope) =>
        Check("6412", x, height, slope, 5.1e-5, 5.1e-5);

    // Source: mean line 230, the same table. It seems to use finer constants than the published r = 0.2025 and
    // k1 = 15.957, with which it agrees to 1.2e-3 % chord.
    [Theory]
    [InlineData(0, 0, 0.3053)]
    [InlineData(0.5, 0.1486, 0.2893)]
    [InlineData(1.25, 0.3569, 0.2661)]
    [InlineData(2.5, 0.6663, 0.2294)]
    [InlineData(5, 1.1555, 0.1636)]
    [InlineData(7.5, 1.4925, 0.1077)]
    [InlineData(10, 1.7022, 0.0618)]
    public void Mean_line_230_is_the_published_one(double x, double height, double slope) =>
        Check("23012", x, height, slope, 1.2e-3, 2.5e-4);

    // Source: greatest heights of the lines 210 to 250 (derived here from the published r and k1), at 5, 10, 15, 20 and 25 %.
    [Theory]
    [InlineData("21012", 5, 1.113)]
    [InlineData("22012", 10, 1.534)]
    [InlineData("23012", 15, 1.839)]
    [InlineData("24012", 20, 2.080)]
    [InlineData("25012", 25, 2.263)]
    public void Five_digit_mean_lines_are_highest_where_the_second_digit_says(string digits, double x, double height)
    {
        Check(digits, x, height, 0, 6e-4, 3e-4);

        // The first digit scales the line: 4 instead of 2 doubles it.
        Check(string.Concat("4", digits.AsSpan(1)), x, 2 * height, 0, 1.2e-3, 6e-4);
    }

    private static void Check(string digits, double x, double height, double slope, double heightTolerance, double slopeTolerance)
    {
        var line = Assert.NotNull(NacaDesignation.TryRead(digits, out _)).MeanLine;
        var piece = x / 100 < line.Junction ? line.Forward : line.Aft;
        Assert.Equal(height, piece.Height(x / 100) * 100, heightTolerance);
        Assert.Equal(slope, piece.Slope(x / 100), slopeTolerance);
    }
}
