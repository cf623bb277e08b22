using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.PartDrawings;

public class PartDrawingTests
{
    private const DisplayUnit Unit = DisplayUnit.Millimetre;

    public static TheoryData<string> Names => [.. SampleParts.All.Select(part => part.Id)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_line_of_the_part_is_drawn_as_it_runs_with_its_style_and_layer(string id)
    {
        var part = Part(id);
        var strokes = Upright(part).Items.OfType<DrawingItem.Stroke>().ToList();
        Assert.All(part.Lines, line => Assert.Contains(strokes, stroke =>
            stroke.Path.Vertices.SequenceEqual(line.Path.Vertices)
            && stroke.Style == LineConventions.StyleOf(line.Use) && stroke.Layer == LineConventions.LayerOf(line.Use)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Title_notes_and_tables_are_all_there(string id)
    {
        var part = Part(id);
        var texts = Upright(part).Items.OfType<DrawingItem.Text>().Select(text => text.Content).ToList();
        var all = string.Join(' ', texts);
        Assert.Contains(part.Title, texts);
        Assert.All(part.Notes, note => Assert.Contains(note, all, StringComparison.Ordinal));
        Assert.All(part.Labels, label => Assert.Contains(label.Text, texts));
        Assert.All(part.Tables.SelectMany(table => table.Rows.SelectMany(row => row)), cell => Assert.Contains(cell, texts));
    }

    [Fact]
    public void Material_thickness_and_number_of_cut_parts_are_said()
    {
        var texts = Upright(SampleParts.Shim(1)).Items.OfType<DrawingItem.Text>();
        Assert.Contains(texts, text => text.Content == "spruce 3 mm, make 2");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_block_of_text_touches_neither_lines_nor_labels(string id)
    {
        foreach (var drawing in AllArrangements(Part(id)))
        {
            var (own, block) = Split(drawing);
            foreach (var text in block)
            {
                var room = TextExtents.Of(text);
                Assert.All(own.OfType<DrawingItem.Text>(), other => Assert.False(room.Touches(TextExtents.Of(other)), text.Content));
                foreach (var point in own.OfType<DrawingItem.Stroke>().SelectMany(stroke => Walked(stroke.Path)))
                {
                    Assert.False(room.Contains(point), text.Content);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void All_texts_read_from_below_or_from_the_right_and_none_is_small(string id)
    {
        foreach (var text in AllArrangements(Part(id)).SelectMany(drawing => drawing.Items).OfType<DrawingItem.Text>())
        {
            Assert.InRange(text.Angle, (-Math.PI / 2) + 1e-6, (Math.PI / 2) + 1e-6);
            Assert.True(text.Height >= 2.5);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Bounds_are_those_of_the_items(string id)
    {
        foreach (var drawing in AllArrangements(Part(id)))
        {
            var around = ItemExtents.OfAll(drawing.Items);
            Assert.Equal(around.MinX, drawing.Bounds.MinX, 1e-9);
            Assert.Equal(around.MinY, drawing.Bounds.MinY, 1e-9);
            Assert.Equal(around.MaxX, drawing.Bounds.MaxX, 1e-9);
            Assert.Equal(around.MaxY, drawing.Bounds.MaxY, 1e-9);
        }
    }

    [Fact]
    public void A_part_that_is_turned_keeps_its_size_and_says_so()
    {
        var drawing = PartArrangements.Turned(SampleParts.Former("F3", 92, 118), Unit).Fitting((_, _) => true).First();
        Assert.True(drawing.IsTurned);
        var cut = ItemExtents.OfAll(drawing.Items.Where(item => item.Layer == Layer.Cut)).Grown(-0.175);
        Assert.Equal(118, cut.Width, 1e-9);
        Assert.Equal(92, cut.Height, 1e-9);
        Assert.Contains(drawing.Items.OfType<DrawingItem.Text>(), text => text.Content == "Drawn turned a quarter to the left.");
    }

    [Fact]
    public void A_part_has_its_name_on_its_material_so_that_it_stays_named_when_cut_out()
    {
        foreach (var part in new[] { SampleParts.Former("F1", 76, 82), SampleParts.Saddle("Left"), SampleParts.LevelRest(250) })
        {
            var material = PartOutline.MaterialOf(part);
            Assert.Contains(
                Upright(part).Items.OfType<DrawingItem.Text>(),
                text => text.Content == part.Title && material.Contains(TextExtents.Of(text).Centre));
        }
    }

    [Fact]
    public void A_strip_too_narrow_for_the_grain_arrow_has_it_beside_it()
    {
        var drawing = Upright(SampleParts.Shim(0.5));
        Assert.True(TextExtents.Of(drawing.Items.OfType<DrawingItem.Text>().Single(text => text.Content == "grain")).MinX > 120);
    }

    [Fact]
    public void The_arrangements_come_smallest_first_and_only_those_with_room()
    {
        var arrangements = PartArrangements.Upright(SampleParts.Former("F1", 76, 82), Unit);
        var areas = arrangements.Fitting((_, _) => true).Select(drawing => drawing.Bounds.Width * drawing.Bounds.Height).ToList();
        Assert.True(areas.Count >= 3);
        Assert.Equal(areas.Order(), areas);
        Assert.All(arrangements.Fitting((width, _) => width < 150), drawing => Assert.True(drawing.Bounds.Width < 150));
    }

    [Fact]
    public void On_sheets_in_inches_fractions_are_lettered_as_such()
    {
        var part = SampleParts.Shim(1) with { Notes = ["Hole 11/64 in"], Labels = [new("3/8 in", new(40, 20))] };
        var drawing = PartArrangements.Upright(part, DisplayUnit.Inch).Fitting((_, _) => true).First();
        var texts = drawing.Items.OfType<DrawingItem.Text>().ToList();
        Assert.Contains(texts, text => text.Content == "Hole 11⁄64 in");
        Assert.Contains(texts, text => text is { Content: "3⁄8 in", Height: 3.5 });
    }

    [Fact]
    public void Without_room_there_is_no_drawing() =>
        Assert.Empty(PartArrangements.Upright(SampleParts.Shim(1), Unit).Fitting((_, _) => false));

    private static Part Part(string id) => SampleParts.All.Single(part => part.Id == id);

    private static PartDrawing Upright(Part part) => PartArrangements.Upright(part, Unit).Fitting((_, _) => true).First();

    private static IEnumerable<PartDrawing> AllArrangements(Part part) =>
        PartArrangements.Upright(part, Unit).Fitting((_, _) => true).Concat(PartArrangements.Turned(part, Unit).Fitting((_, _) => true));

    /// <summary>What belongs to the part itself, and the texts of the block: those on the notes layer that are no labels.</summary>
    private static (List<DrawingItem> Own, List<DrawingItem.Text> Block) Split(PartDrawing drawing)
    {
        var part = drawing.Part;
        var labels = part.Labels.Select(label => label.Text).ToHashSet();
        bool IsBlock(DrawingItem item) => item.Layer == Layer.Notes && item is DrawingItem.Text text && !labels.Contains(text.Content);
        var own = drawing.Items.Where(item => item.Layer != Layer.Notes || (item is DrawingItem.Text && !IsBlock(item))).ToList();
        return (own, [.. drawing.Items.Where(IsBlock).Cast<DrawingItem.Text>()]);
    }

    private static IEnumerable<Point2> Walked(Path2 path) =>
        path.Segments.SelectMany(s => Enumerable.Range(0, 201).Select(i => s.PointAt(i / 200.0)));
}
