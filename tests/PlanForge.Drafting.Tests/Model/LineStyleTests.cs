using System.Globalization;
using PlanForge.Drafting.Model;

namespace PlanForge.Drafting.Tests.Model;

public class LineStyleTests
{
    // Source: ISO 128-2 elements and the CAD line types ACAD_ISO02W100, 04, 05 at d = 1 mm, in shared/check-values.md
    // section 5, status C (confirmed in public text). Minus means a gap, as there.
    private const string Patterns = """
        02 12 -3
        04 24 -3 0.5 -3
        05 24 -3 0.5 -3 0.5 -3
        """;

    [Fact]
    public void Patterns_are_those_of_ISO_128_in_multiples_of_the_width()
    {
        foreach (var line in Patterns.Split('\n'))
        {
            var numbers = line.Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).ToArray();
            foreach (var width in new[] { 0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2 })
            {
                var pattern = new LineStyle((LineType)(int)numbers[0], width).Pattern;
                Assert.Equal(numbers[1..].Select(n => Math.Abs(n) * width), pattern, (a, b) => Math.Abs(a - b) < 1e-12);
            }
        }
    }

    [Fact]
    public void A_long_dashed_dotted_line_of_a_quarter_millimetre_repeats_after_7_625_mm() =>
        // Worked example in shared/check-values.md section 5: 6, -0.75, 0.125, -0.75 mm, period 7.625 mm.
        Assert.Equal([6, 0.75, 0.125, 0.75], new LineStyle(LineType.LongDashedDotted, 0.25).Pattern);

    [Fact]
    public void A_continuous_line_has_no_pattern() => Assert.Empty(new LineStyle(LineType.Continuous, 0.35).Pattern);
}
