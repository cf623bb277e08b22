using PlanForge.Drafting.Lettering;

namespace PlanForge.Drafting.Tests.Lettering;

public class InchTextTests
{
    [Theory]
    [InlineData("1/4", "1⁄4")]
    [InlineData("2 13/64 in, not 1/2.", "2 13⁄64 in, not 1⁄2.")]
    [InlineData("-33/64", "-33⁄64")]
    [InlineData("drill 1/4-20", "drill 1⁄4-20")]
    [InlineData("1 1/8″ × 1″, R1/4″", "1 1⁄8″ × 1″, R1⁄4″")]
    public void Fractions_of_an_inch_rule_are_lettered_as_fractions(string text, string expected) =>
        Assert.Equal(expected, InchText.WithFractions(text));

    [Theory]
    [InlineData("and/or")]
    [InlineData("5/4")]
    [InlineData("1/3")]
    [InlineData("1/128")]
    [InlineData("0/4")]
    [InlineData("sheet A1/2")]
    [InlineData("1/2/4")]
    [InlineData("3.1/2")]
    [InlineData("")]
    public void Other_slashes_stay(string text) => Assert.Equal(text, InchText.WithFractions(text));
}
