using CsCheck;
using PlanForge.Drafting.Lettering;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Lettering;

public class TextLayoutTests
{
    private static readonly string Characters = string.Concat(Repertoire.Drawn.Where(c => c != '⁄')) + ' ';

    private static readonly Gen<string> Texts = Gen.Int[0, Characters.Length - 1].Array[1, 12]
        .Select(indices => string.Concat(indices.Select(i => Characters[i])));

    [Fact]
    public void An_empty_text_has_no_width() => Assert.Equal(0, StrokeAlphabet.WidthOf("", 2.5));

    [Fact]
    public void Width_grows_with_the_height() =>
        (from text in Texts from height in Gen.Double[1, 20] select (text, height)).Sample(
            sample => Assert.Equal(
                StrokeAlphabet.WidthOf(sample.text, 1) * sample.height, StrokeAlphabet.WidthOf(sample.text, sample.height), 1e-9),
            iter: 200,
            seed: "0000000000001");

    [Fact]
    public void Width_of_two_texts_in_a_row_is_the_sum_and_one_gap() =>
        Gen.Select(Texts, Texts).Sample(
            (first, second) => Assert.Equal(
                StrokeAlphabet.WidthOf(first, 1) + StrokeAlphabet.WidthOf(second, 1) + 0.3,
                StrokeAlphabet.WidthOf(first + second, 1),
                1e-9),
            iter: 200,
            seed: "0000000000002");

    [Fact]
    public void Extents_are_those_of_the_strokes_and_half_the_pen() =>
        (from text in Texts
         from x in Gen.Double[-500, 500]
         from y in Gen.Double[-500, 500]
         from height in Gen.Double[2, 12]
         from angle in Gen.OneOf(Gen.Const(0.0), Gen.Const(Math.PI / 2), Gen.Double[-Math.PI, Math.PI])
         select (text, at: new Point2(x, y), height, angle)).Where(s => s.text.Trim().Length > 0).Sample(
            s =>
            {
                // The oracle walks the strokes in small steps; a step misses an arc's extreme by less than its sagitta.
                const double Sagitta = 1e-6;
                var around = Bounds2.Around(
                    TextLayout.StrokesOf(s.text, s.at, s.height, s.angle).SelectMany(stroke => stroke.Flattened(Sagitta)));
                var extents = TextExtents.Of(s.text, s.at, s.height, s.angle).Grown(-s.height / 20);
                Assert.Equal(around.MinX, extents.MinX, 2 * Sagitta);
                Assert.Equal(around.MinY, extents.MinY, 2 * Sagitta);
                Assert.Equal(around.MaxX, extents.MaxX, 2 * Sagitta);
                Assert.Equal(around.MaxY, extents.MaxY, 2 * Sagitta);
            },
            iter: 100,
            seed: "0000000000003");

    [Fact]
    public void Figures_of_a_fraction_are_the_next_smaller_size()
    {
        // ISO 3098 sizes 2.5 and 3.5 follow each other (shared/check-values.md section 5).
        var placed = TextLayout.Of("3⁄64").Glyphs;
        Assert.Equal(["3", "⁄", "6", "4"], placed.Select(g => g.Character.ToString()));
        Assert.All(placed.Where(g => g.Character != '⁄'), g => Assert.Equal(2.5 / 3.5, g.Scale, 1e-12));
        Assert.True(placed[0].At.Y > 0 && placed[2].At.Y < 0 && placed[3].At.Y < 0);
    }

    [Theory]
    [InlineData("1/4")]
    [InlineData("⁄4")]
    [InlineData("1⁄")]
    [InlineData("a⁄b")]
    public void A_slash_without_figures_on_both_sides_or_an_ordinary_one_makes_no_fraction(string text) =>
        Assert.All(TextLayout.Of(text).Glyphs, glyph => Assert.Equal(1, glyph.Scale));

    [Fact]
    public void A_whole_number_stands_closer_to_its_fraction_than_two_words_stand()
    {
        Assert.True(StrokeAlphabet.WidthOf("2 1⁄4", 1) < StrokeAlphabet.WidthOf("2", 1) + 0.6 + StrokeAlphabet.WidthOf("1⁄4", 1));
        Assert.Equal(
            StrokeAlphabet.WidthOf("1⁄2", 1) + 0.3 + 0.4 + StrokeAlphabet.WidthOf("1⁄4", 1), StrokeAlphabet.WidthOf("1⁄2 1⁄4", 1), 1e-9);
    }

    [Fact]
    public void Ink_of_a_fraction_never_runs_together()
    {
        foreach (var denominator in new[] { 2, 4, 8, 16, 32, 64 })
        {
            for (var numerator = 1; numerator < denominator; numerator += 2)
            {
                var placed = TextLayout.Of($"{numerator}⁄{denominator}").Glyphs;
                for (var i = 1; i < placed.Length; i++)
                {
                    Assert.True(InkGap(placed[i - 1], placed[i]) > 0, $"{numerator}/{denominator}: {i}");
                }
            }
        }
    }

    private static double InkGap(PlacedGlyph first, PlacedGlyph second)
    {
        var others = PointsOf(second);
        var nearest = PointsOf(first).Min(a => others.Min(b => a.DistanceTo(b)));
        return nearest - StrokeAlphabet.StrokeWidth;
    }

    private static List<Point2> PointsOf(PlacedGlyph placed) =>
        [.. placed.Glyph.Strokes.SelectMany(stroke => stroke.Segments).SelectMany(
            segment => Enumerable.Range(0, 17).Select(
                i => placed.At + ((segment.PointAt(i / 16.0) - Point2.Origin) * placed.Scale)))];
}
