using System.Globalization;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Drafting.Tests.Sheets;

public class PaperTests
{
    // Source: shared/check-values.md section 4: A sizes in mm and pt (C: confirmed in public text); Letter and Tabloid in pt (C, as
    // ANSI A and B), Legal (from memory).
    private const string Sizes = """
        A0 841 1189 2383.937 3370.394
        A1 594 841 1683.780 2383.937
        A2 420 594 1190.551 1683.780
        A3 297 420 841.890 1190.551
        A4 210 297 595.276 841.890
        Letter 215.9 279.4 612 792
        Legal 215.9 355.6 612 1008
        Tabloid 279.4 431.8 792 1224
        """;

    [Fact]
    public void Sizes_are_the_published_ones_in_millimetres_and_points()
    {
        foreach (var words in Sizes.Split('\n').Select(line => line.Split(' ')))
        {
            var paper = Paper.Find(words[0])!;
            var numbers = words[1..].Select(word => double.Parse(word, CultureInfo.InvariantCulture)).ToArray();
            Assert.Equal(numbers[0], paper.Width, 1e-9);
            Assert.Equal(numbers[1], paper.Height, 1e-9);
            Assert.Equal(numbers[2], paper.Width * 72 / 25.4, 0.0006);
            Assert.Equal(numbers[3], paper.Height * 72 / 25.4, 0.0006);
        }

        Assert.Equal(Sizes.Split('\n').Length, Paper.All.Length);
    }

    [Fact]
    public void A_name_is_found_in_any_case_and_an_unknown_one_is_not()
    {
        Assert.Equal("Letter", Paper.Find("letter")!.Name);
        Assert.Null(Paper.Find("A5"));
    }

    [Fact]
    public void Across_the_long_side_lies_level()
    {
        var across = Paper.Find("A3")!.Across();
        Assert.Equal((420, 297), (across.Width, across.Height));
    }

    [Theory]
    // Drawing space inside the frame: shared/check-values.md section 4 (ISO 5457, from memory and by subtraction).
    [InlineData("A0", false, 1159, 821)]
    [InlineData("A1", false, 811, 574)]
    [InlineData("A2", false, 564, 400)]
    [InlineData("A3", false, 390, 277)]
    [InlineData("A4", true, 180, 277)]
    public void The_frame_leaves_the_space_of_ISO_5457(string name, bool isPortrait, double width, double height)
    {
        var paper = Paper.Find(name)!;
        var frame = SheetLayout.Of(isPortrait ? paper : paper.Across(), _ => 20).Frame;
        Assert.Equal(width, frame.Width, 1e-9);
        Assert.Equal(height, frame.Height, 1e-9);
        Assert.Equal((20, 10), (frame.MinX, frame.MinY));
    }
}
