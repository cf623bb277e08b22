using CsCheck;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.PartDrawings;

namespace PlanForge.Drafting.Tests.PartDrawings;

public class TextWrapTests
{
    [Fact]
    public void A_number_keeps_its_unit_in_brackets() =>
        Assert.All(TextWrap.Lines("Room for seat tape 1 mm [0.039 in] thick is included.", 38, 2.5), line => Assert.False(line.EndsWith("0.039", StringComparison.Ordinal)));

    private static readonly Gen<string> Sentences =
        Gen.Char['a', 'z'].Array[1, 9].Select(letters => new string(letters)).Array[0, 25].Select(words => string.Join(' ', words));

    [Fact]
    public void Lines_keep_all_words_in_order_and_the_width() =>
        Gen.Select(Sentences, Gen.Double[20, 120]).Sample(
            (text, width) =>
            {
                var lines = TextWrap.Lines(text, width, 2.5);
                Assert.Equal(text, string.Join(' ', lines));
                Assert.All(lines, line => Assert.True(!line.Contains(' ') || StrokeAlphabet.WidthOf(line, 2.5) <= width));
            },
            iter: 200,
            seed: "000000000000C");

    [Fact]
    public void No_line_could_have_taken_the_next_word() =>
        Gen.Select(Sentences, Gen.Double[20, 120]).Sample(
            (text, width) =>
            {
                var lines = TextWrap.Lines(text, width, 2.5);
                for (var i = 1; i < lines.Length; i++)
                {
                    Assert.True(StrokeAlphabet.WidthOf($"{lines[i - 1]} {lines[i].Split(' ')[0]}", 2.5) > width);
                }
            },
            iter: 200,
            seed: "000000000000D");

    [Fact]
    public void A_number_stays_with_its_unit_and_its_fraction()
    {
        for (var width = 10; width < 90; width++)
        {
            var lines = TextWrap.Lines("rear face at 763 mm, holes at 9 1⁄2 in.", width, 2.5);
            Assert.Contains(lines, line => line.Contains("763 mm,", StringComparison.Ordinal));
            Assert.Contains(lines, line => line.Contains("9 1⁄2 in.", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_text_takes_the_greatest_height_that_fits_and_is_shortened_at_the_least()
    {
        Assert.Equal(("Oxbow", 5.0), TextWrap.Fitted("Oxbow", 60, [5, 3.5, 2.5]));
        var (text, height) = TextWrap.Fitted("Oxbow 1420 with a very long name", 30, [5, 3.5, 2.5]);
        Assert.Equal(2.5, height);
        Assert.EndsWith("…", text, StringComparison.Ordinal);
        Assert.True(StrokeAlphabet.WidthOf(text, height) <= 30);
        Assert.Equal("", TextWrap.Fitted("Oxbow", 0.5, [2.5]).Text);
    }
}
