using System.Xml.Linq;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Svg;
using PlanForge.Output.Tests.Readers;

namespace PlanForge.Output.Tests.Svg;

public sealed class SvgWriterTests
{
    private static readonly SvgFile Sheet = new(SvgWriter.Write(Samples.Sheet(
        new DrawingItem.Fill(Layer.Frame, [Path2.Rectangle(new(20, 10, 120, 14))], 0.5),
        new DrawingItem.Stroke(Layer.CentreAndDatum, Path2.Line(new(10, 100), new(90, 100)), new(LineType.LongDashedDotted, 0.25)),
        Samples.Stroke(Layer.Cut, Path2.Circle(new(50, 60), 4)),
        Samples.Text("A <b> & c"),
        Samples.Text("   "))));

    [Fact]
    public void Sizes_are_millimetres_and_the_view_box_has_the_same_numbers()
    {
        Assert.Equal(297, Sheet.Width);
        Assert.Equal(210, Sheet.Height);
        Assert.Equal("0 0 297 210", Sheet.Root.Attribute("viewBox")!.Value);
    }

    [Fact]
    public void A_sheet_lies_on_white_paper()
    {
        var paper = Sheet.Root.Elements().ElementAt(1);
        Assert.Equal("rect", paper.Name.LocalName);
        Assert.Equal(["297", "210", "#ffffff"], paper.Attributes().Select(attribute => attribute.Value));
    }

    [Fact]
    public void There_is_one_group_for_each_layer_in_drawing_order() => Assert.Equal(
        ["frame", "centre-and-datum", "cut", "notes"], Sheet.Groups.Select(group => group.Attribute("id")!.Value));

    [Fact]
    public void Up_is_up()
    {
        var bar = SvgFile.Contours(Sheet.Groups.First()).Single();
        Assert.Equal([(20, 200), (120, 200), (120, 196), (20, 196)], bar.Points.Select(point => (point.X, point.Y)));
    }

    [Fact]
    public void Fills_are_grey_and_lines_have_width_and_dashes()
    {
        var fill = Sheet.Groups.First().Elements().Single();
        Assert.Equal("#808080", fill.Attribute("fill")!.Value);
        Assert.Equal("none", fill.Attribute("stroke")!.Value);
        var centreLine = Sheet.Groups.ElementAt(1).Elements().Single();

        // shared/check-values.md section 5, worked: type 04 at d = 0.25.
        Assert.Equal("6 0.75 0.125 0.75", centreLine.Attribute("stroke-dasharray")!.Value);
        Assert.Equal("0.25", centreLine.Attribute("stroke-width")!.Value);
    }

    [Fact]
    public void Circles_stay_circles()
    {
        var circle = Sheet.Groups.ElementAt(2).Elements().Single();
        Assert.Equal(["cx", "cy", "r", "stroke-width"], circle.Attributes().Select(attribute => attribute.Name.LocalName));
        Assert.Equal(["50", "150", "4", "0.5"], circle.Attributes().Select(attribute => attribute.Value));
    }

    [Fact]
    public void Lettering_is_strokes_and_spaces_leave_nothing()
    {
        var letters = Sheet.Groups.Last().Elements().Single();
        Assert.Equal("path", letters.Name.LocalName);
        Assert.Equal("0.35", letters.Attribute("stroke-width")!.Value);
        Assert.DoesNotContain(Sheet.Root.Descendants(), element => element.Name.LocalName is "text" or "tspan");
    }

    // Steps of a letter are rounded to a thousandth of a millimetre, and the radius of an arc with its ends.
    [Theory]
    [InlineData(2.5, 0)]
    [InlineData(7, 0.3)]
    [InlineData(3.5, -Math.PI / 2)]
    public void Letters_stand_where_the_lettering_puts_them(double height, double angle)
    {
        const string Line = "Former F3, 2 1\u20444 in \u00d8 %&@8 gray";
        var at = new Point2(100.1234, 50.9876);
        var sheet = Samples.Sheet(new DrawingItem.Text(Layer.Notes, Line, at, height, angle));
        var written = SvgFile.Contours(new SvgFile(SvgWriter.Write(sheet)).Groups.Single()).ToList();
        var truth = Drafting.Lettering.TextLayout.StrokesOf(Line, at, height, angle).Select(Polyline.Of).ToList();
        Assert.Equal(truth.Select(stroke => stroke.IsClosed), written.Select(stroke => stroke.IsClosed));
        for (var i = 0; i < truth.Count; i++)
        {
            var upright = written[i] with { Points = [.. written[i].Points.Select(point => new Point2(point.X, sheet.Height - point.Y))] };
            Assert.InRange(upright.DistanceTo(truth[i]), 0, 0.002);
        }
    }

    [Fact]
    public void Titles_are_escaped()
    {
        var sheet = Samples.Sheet() with { Title = "Bolt <M6> & \"plate\" ½ \u0001 \uD800 漢" };
        Assert.Equal("1  Bolt <M6> & \"plate\" ½ \uFFFD \uFFFD 漢", new SvgFile(SvgWriter.Write(sheet)).Title);
    }

    [Fact]
    public void Nothing_is_transformed_or_fetched_from_elsewhere()
    {
        foreach (var attribute in Sheet.Root.DescendantsAndSelf().Attributes())
        {
            Assert.NotEqual("transform", attribute.Name.LocalName);
            Assert.DoesNotContain("href", attribute.Name.LocalName, StringComparison.Ordinal);
            Assert.DoesNotContain("url(", attribute.Value, StringComparison.Ordinal);
        }
    }
}
