namespace PlanForge.Airframe.Tests.Quantities;

/// <summary>Numbers as builders write them. Expected values are worked out by hand from 25.4 mm to the inch.</summary>
public class LiteralTests
{
    [Theory]
    [InlineData("3 mm", 3)]
    [InlineData("3mm", 3)]
    [InlineData("  3   mm  ", 3)]
    [InlineData("+3 mm", 3)]
    [InlineData("-3 mm", -3)]
    [InlineData("- 3 mm", -3)]
    [InlineData(".5 mm", 0.5)]
    [InlineData("5. mm", 5)]
    [InlineData("5.mm", 5)]
    [InlineData("1e-3 m", 1)]
    [InlineData("1.5E2 mm", 150)]
    [InlineData("1e3mm", 1000)]
    [InlineData("007 mm", 7)]
    [InlineData("1/32 in", 0.79375)]
    [InlineData("1/32in", 0.79375)]
    [InlineData("3/64\"", 1.190625)]
    [InlineData("1/2 mm", 0.5)]
    [InlineData("5/4 in", 31.75)]
    [InlineData("2 1/4 in", 57.15)]
    [InlineData("2  1/4\"", 57.15)]
    [InlineData("-2 1/4 in", -57.15)]
    [InlineData("5'", 1524)]
    [InlineData("5' 6\"", 1676.4)]
    [InlineData("5'6\"", 1676.4)]
    [InlineData("5' 6 1/2\"", 1689.1)]
    [InlineData("5 ft 6 1/2 in", 1689.1)]
    [InlineData("5′ 6 1/2″", 1689.1)]
    [InlineData("-1' 6\"", -457.2)]
    [InlineData("1' 0.5\"", 317.5)]
    public void Lengths_are_read(string text, double millimetres) => Assert.Equal(millimetres, Values.Of(text), 1e-12 * Math.Abs(millimetres));

    [Theory]
    [InlineData("4.5 deg", 4.5)]
    [InlineData("4.5°", 4.5)]
    [InlineData("1° 30'", 1.5)]
    [InlineData("1°30′", 1.5)]
    [InlineData("1 deg 30'", 1.5)]
    [InlineData("-1° 30'", -1.5)]
    [InlineData("1° 30' 36\"", 1.51)]
    [InlineData("2° 7.5'", 2.125)]
    [InlineData("1/2 deg", 0.5)]
    [InlineData("3", 3)]
    public void Angles_are_read(string text, double degrees) =>
        Assert.Equal(degrees * Math.PI / 180, Values.Of(text, Dimension.Angle), 1e-12 * Math.Abs(degrees));

    // The whole value being a number without unit, it takes the unit of its place.
    [Theory]
    [InlineData("262", DisplayUnit.Millimetre, 262)]
    [InlineData("26.2", DisplayUnit.Centimetre, 262)]
    [InlineData("2.5", DisplayUnit.Inch, 63.5)]
    [InlineData("1/32", DisplayUnit.Inch, 0.79375)]
    [InlineData("8 1/2", DisplayUnit.Inch, 215.9)]
    [InlineData("-1/4", DisplayUnit.Inch, -6.35)]
    [InlineData("3 mm", DisplayUnit.Inch, 3)]
    public void A_bare_number_takes_the_unit_of_the_description(string text, DisplayUnit units, double millimetres) =>
        Assert.Equal(millimetres, Values.Of(text, Dimension.Length, units), 1e-12 * Math.Abs(millimetres));

    [Theory]
    [InlineData("")]
    [InlineData(".")]
    [InlineData("mm")]
    [InlineData("1.2.3 mm")]
    [InlineData("1,5 mm")]
    [InlineData("1 000 mm")]
    [InlineData("1_000 mm")]
    [InlineData("0x10 mm")]
    [InlineData("1e mm")]
    [InlineData("∞ mm")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("٣ mm")]
    [InlineData("１ mm")]
    [InlineData("2 1/4/2 in")]
    [InlineData("5 6\"")]
    [InlineData("5\" 6'")]
    [InlineData("3 mm 4 mm")]
    public void What_is_no_length_is_refused(string text) => Assert.True(double.IsNaN(Values.Of(text)), $"{text} was read as {Values.Of(text)}");
}
