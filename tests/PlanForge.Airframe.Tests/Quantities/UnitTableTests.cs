using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Tests.Quantities;

public class UnitTableTests
{
    // check-values.md section 11, after NIST SP 811 appendix B.8 (the numbers are confirmed there by public listings, the
    // publication itself was not open): 1 in = 25.4 mm, 1 ft = 12 in, 1 lb = 0.45359237 kg, 1 oz = 1/16 lb, all exact.
    [Theory]
    [InlineData("1 mm", Dimension.Length, 1)]
    [InlineData("1 cm", Dimension.Length, 10)]
    [InlineData("1 m", Dimension.Length, 1000)]
    [InlineData("1 in", Dimension.Length, 25.4)]
    [InlineData("1 ft", Dimension.Length, 304.8)]
    [InlineData("1'", Dimension.Length, 304.8)]
    [InlineData("1\"", Dimension.Length, 25.4)]
    [InlineData("1 g", Dimension.Mass, 1)]
    [InlineData("1 kg", Dimension.Mass, 1000)]
    [InlineData("1 oz", Dimension.Mass, 28.349523125)]
    [InlineData("1 lb", Dimension.Mass, 453.59237)]
    [InlineData("1 rad", Dimension.Angle, 1)]
    [InlineData("180 deg", Dimension.Angle, Math.PI)]
    [InlineData("180°", Dimension.Angle, Math.PI)]
    [InlineData("1 %", Dimension.Number, 0.01)]
    public void Units_have_the_published_worth_to_the_last_bit(string text, Dimension dimension, double expected) =>
        Assert.Equal(expected, Values.Of(text, dimension));

    // Another source: UnitsNet 5.75, whose own conversions go by way of metres and kilograms and lose a last digit.
    [Fact]
    public void Units_have_the_worth_that_UnitsNet_gives_them()
    {
        Assert.Equal(UnitsNet.Length.FromInches(1).Millimeters, Values.Of("1 in", Dimension.Length), 1e-12);
        Assert.Equal(UnitsNet.Length.FromFeet(1).Millimeters, Values.Of("1 ft", Dimension.Length), 1e-12);
        Assert.Equal(UnitsNet.Mass.FromOunces(1).Grams, Values.Of("1 oz", Dimension.Mass), 1e-12);
        Assert.Equal(UnitsNet.Mass.FromPounds(1).Grams, Values.Of("1 lb", Dimension.Mass), 1e-12);
        Assert.Equal(UnitsNet.Angle.FromDegrees(30).Radians, Values.Of("30 deg", Dimension.Angle), 1e-15);
    }

    // A conversion by way of metres gives 6.999999999999999 for the first of these.
    [Theory]
    [InlineData("0.7 cm", "7 mm")]
    [InlineData("0.3 m", "300 mm")]
    [InlineData("2.5 in", "63.5 mm")]
    [InlineData("57 %", "0.57")]
    public void The_same_value_in_two_units_is_the_same_number(string one, string other)
    {
        var dimension = one.EndsWith('%') ? Dimension.Number : Dimension.Length;
        Assert.Equal(Values.Of(other, dimension), Values.Of(one, dimension));
    }

    [Theory]
    [InlineData("inches", "in")]
    [InlineData("Millimeters", "mm")]
    [InlineData("degrees", "deg")]
    [InlineData("pounds", "lb")]
    [InlineData("kilo", "kg")]
    [InlineData("CM", "cm")]
    [InlineData("ozz", "oz")]
    [InlineData("mn", "mm")]
    public void A_word_that_is_no_unit_has_a_nearest_one(string word, string unit)
    {
        Assert.Null(UnitTable.FromWord(word));
        Assert.Equal(unit, UnitTable.Nearest(word));
    }

    [Fact]
    public void Every_unit_that_is_a_word_is_called_by_it()
    {
        foreach (var word in UnitTable.Words)
        {
            Assert.Equal(word, UnitTable.FromWord(word)!.Value.Symbol());
        }
    }
}
