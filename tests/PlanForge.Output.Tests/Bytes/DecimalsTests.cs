using System.Globalization;
using System.Text;
using CsCheck;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Tests.Bytes;

public sealed class DecimalsTests
{
    // Truth: the decimal type of the framework, which holds these numbers exactly.
    [Theory]
    [InlineData(0, 5, "0")]
    [InlineData(-0.000004, 5, "0")]
    [InlineData(-0.000005, 5, "-0.00001")]
    [InlineData(12, 0, "12")]
    [InlineData(1200, 3, "1200")]
    [InlineData(0.5, 0, "1")]
    [InlineData(-2.5, 0, "-3")]
    [InlineData(0.125, 2, "0.13")]
    [InlineData(10.05, 1, "10.1")]
    [InlineData(1.005, 2, "1")]
    [InlineData(2.834645669291339, 12, "2.834645669291")]
    [InlineData(841.8897637795276, 6, "841.889764")]
    [InlineData(999999.9999996, 6, "1000000")]
    [InlineData(5e-324, 12, "0")]
    [InlineData(9007199254740993, 0, "9007199254740992")]
    public void Numbers_have_the_shortest_text_without_exponent(double value, int decimals, string text) =>
        Assert.Equal(text, Format(value, decimals));

    [Fact]
    public void Negative_zero_is_zero() => Assert.Equal("0", Format(-0.0, 5));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1e13)]
    public void Numbers_that_no_drawing_can_hold_are_refused(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Format(value, 6));

    [Fact]
    public void Every_number_reads_back_within_half_its_last_digit() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Int[0, 9]).Sample(
            (value, decimals) =>
            {
                // The decimal type holds the exact value of a double of this size to 28 digits.
                var error = Math.Abs(decimal.Parse(Format(value, decimals), CultureInfo.InvariantCulture) - Exactly(value));
                return error <= 0.5m * (decimal)Math.Pow(10, -decimals);
            },
            iter: 20_000);

    [Fact]
    public void Texts_are_plain() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Int[0, 9]).Sample(
            (value, decimals) =>
            {
                var text = Format(value, decimals);
                return text is not "-0" && !text.StartsWith("-0.0000000000", StringComparison.Ordinal)
                    && text.All(character => char.IsAsciiDigit(character) || character is '-' or '.')
                    && (!text.Contains('.', StringComparison.Ordinal) || text[^1] is not ('0' or '.'));
            },
            iter: 20_000);

    private static string Format(double value, int decimals)
    {
        Span<byte> target = stackalloc byte[Decimals.MaxLength];
        return Encoding.ASCII.GetString(target[..Decimals.Format(value, decimals, target)]);
    }

    // The conversion operator of decimal rounds to 15 digits; the text with 17 significant digits does not lose that much.
    private static decimal Exactly(double value) =>
        decimal.Parse(value.ToString("F20", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
