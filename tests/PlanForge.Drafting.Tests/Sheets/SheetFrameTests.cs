using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Sheets;

public class SheetFrameTests
{
    [Theory]
    // Number of fields of the grid: shared/check-values.md section 4 (cadsetterout.com, secondary).
    [InlineData("A0", 24, 16)]
    [InlineData("A1", 16, 12)]
    [InlineData("A2", 12, 8)]
    [InlineData("A3", 8, 6)]
    public void The_grid_has_the_published_number_of_fields(string name, int along, int down)
    {
        var paper = Paper.Find(name)!.Across();
        Assert.Equal((along, down), (SheetFrame.FieldCount(paper.Width), SheetFrame.FieldCount(paper.Height)));
        var signs = Texts(name).GroupBy(text => text).ToDictionary(group => group.Key, group => group.Count());

        // Figures run along both long edges, letters without I and O down both short ones.
        Assert.Equal(along + down, signs.Count);
        Assert.All(signs.Values, count => Assert.Equal(2, count));
        Assert.Contains(along.ToString(System.Globalization.CultureInfo.InvariantCulture), signs.Keys);
        Assert.DoesNotContain("I", signs.Keys);
        Assert.DoesNotContain("O", signs.Keys);
    }

    [Fact]
    public void A4_has_no_grid_and_a_roll_no_marks()
    {
        Assert.Empty(Texts("A4"));
        Assert.Single(Draw(Paper.Find("roll 594")!).Items);
    }

    [Fact]
    public void Fields_are_50_mm_long_counted_from_the_middle_of_the_paper_A_at_the_top()
    {
        var items = Draw(Paper.Find("A3")!.Across()).Items;

        // Source: ISO 5457 as in shared/check-values.md: 420 / 2 = 210, so the lines stand at 210 +- 50, 100, 150.
        var lines = items.OfType<DrawingItem.Stroke>().Where(stroke => stroke.Style.Width == 0.35 && stroke.Path.SegmentCount == 1)
            .Where(stroke => stroke.Path.Start.X == stroke.Path.End.X && stroke.Path.Start.Y > 200).Select(stroke => stroke.Path.Start.X);
        Assert.Equal([60, 110, 160, 260, 310, 360], lines.Order());
        var letters = items.OfType<DrawingItem.Text>().Where(text => char.IsLetter(text.Content[0]) && text.At.X < 20);
        Assert.Equal(["A", "B", "C", "D", "E", "F"], letters.OrderByDescending(text => text.At.Y).Select(text => text.Content));
    }

    [Fact]
    public void Centring_marks_stand_in_the_middle_of_the_paper_0_7_mm_wide_and_reach_10_mm_inside()
    {
        var paper = Paper.Find("A3")!.Across();
        var marks = Draw(paper).Items.OfType<DrawingItem.Stroke>()
            .Where(stroke => stroke.Style.Width == 0.7 && stroke.Path.SegmentCount == 1).Select(stroke => stroke.Path).ToList();
        Assert.Equal(4, marks.Count);
        Assert.All(marks, mark => Assert.True(
            (mark.Start.X == 210 && mark.End.X == 210) || (mark.Start.Y == 148.5 && mark.End.Y == 148.5), mark.ToString()));
        Assert.Contains(marks, mark => mark.End == new Point2(210, 297 - 10 - 10));
        Assert.Contains(marks, mark => mark.End == new Point2(420 - 10 - 10, 148.5));
    }

    private static IEnumerable<string> Texts(string paper) =>
        Draw(Paper.Find(paper)!.Across()).Items.OfType<DrawingItem.Text>().Select(text => text.Content);

    private static Sketch Draw(Paper paper)
    {
        var sketch = new Sketch();
        SheetFrame.Draw(sketch, SheetLayout.Of(paper, _ => 20));
        return sketch;
    }
}
