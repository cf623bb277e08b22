using System.Xml.Linq;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Svg;
using PlanForge.Output.Tests.Readers;

namespace PlanForge.Output.Tests.Svg;

// What shops want of an SVG: shared/practice.md, "Cutting from DXF and SVG".
public sealed class SvgCutWriterTests
{
    private static readonly SvgFile Former = Read(Samples.Former);

    private static readonly SvgFile Stock = new(SvgCutWriter.Write(Samples.Stock, CutProfile.Default));

    [Fact]
    public void Sizes_are_millimetres_and_the_view_box_has_the_same_numbers()
    {
        Assert.Equal([92, 109.52], [Former.Width, Former.Height]);
        Assert.Equal("0 0 92 109.52", Former.Root.Attribute("viewBox")!.Value);
        Assert.Equal([300, 200], [Stock.Width, Stock.Height]);
        Assert.Equal("0 0 300 200", Stock.Root.Attribute("viewBox")!.Value);
    }

    [Fact]
    public void There_is_one_element_a_contour_and_no_style_that_hides_it()
    {
        Assert.Equal("F3", Former.Title);
        Assert.Equal(["score", "cut-inside", "cut-outside"], Former.Groups.Select(group => group.Attribute("id")!.Value));
        Assert.Equal([4, 1, 2], Former.Groups.Select(group => group.Elements().Count()));
        Assert.All(Former.Groups, group => Assert.Equal("none", group.Attribute("fill")!.Value));
        Assert.All(Former.Groups.Elements(), element => Assert.Single(SvgFile.Contours(new XElement("g", element))));
    }

    [Fact]
    public void Half_circles_are_written_in_halves_that_cannot_be_misread()
    {
        // By hand: a slot 6 mm wide, 10 mm between centres, its lower end at y = -3 and its upper at y = 13, which becomes 0.
        var slot = Path2.Closed([new(new(0, 0), 1), new(new(6, 0)), new(new(6, 10), 1), new(new(0, 10))]);
        var data = Read(new("A", new([Samples.Stroke(Layer.Cut, slot)]))).Groups.Elements().Single().Attribute("d")!.Value;
        Assert.Equal("M0 13A3 3 0 0 0 3 16A3 3 0 0 0 6 13L6 3A3 3 0 0 0 3 0A3 3 0 0 0 0 3Z", data);
    }

    [Fact]
    public void A_sheet_has_a_group_for_each_part_in_order_and_each_part_its_operations()
    {
        Assert.Equal(["part-1", "part-2"], Stock.Groups.Select(group => group.Attribute("id")!.Value));
        Assert.All(Stock.Groups, group => Assert.Equal(
            ["score", "cut-inside", "cut-outside"],
            group.Elements().Where(element => element.Name.LocalName == "g").Select(element => element.Attribute("id")!.Value["part-1-".Length..])));

        // The hole of the former at (30, 84): moved by (5, 5), and turned a quarter about the origin to (-84, 30), then moved by (280, 10).
        Assert.Equal(["35 111", "196 160"], Stock.Root.Descendants().Where(element => element.Name.LocalName == "circle")
            .Select(circle => $"{circle.Attribute("cx")!.Value} {circle.Attribute("cy")!.Value}"));
    }

    [Fact]
    public void Kerf_and_notes_are_said_and_not_drawn()
    {
        Assert.Equal("birch-ply-3, kerf 0.2 mm compensated", Stock.Title);
        var description = Stock.Root.Elements().Single(element => element.Name.LocalName == "desc").Value;
        Assert.Equal("F3: 2 off birch ply 3 mm; Kerf 0.2 mm is compensated", description);
        Assert.DoesNotContain(Stock.Root.Descendants(), element => element.Name.LocalName is "text" or "rect");
    }

    [Fact]
    public void The_profile_says_colours_order_and_what_is_left_out()
    {
        var profile = new CutProfile([new(CutOperation.CutOutside, "A", 1, 0xFF0000), new(CutOperation.CutInside, "B", 2, 0x00FFFF)]);
        var file = new SvgFile(SvgCutWriter.Write(Samples.Former with { Notes = ["F3"] }, profile));
        Assert.Equal(
            [("cut-outside", "#FF0000"), ("cut-inside", "#00FFFF")],
            file.Groups.Select(group => (group.Attribute("id")!.Value, group.Attribute("stroke")!.Value)));
        Assert.DoesNotContain(file.Root.Elements(), element => element.Name.LocalName == "desc");
    }

    [Fact]
    public void Fills_empty_drawings_and_what_means_no_work_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Read(new("A", new([new DrawingItem.Fill(Layer.Cut, [Path2.Circle(new(0, 0), 1)], 0)]))));
        Assert.Throws<ArgumentException>(() => Read(new("A", new([]))));
        Assert.Throws<ArgumentException>(() => Read(new("A", new([Samples.Stroke(Layer.Frame, Path2.Circle(new(0, 0), 1))]))));
    }

    private static SvgFile Read(CutDrawing drawing) => new(SvgCutWriter.Write(drawing, CutProfile.Default));
}
