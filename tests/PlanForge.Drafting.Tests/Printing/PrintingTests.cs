using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Printing;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Printing;

public sealed class PrintingTests
{
    // shared/practice.md: 97.1 % (A4 shrunk into 3 mm margins), 96.0 % (4.2 mm), 94.1 % (A4 on Letter, Letter into 1/4 in).
    [Theory]
    [InlineData("A4", "A4 shrunk into margins of 3 mm", 97.1)]
    [InlineData("A4", "A4 shrunk into margins of 4.2 mm", 96.0)]
    [InlineData("A4", "A4 fitted on Letter", 94.1)]
    [InlineData("Letter", "Letter shrunk into margins of 1⁄4 in (6.4 mm)", 94.1)]
    public void Shrinking_has_its_known_measure(string paper, string words, double percent)
    {
        var cause = ShrinkCause.For(Paper.Find(paper)!).Single(cause => cause.Words == words);
        Assert.Equal(percent, cause.Factor * 100, 0.05);
        Assert.Equal(percent, ShrinkCause.Nearest(Paper.Find(paper)!, percent / 100)!.Factor * 100, 0.15);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0.99)]
    [InlineData(0.88)]
    public void What_no_dialog_does_has_no_cause(double factor) => Assert.Null(ShrinkCause.Nearest(Paper.Find("A4")!, factor));

    [Theory]
    [InlineData("A4", 180, 260)]
    [InlineData("Letter", 180, 250)]
    [InlineData("A3", 260, 390)]
    public void Calibration_bars_are_as_long_as_the_paper_allows(string name, double across, double up)
    {
        var paper = Paper.Find(name)!;
        Assert.Equal((across, up), CalibrationPage.BarsOn(paper));
        var page = CalibrationPage.Draw(paper).Pages.Single();

        // A cross at each corner: the middles of its arms are the corners of a rectangle of the two lengths.
        var crosses = page.Drawing.Items.OfType<DrawingItem.Stroke>().Select(stroke => stroke.Path.Start.Towards(stroke.Path.End, 0.5))
            .GroupBy(middle => middle).Where(group => group.Count() == 2).Select(group => group.Key).ToArray();
        Assert.Equal(4, crosses.Length);
        Assert.Equal((across, up), (Bounds2.Around(crosses).Width, Bounds2.Around(crosses).Height));
        Assert.All(page.Drawing.Items, item => Assert.True(IsInside(ItemExtents.Of(item), page, 9.9), item.ToString()));
    }

    [Fact]
    public void Lettering_of_the_calibration_page_keeps_apart()
    {
        var texts = CalibrationPage.Draw(Paper.Find("A4")!).Pages.Single().Drawing.Items.OfType<DrawingItem.Text>().Select(TextExtents.Of).ToArray();
        for (var i = 0; i < texts.Length; i++)
        {
            Assert.All(texts[..i], other => Assert.False(other.Touches(texts[i])));
        }
    }

    [Fact]
    public void Correction_is_stamped_where_nothing_else_stands_and_inside_of_what_printers_lose()
    {
        foreach (var (options, result) in Drawn.Everywhere)
        {
            foreach (var page in PageSet.Of(result.Sheets).CorrectedFor(new("attic", 1.0031, 0.9987)).Pages)
            {
                var stamp = (DrawingItem.Text)page.Drawing.Items[^1];
                Assert.Equal("Corrected for printer attic: across × 1.0031, up × 0.9987. Wrong on any other printer.", stamp.Content);
                var room = TextExtents.Of(stamp);
                Assert.InRange(room.MinX, 6 - 1e-6, 20);
                Assert.InRange(room.MaxY, 10, page.Height - 10);
                Assert.DoesNotContain(page.Drawing.Items[..^1], item => ItemExtents.Of(item) is var other && other.Touches(room) && !Surrounds(other, room));
            }
        }
    }

    [Fact]
    public void Long_name_of_a_printer_is_shortened_and_the_factors_are_not()
    {
        var page = PageSet.Of(Drawn.Everywhere[0].Result.Sheets).CorrectedFor(new(new string('W', 300), 1.01, 1.02)).Pages[0];
        var stamp = (DrawingItem.Text)page.Drawing.Items[^1];
        Assert.Contains("W…: across × 1.0100, up × 1.0200", stamp.Content, StringComparison.Ordinal);
        Assert.True(TextExtents.Of(stamp).MaxY <= page.Height - 10 + 0.2);
    }

    private static bool IsInside(Bounds2 bounds, Page page, double margin) =>
        bounds.MinX >= margin && bounds.MinY >= margin && bounds.MaxX <= page.Width - margin && bounds.MaxY <= page.Height - margin;

    private static bool Surrounds(Bounds2 outer, Bounds2 inner) =>
        outer.MinX < inner.MinX && outer.MinY < inner.MinY && outer.MaxX > inner.MaxX && outer.MaxY > inner.MaxY;
}
