using PlanForge.Airframe;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Nests;
using PlanForge.Drafting.Tests.Dimensions.Placing;
using PlanForge.Parts.Wording;
using static PlanForge.Drafting.Tests.Nests.NestSamples;

namespace PlanForge.Drafting.Tests.Nests;

public class NestDrawingTests
{
    public static TheoryData<double, double, DisplayUnit, bool> Rooms => new()
    {
        { 380, 230, DisplayUnit.Millimetre, false },
        { 180, 250, DisplayUnit.Inch, false },
        { 380, 230, DisplayUnit.Inch, true },
        { 140, 120, DisplayUnit.Millimetre, true },
    };

    [Theory]
    [MemberData(nameof(Rooms))]
    public void No_text_lies_on_another_or_on_a_line(double width, double height, DisplayUnit unit, bool isBoth)
    {
        foreach (var sheet in Nest(Formers(30), [Stock(300, 600)], 2).Sheets.Concat(Nest(Formers(3), [Stock(150, 900)], 2).Sheets))
        {
            var drawing = NestDrawing.Of(sheet, new ShownUnits(unit, isBoth), width, height)!;
            Assert.Empty(Overlaps.OfTexts(drawing.Items));
            Assert.Empty(Overlaps.OfLines(drawing.Items));
            Assert.True(drawing.Bounds.Width <= width && drawing.Bounds.Height <= height);
        }
    }

    [Fact]
    public void The_sheet_is_drawn_to_a_standard_reduction()
    {
        var sheet = Nest([Rectangle("P", 50, 40)], [Stock(100, 1000)]).Sheets[0];

        // ISO 5455 (from memory): 1:2, 1:5 and 1:10 and tenths of them. 1000 mm in 400 mm is 1:5, in 150 mm 1:10.
        var drawing = NestDrawing.Of(sheet, new(DisplayUnit.Millimetre), 400, 200)!;
        Assert.Equal(("1:5", 0.2, 200.0, 20.0), (drawing.ScaleName, drawing.View.Scale, drawing.View.Place.Width, drawing.View.Place.Height));
        Assert.Equal("1:10", NestDrawing.Of(sheet, new(DisplayUnit.Millimetre), 150, 200)!.ScaleName);
        Assert.Null(NestDrawing.Of(sheet, new(DisplayUnit.Millimetre), 20, 20));
    }

    [Fact]
    public void Every_part_is_named_or_numbered()
    {
        var sheet = Assert.Single(Nest([Rectangle("wide", 90, 80), Rectangle("narrow", 9, 3, quantity: 2)], [Stock(100, 300)]).Sheets);
        var texts = NestDrawing.Of(sheet, new(DisplayUnit.Millimetre), 380, 230)!.Items.OfType<DrawingItem.Text>().Select(text => text.Content).ToList();
        Assert.Single(texts, "wide");
        Assert.Equal(2, texts.Count(text => text == "1"));
        Assert.Single(texts, "1 narrow");
        Assert.Single(texts, "balsa 3 mm, 100 x 300 mm; scale 1:2; 3 parts, 24 % of the sheet");
    }

    [Fact]
    public void The_length_left_over_is_what_the_sheet_still_has()
    {
        // 90 along, a margin before and after: 300 − 96 are left.
        var sheet = Nest([Rectangle("P", 90, 80, 0)], [Stock(100, 300)]).Sheets[0];
        var texts = NestDrawing.Of(sheet, new(DisplayUnit.Millimetre), 380, 230)!.Items.OfType<DrawingItem.Text>().Select(text => text.Content);
        Assert.Contains("left over 204", texts);
    }
}
