using CsCheck;
using PlanForge.Drafting.Charts;

namespace PlanForge.Drafting.Tests.Charts;

public sealed class RoundTicksTests
{
    [Theory]
    [InlineData(80, 110, 8, new[] { 80.0, 85, 90, 95, 100, 105, 110 }, 0)]
    [InlineData(0.123, 0.171, 7, new[] { 0.12, 0.13, 0.14, 0.15, 0.16, 0.17, 0.18 }, 2)]
    [InlineData(-3, 7, 7, new[] { -4.0, -2, 0, 2, 4, 6, 8 }, 0)]
    [InlineData(1200, 9000, 6, new[] { 0.0, 2000, 4000, 6000, 8000, 10000 }, 0)]
    public void Marks_are_round(double least, double greatest, int most, double[] expected, int decimals)
    {
        var ticks = RoundTicks.Over(least, greatest, most);

        Assert.Equal(expected, ticks.Values);
        Assert.Equal(decimals, ticks.Decimals);
    }

    [Fact]
    public void A_single_value_stands_between_two_marks()
    {
        var ticks = RoundTicks.Over(42, 42, 5);

        Assert.InRange(42, ticks.Values[0], ticks.Values[^1]);
        Assert.True(ticks.Values.Length >= 2);
    }

    // Whatever the range: the marks reach over it by less than a step, are equally far apart, and no more than asked for.
    [Fact]
    public void Marks_reach_over_the_range_by_less_than_a_step() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-3, 1e6], Gen.Int[3, 12]).Sample((least, length, most) =>
        {
            var greatest = least + length;
            var ticks = RoundTicks.Over(least, greatest, most).Values;
            var step = ticks[1] - ticks[0];
            var slack = 1e-6 * step;

            Assert.InRange(ticks.Length, 2, most);
            Assert.InRange(ticks[0], least - step - slack, least + slack);
            Assert.InRange(ticks[^1], greatest - slack, greatest + step + slack);
            for (var i = 1; i < ticks.Length; i++)
            {
                Assert.Equal(step, ticks[i] - ticks[i - 1], slack);
            }

            // 1, 2 or 5 times a power of ten.
            var digits = step / Math.Pow(10, Math.Floor(Math.Log10(step) + 1e-9));
            Assert.Contains(new[] { 1.0, 2, 5 }, factor => Math.Abs(factor - digits) < 1e-6);
        });
}
