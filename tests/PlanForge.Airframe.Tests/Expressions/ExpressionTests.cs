using PlanForge.Airframe.Tests.Quantities;

namespace PlanForge.Airframe.Tests.Expressions;

/// <summary>What expressions mean. Expected values are worked out by hand.</summary>
public class ExpressionTests
{
    [Theory]
    [InlineData("3 mm + 1/32 in", 3.79375)]
    [InlineData("max(3 mm, 2 * 2 mm) + 1/32 in", 4.79375)]
    [InlineData("min(3 mm, 1 in, 2 cm)", 3)]
    [InlineData("sqrt(3 mm * 3 mm + 4 mm * 4 mm)", 5)]
    [InlineData("sqrt(9) * 2 mm", 6)]
    [InlineData("100 mm * sin(30 deg)", 50)]
    [InlineData("100 mm * cos(60 deg)", 50)]
    [InlineData("100 mm * tan(45 deg)", 100)]
    [InlineData("10 mm - 2 mm - 3 mm", 5)]
    [InlineData("100 mm / 5 / 2", 10)]
    [InlineData("2 + 3 * 4 - 10 / 5", 12, Dimension.Number)]
    [InlineData("(2 + 3) * (4 - 1)", 15, Dimension.Number)]
    [InlineData("-(2 + 3) * 4", -20, Dimension.Number)]
    [InlineData("2 * -3", -6, Dimension.Number)]
    [InlineData("2 - -3", 5, Dimension.Number)]
    [InlineData("2--3", 5, Dimension.Number)]
    [InlineData("-2 - 3", -5, Dimension.Number)]
    [InlineData("50 % * 30 mm", 15)]
    [InlineData("10 mm * 20 mm / 4 mm", 50)]
    [InlineData("10 mm * 20 mm * 30 mm / (10 mm * 10 mm)", 60)]
    [InlineData("1 / (1 / 5 mm)", 5)]
    [InlineData("30 mm * (10 deg / 5 deg)", 60)]
    [InlineData("6 oz / 2 oz * 1 mm", 3)]
    [InlineData("((((3 mm))))", 3)]
    [InlineData("3 mm\n  + 4 mm", 7)]
    [InlineData("0.1 mm + 0.2 mm", 0.3)]
    public void Expressions_are_worked_out(string text, double expected, Dimension dimension = Dimension.Length) =>
        Assert.Equal(expected, Values.Of(text, dimension), 1e-12 * Math.Abs(expected));

    // Where a fraction could be a division: the rules in the remarks of Expression.
    [Theory]
    [InlineData("12 mm / 2/3", 2, "a slash without a unit behind divides: a third of a half")]
    [InlineData("12 mm /2 /3", 2, "blanks make no difference there")]
    [InlineData("12 mm * 1/3", 4, "a tight slash between whole numbers without a unit still divides")]
    [InlineData("2 * 1/2 in", 25.4, "a tight slash with a unit behind is a fraction")]
    [InlineData("1 in - 1/2 in", 12.7, "so that a half is taken from a whole")]
    [InlineData("1/2 in / 2", 6.35, "and half of a half is a quarter")]
    [InlineData("1 in / (1/2 in) * 1 mm", 2, "parentheses after a division")]
    [InlineData("2 1/2 in / 2", 31.75, "a mixed number holds together")]
    [InlineData("4 mm / 2 1/2", 1.6, "also after a division, where nothing else can be meant")]
    [InlineData("(1/2) * 1 in", 12.7, "in parentheses it divides, with the same result")]
    [InlineData("6/2 in", 76.2, "a fraction may be over one")]
    public void Fractions_and_divisions_are_told_apart(string text, double millimetres, string because) =>
        Assert.True(Math.Abs(Values.Of(text) - millimetres) < 1e-12 * millimetres, because);

    [Fact]
    public void A_hundred_thousand_terms_are_added_without_exhausting_the_stack() =>
        Assert.Equal(100_001, Values.Of("1" + string.Concat(Enumerable.Repeat("+1", 100_000)), Dimension.Number));

    [Theory]
    [InlineData('(')]
    [InlineData('-')]
    [InlineData('+')]
    public void A_hundred_thousand_openings_are_refused_without_exhausting_the_stack(char opening) =>
        Assert.True(double.IsNaN(Values.Of(new string(opening, 100_000) + "1 mm")));

    [Fact]
    public void A_hundred_thousand_functions_are_refused_without_exhausting_the_stack() =>
        Assert.True(double.IsNaN(Values.Of(string.Concat(Enumerable.Repeat("sqrt(", 100_000)) + "1")));
}
