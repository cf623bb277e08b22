using System.Data;
using System.Globalization;
using CsCheck;
using PlanForge.Airframe.Tests.Quantities;

namespace PlanForge.Airframe.Tests.Expressions;

public class ExpressionPropertyTests
{
    private static readonly Gen<string> Number =
        Gen.Int[1, 9999].Select(n => (n / 100.0).ToString("0.00", CultureInfo.InvariantCulture));

    // Text with operators of both ranks, parentheses and signs, with and without blanks.
    private static readonly Gen<string> Text = Gen.Recursive<string>((depth, inner) => depth > 4
        ? Number
        : Gen.Frequency(
            (2, Number),
            (4, Gen.Select(inner, Choice.Of("+", "-", "*", "/", " + ", " - ", " * ", " / "), inner, (a, op, b) => a + op + b)),
            (2, inner.Select(a => $"({a})")),
            (1, inner.Select(a => $"(-{a})"))));

    // Oracle: System.Data's expression engine parses and works out the same text on its own.
    [Fact]
    public void Sums_and_products_agree_with_an_independent_parser() => Text.Sample(
        text =>
        {
            using var table = new DataTable { Locale = CultureInfo.InvariantCulture };
            double expected;
            try
            {
                expected = Convert.ToDouble(table.Compute(text, null), CultureInfo.InvariantCulture);
            }
            catch (Exception fault) when (fault is OverflowException or DivideByZeroException)
            {
                return;
            }

            var found = Values.Of(text, Dimension.Number);
            Assert.True(
                double.IsNaN(found) ? !double.IsFinite(expected) : Math.Abs(found - expected) <= 1e-9 * Math.Max(1, Math.Abs(expected)),
                $"{text} is {expected:R}, not {found:R}");
        },
        iter: 3000);

    [Fact]
    public void A_length_survives_any_detour_that_keeps_it() =>
        Gen.Select(Gen.Double[1, 1000], Gen.Double[1, 100], Choice.Of("mm", "cm", "in")).Sample(
            (length, factor, unit) =>
            {
                var (l, f) = (Written(length), Written(factor));
                var direct = Values.Of($"{l} mm");
                Assert.Equal(direct, Values.Of($"{l} mm * {f} / {f}"), 1e-12 * direct);
                Assert.Equal(direct, Values.Of($"{l} mm * ({f} {unit} / ({f} {unit}))"), 1e-12 * direct);
                Assert.Equal(direct, Values.Of($"sqrt({l} mm * {f} {unit} * ({l} mm / ({f} {unit})))"), 1e-12 * direct);
                Assert.Equal(direct, Values.Of($"max({l} mm, {l} mm - {f} {unit})"), 1e-12 * direct);
            },
            iter: 500);

    private static string Written(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
