using System.Globalization;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Drafting.Tests.Sheets;

public class PaperTests
{
    // Source: shared/check-values.md section 4: A sizes in mm and pt (C: confirmed in public text); Letter and Tabloid in pt (C, as
    // ANSI A and B), Legal (from memory). ANSI C to E from their inches
    // (C: 17 x 22, 22 x 34, 34 x 44).
    private const string Sizes = """
        A0 841 1189 2383.937 3370.394
        A1 594 841 1683.780 2383.937
        A2 420 594 1190.551 1683.780
        A3 297 420 841.890 1190.551
        A4 210 297 595.276 841.890
        Letter 215.9 279.4 612 792
        Legal 215.9 355.6 612 1008
        Tabloid 279.4 431.8 792 1224
        ANSI-C 431.8 558.8 1224 1584
        ANSI-D 558.8 863.6 1584 2448
        ANSI-E 863.6 1117.6 2448 3168
        """;

    [Fact]
    public void Sizes_are_the_published_ones_in_millimetres_and_points()
    {
        foreach (var words in Sizes.Split('\n').Select(line => line.Split(' ')))
        {
            var paper = Paper.Find(words[0].Replace('-', ' '))!;
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

    [Theory]
    // Widths as the trade names them; 24 in = 609.6 and 36 in = 914.4 mm (shared/check-values.md section 4).
    [InlineData("roll 594", 594)]
    [InlineData("roll 610", 609.6)]
    [InlineData("roll 841", 841)]
    [InlineData("roll 914", 914.4)]
    public void A_roll_is_as_high_as_it_is_wide_and_at_most_5_m_long(string name, double width)
    {
        var roll = Paper.Find(name)!;
        Assert.True(roll.IsRoll);
        Assert.Equal(5000, roll.Width);
        Assert.Equal(width, roll.Height, 1e-9);
    }

    [Fact]
    public void Every_name_a_description_may_give_is_known_and_a_size_is_taken_as_it_is()
    {
        Assert.All(PaperNames, name => Assert.Equal(name, Paper.Of(new(name, null, null)).Name));
        Assert.Equal((200, 280), (Paper.Of(new("280 x 200 mm", 280, 200)).Width, Paper.Of(new("280 x 200 mm", 280, 200)).Height));
        Assert.Throws<ArgumentException>(() => Paper.Of(new("B9", null, null)));
    }

    private static IEnumerable<string> PaperNames => Paper.All.Concat(Paper.Rolls).Select(paper => paper.Name);

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
