using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.PartDrawings;

public class CutDrawingsTests
{
    [Fact]
    public void Cut_lines_are_all_there_unchanged_and_in_order()
    {
        var part = SampleParts.Former("F2", 92, 112);
        var cut = CutDrawings.Of(part).Drawing.Items.OfType<DrawingItem.Stroke>().Where(stroke => stroke.Layer == Layer.Cut);
        Assert.Equal(part.Lines.Where(line => line.Use == LineUse.Cut).Select(line => line.Path), cut.Select(stroke => stroke.Path));
    }

    [Fact]
    public void Nothing_but_cut_lines_marks_and_the_name_is_in_it()
    {
        foreach (var part in SampleParts.All.Where(part => part.Making == Making.Cut))
        {
            var drawing = CutDrawings.Of(part);
            Assert.Equal(part.Id, drawing.Name);
            Assert.All(drawing.Drawing.Items, item => Assert.True(
                item is DrawingItem.Stroke { Layer: Layer.Cut or Layer.Score } or DrawingItem.Text { Layer: Layer.Score }));
        }
    }

    [Fact]
    public void Marks_end_at_the_edge_of_the_material()
    {
        // The former is 92 wide with notches 4 deep at the datum line and an opening from -20.7 to 20.7 across it.
        var part = SampleParts.Former("F2", 92, 112);
        var datum = Marks(part).Where(path => Math.Abs(path.Start.Y) < 1e-9 && Math.Abs(path.End.Y) < 1e-9).ToList();
        Assert.Equal(2, datum.Count);
        Assert.Equal([(-42, -20.7), (20.7, 42)], datum.Select(path => (Math.Round(path.Start.X, 6), Math.Round(path.End.X, 6))));
    }

    [Fact]
    public void A_mark_on_an_edge_is_left_out_lest_it_be_burnt_twice()
    {
        var part = SampleParts.Shim(1) with
        {
            Lines = [new(LineUse.Cut, Path2.Rectangle(new(0, 0, 100, 20))), new(LineUse.Datum, Path2.Line(new(-5, 0), new(105, 0)))],
        };
        Assert.Empty(Marks(part));
    }

    [Fact]
    public void A_trim_line_is_marked_and_a_hidden_one_is_not()
    {
        var part = SampleParts.Shim(1) with
        {
            Lines =
            [
                new(LineUse.Cut, Path2.Rectangle(new(0, 0, 100, 20))), new(LineUse.Trim, Path2.Line(new(0, 15), new(100, 15))),
                new(LineUse.Hidden, Path2.Line(new(0, 5), new(100, 5))),
            ],
        };
        Assert.Equal(15, Assert.Single(Marks(part)).Start.Y);
    }

    [Fact]
    public void The_name_lies_on_the_material_clear_of_all_lines()
    {
        var part = SampleParts.Former("F2", 92, 112);
        var drawing = CutDrawings.Of(part).Drawing;
        var name = drawing.Items.OfType<DrawingItem.Text>().Single();
        Assert.Equal("Former F2", name.Content);
        var room = TextExtents.Of(name);
        Assert.True(PartOutline.MaterialOf(part).Contains(room.Centre));
        foreach (var stroke in drawing.Items.OfType<DrawingItem.Stroke>())
        {
            var walked = stroke.Path.Segments.SelectMany(s => Enumerable.Range(0, 301).Select(i => s.PointAt(i / 300.0)));
            Assert.DoesNotContain(walked, room.Contains);
        }
    }

    [Fact]
    public void An_engraved_label_takes_the_place_of_the_name()
    {
        var part = SampleParts.Former("F2", 92, 112) with
        {
            Labels = [new("F2", new(-30, 40), IsEngraved: true), new("not this", new(0, 0))],
        };
        Assert.Equal("F2", CutDrawings.Of(part).Drawing.Items.OfType<DrawingItem.Text>().Single().Content);
    }

    [Fact]
    public void A_part_without_an_outline_cannot_be_cut()
    {
        Assert.Throws<ArgumentException>(() => CutDrawings.Of(SampleParts.Saddle("Left")));
        Assert.Throws<ArgumentException>(() => CutDrawings.Of(SampleParts.Shim(1) with { Lines = [] }));
    }

    private static IEnumerable<Path2> Marks(Part part) =>
        CutDrawings.Of(part).Drawing.Items.OfType<DrawingItem.Stroke>().Where(s => s.Layer == Layer.Score).Select(s => s.Path);
}
