using System.Globalization;
using CsCheck;

namespace PlanForge.Airframe.Tests.Quantities;

public class QuantityPropertyTests
{
    // Worth of the units in mm, written out here so as not to depend on the table under test.
    private static readonly (string Unit, double Worth)[] Units = [("mm", 1), ("cm", 10), ("m", 1000), ("in", 25.4), ("ft", 304.8), ("\"", 25.4), ("'", 304.8)];

    [Fact]
    public void A_length_written_in_any_unit_reads_back_the_same() =>
        Gen.Select(Gen.Double[-5000, 5000], Choice.Of(Units), Choice.Of("", " ", "  ")).Sample(
            (millimetres, unit, blank) =>
            {
                var text = (millimetres / unit.Worth).ToString("R", CultureInfo.InvariantCulture) + blank + unit.Unit;
                Assert.Equal(millimetres, Values.Of(text), 1e-12 * Math.Abs(millimetres));
            },
            iter: 2000);

    [Fact]
    public void A_length_in_sixty_fourths_reads_back_exactly() =>
        Gen.Select(Gen.Int[0, 100], Gen.Int[1, 63], Choice.Of(2, 4, 8, 16, 32, 64)).Sample(
            (whole, above, below) =>
            {
                var text = whole == 0 ? $"{above}/{below} in" : $"{whole} {above % below}/{below} in";
                var inches = whole == 0 ? (double)above / below : whole + ((double)(above % below) / below);
                Assert.Equal(inches * 25.4, Values.Of(text));
            },
            iter: 1000);

    [Fact]
    public void Degrees_minutes_and_seconds_read_back_the_same() =>
        Gen.Select(Gen.Int[0, 179], Gen.Int[0, 59], Gen.Double[0, 59.999]).Sample(
            (degrees, minutes, seconds) =>
            {
                var text = string.Create(CultureInfo.InvariantCulture, $"{degrees}° {minutes}' {seconds:R}\"");
                var expected = (degrees + (minutes / 60.0) + (seconds / 3600)) * Math.PI / 180;
                Assert.Equal(expected, Values.Of(text, Dimension.Angle), 1e-12 * Math.Max(1e-3, expected));
            },
            iter: 1000);
}
