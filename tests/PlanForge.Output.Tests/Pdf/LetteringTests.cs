using CsCheck;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Pdf;
using PlanForge.Output.Tests.Readers;
using UglyToad.PdfPig;

namespace PlanForge.Output.Tests.Pdf;

/// <summary>Lettering on a page: drawn as the alphabet says, and read back as the text that was meant.</summary>
public sealed class LetteringTests
{
    [Fact]
    public void Words_are_found_as_written()
    {
        var page = Open(Samples.Text("Former F3, birch ply 4 mm")).GetPage(1);
        Assert.Equal("Former F3, birch ply 4 mm", page.Text);
        Assert.Equal(["Former", "F3,", "birch", "ply", "4", "mm"], page.GetWords().Select(word => word.Text));
    }

    [Theory]
    [InlineData("Größe ±0.1 µm, 1° 30′, ø8 ½ €")]
    [InlineData("dowel 5⁄16 in, 2 17⁄32 in, 1⁄2 3⁄4")]
    [InlineData("no such letter: 漢")]
    [InlineData("  two  spaces  ")]
    [InlineData("(brackets) <and> \\ %")]
    public void Every_character_is_copied_as_it_is(string content) => Assert.Equal(content, Open(Samples.Text(content)).GetPage(1).Text);

    [Fact]
    public void Halves_of_surrogate_pairs_break_nothing() =>
        Assert.Equal("a\uFFFD\uFFFDb", Open(Samples.Text("a\U0001F600b")).GetPage(1).Text);

    [Fact]
    public void More_characters_than_a_font_holds_fill_several_fonts()
    {
        var content = string.Concat(Enumerable.Range(0, 600).Select(i => (char)(0x4E00 + i)));
        var page = Open(Samples.Text(content)).GetPage(1);
        Assert.Equal(content, page.Text);
        Assert.Equal(600, page.Letters.Count);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(Math.PI / 2)]
    [InlineData(-0.6)]
    public void Letters_stand_where_the_layout_puts_them(double angle)
    {
        const double Height = 5;
        const string Content = "AVm il 2 3⁄64 in. W";
        var start = new Point2(100, 90);
        var letters = Open(Samples.Text(Content, start.X, start.Y, Height, angle)).GetPage(1).Letters;
        var layout = TextLayout.Of(Content).Glyphs;
        var along = Vector2.FromAngle(angle);
        foreach (var (text, character) in (ReadOnlySpan<(string, char)>)[("A", 'A'), ("m", 'm'), ("2", '2'), ("W", 'W'), ("i", 'i')])
        {
            var letter = letters.First(candidate => candidate.Value == text);
            var placed = layout.First(candidate => candidate.Character == character);
            var expected = start + (along * (placed.At.X * Height));
            Assert.Equal(expected.X, PdfPaths.Millimetres(letter.StartBaseLine.X), 1e-4);
            Assert.Equal(expected.Y, PdfPaths.Millimetres(letter.StartBaseLine.Y), 1e-4);
        }
    }

    // The two rules of where a fraction begins and ends, here and in the lettering, must not drift apart: the width of every
    // text is the sum of the widths of its signs.
    [Fact]
    public void Signs_are_as_wide_as_the_layout() => Gen.Char["0127 ⁄/aB"].Array[1, 14].Select(characters => new string(characters)).Sample(
        content =>
        {
            var end = Open(Samples.Text(content + "M", 10, 10, 1)).GetPage(1).Letters[^1].StartBaseLine.X;
            return Math.Abs(PdfPaths.Millimetres(end) - 10 - TextLayout.Of(content + "M").Glyphs[^1].At.X) < 1e-3;
        },
        iter: 200);

    [Fact]
    public void Signs_together_are_the_whole_text() => Gen.Char["012 ⁄/a"].Array[0, 20].Select(characters => new string(characters)).Sample(
        content => string.Concat(Signs.Of(content).Select(sign => content[sign.Start..sign.End])) == content, iter: 2000);

    [Fact]
    public void Letters_are_single_strokes_and_nothing_is_filled()
    {
        var bytes = PdfWriter.Write(Samples.Set(Samples.Text("AB 1⁄2")), new("PlanForge"));
        using var document = PdfDocument.Open(bytes);
        var text = System.Text.Encoding.Latin1.GetString(bytes);

        // A glyph of 512 bytes or more would be compressed; these are shorter.
        var procedures = text.Split("stream\n").Where(part => part.Contains(" d0\n", StringComparison.Ordinal)).ToList();
        Assert.Equal(4, procedures.Count);
        Assert.Equal(3, procedures.Count(procedure => procedure.Contains("100 w 1 J 1 j [] 0 d\n", StringComparison.Ordinal)));
        Assert.All(procedures, procedure => Assert.DoesNotContain("f\n", procedure, StringComparison.Ordinal));
    }

    private static PdfDocument Open(DrawingItem.Text text) => PdfDocument.Open(PdfWriter.Write(Samples.Set(text), new("PlanForge")));
}
