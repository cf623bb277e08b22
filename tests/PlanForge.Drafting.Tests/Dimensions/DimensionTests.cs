using CsCheck;
using PlanForge.Airframe;
using PlanForge.Drafting.Clipping;
using PlanForge.Drafting.Dimensions;
using PlanForge.Drafting.Dimensions.Placing;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Dimensions;

public class DimensionTests
{
    private static readonly Gen<PartDimension.Linear> Linears =
        from x in Gen.Double[-100, 100]
        from y in Gen.Double[-100, 100]
        from length in Gen.Double[0.5, 200]
        from lean in Gen.Double[-20, 20]
        from angle in Gen.OneOf(Gen.Int[-2, 2].Select(quarter => quarter * Math.PI / 2), Gen.Double[-Math.PI, Math.PI])
        from offset in Gen.Double[-30, 30]
        select Linear(new(x, y), length, lean, angle, offset);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(90, 90)]
    [InlineData(-90, 90)]
    [InlineData(180, 0)]
    [InlineData(135, -45)]
    [InlineData(-30, -30)]
    [InlineData(270, 90)]
    public void Text_along_a_line_reads_from_below_or_from_the_right(double degrees, double expected) =>
        Assert.Equal(
            expected, double.RadiansToDegrees(ReadableText.AngleAlong(double.DegreesToRadians(degrees))), 1e-9);

    [Fact]
    public void A_text_that_would_stand_on_its_head_is_turned_over_in_its_place()
    {
        var upright = ReadableText.Place("F3", new(10, 20), Anchor.Start, 0, 5);
        Assert.Equal(new(10, 20), upright.At);
        var turned = ReadableText.Place("F3", new(10, 20), Anchor.Start, Math.PI, 5);
        Assert.Equal(0, turned.Angle, 1e-12);
        Assert.Equal(10, turned.At.X + StrokeAlphabet.WidthOf("F3", 5), 1e-9);
        Assert.Equal(20, turned.At.Y + 5, 1e-9);
    }

    [Fact]
    public void Arrows_point_at_the_ends_of_the_measured_distance() =>
        Linears.Sample(
            dimension =>
            {
                var along = dimension.Direction;
                var (from, to) = ((dimension.From - Point2.Origin).Dot(along), (dimension.To - Point2.Origin).Dot(along));
                var tips = Draw(dimension).OfType<DrawingItem.Fill>().Select(fill => fill.Paths[0].Vertices[0].Point).ToList();
                var places = tips.Select(tip => (tip - Point2.Origin).Dot(along)).Order().ToList();
                Assert.Equal(2, tips.Count);
                Assert.Equal(Math.Min(from, to), places[0], 1e-9);
                Assert.Equal(Math.Max(from, to), places[1], 1e-9);
                Assert.Equal(0, (tips[1] - tips[0]).Dot(along.Left), 1e-9);
            },
            iter: 200,
            seed: "000000000000A");

    [Fact]
    public void Narrow_distances_have_their_arrows_outside_pointing_inward()
    {
        // ISO 129-1, from memory: arrows stand outside where there is no room between the extension lines.
        var items = Draw(new PartDimension.Linear(new(0, 0), new(4, 0), new(1, 0), 10));
        foreach (var head in items.OfType<DrawingItem.Fill>())
        {
            var corners = head.Paths[0].Vertices;
            var foot = corners[1].Point.Towards(corners[2].Point, 0.5);
            Assert.True(foot.X is < 0 or > 4);
        }
    }

    [Fact]
    public void Arrow_heads_are_filled_and_enclose_15_degrees()
    {
        // ISO 129-1, from memory.
        var corners = Draw(new PartDimension.Linear(new(0, 0), new(50, 0), new(1, 0), 10)).OfType<DrawingItem.Fill>().First().Paths[0].Vertices;
        var (a, b) = (corners[1].Point - corners[0].Point, corners[2].Point - corners[0].Point);
        Assert.Equal(15, double.RadiansToDegrees(Math.Acos(a.Dot(b) / (a.Length * b.Length))), 1e-9);
    }

    [Fact]
    public void The_text_stands_above_the_dimension_line_and_clear_of_it() =>
        Linears.Sample(
            dimension =>
            {
                var items = Draw(dimension);
                var text = items.OfType<DrawingItem.Text>().Single();
                Assert.InRange(text.Angle, (-Math.PI / 2) + 1e-9, (Math.PI / 2) + 1e-9);
                var up = Vector2.FromAngle(text.Angle).Left;
                var line = items.OfType<DrawingItem.Fill>().First().Paths[0].Vertices[0].Point;
                var strokes = TextLayout.StrokesOf(text.Content, text.At, text.Height, text.Angle);
                foreach (var point in strokes.SelectMany(stroke => stroke.Flattened(0.01)))
                {
                    // Half the pen of the text and half the line lie between.
                    Assert.True((point - line).Dot(up) > (text.Height / 20) + 0.09);
                }
            },
            iter: 200,
            seed: "000000000000B");

    [Fact]
    public void Rows_stand_10_mm_off_the_outline_and_7_mm_apart_shorter_dimensions_inside()
    {
        // Common practice, no source. The outline is 100 x 60.
        var outline = Path2.Rectangle(new(0, 0, 100, 60));
        Point2 corner = new(0, 0);
        var items = Draw(
            [outline],
            new PartDimension.Linear(corner, new(100, 0), new(1, 0), -5),
            new PartDimension.Linear(corner, new(40, 0), new(1, 0), -5),
            new PartDimension.Linear(new(40, 0), new(70, 0), new(1, 0), -5),
            new PartDimension.Linear(corner, new(0, 60), new(0, 1), 5));
        var tips = items.OfType<DrawingItem.Fill>().Select(fill => fill.Paths[0].Vertices[0].Point).ToList();
        Assert.Contains(new(100, -17), tips);
        Assert.Equal(2, tips.Count(tip => tip == new Point2(40, -10)));
        Assert.Contains(new(70, -10), tips);
        Assert.Contains(tips, tip => tip.DistanceTo(new(-10, 60)) < 1e-9);
    }

    [Fact]
    public void The_text_is_the_distance_along_the_direction()
    {
        var dimension = new PartDimension.Linear(new(0, 0), new(30, 40), new(0, 1), 10);
        Assert.Equal("40", Draw(dimension).OfType<DrawingItem.Text>().Single().Content);
        Assert.Equal("R5", Draw(dimension with { Text = "R5" }).OfType<DrawingItem.Text>().Single().Content);
        Assert.Equal(
            "1 37⁄64″",
            Draw(dimension with { To = new(0, 40.08) }, DisplayUnit.Inch).OfType<DrawingItem.Text>().Single().Content);
    }

    [Fact]
    public void Extension_lines_leave_a_gap_at_the_part_and_pass_the_dimension_line()
    {
        // ISO 129-1: both by eight line widths, here 8 x 0.18 = 1.44 mm: from memory.
        var strokes = Draw(new PartDimension.Linear(new(0, 0), new(50, 0), new(1, 0), 12)).OfType<DrawingItem.Stroke>().ToList();
        Assert.Contains(strokes, s => s.Path.Start.DistanceTo(new(0, 1.44)) < 1e-9 && s.Path.End.DistanceTo(new(0, 11.44)) < 1e-9);
        Assert.Contains(strokes, s => s.Path.Start.DistanceTo(new(50, 1.44)) < 1e-9 && s.Path.End.DistanceTo(new(50, 11.44)) < 1e-9);
    }

    [Fact]
    public void A_leader_touches_its_circle_square_to_it_and_ends_level_beside_its_text()
    {
        foreach (var textAt in new[] { new Point2(30, 20), new Point2(-60, 20) })
        {
            var items = Draw([Path2.Circle(new(1, 2), 4)], new PartDimension.Leader(new(1, 2), textAt, "⌀8", 4));
            var leader = items.OfType<DrawingItem.Stroke>().Single(stroke => stroke.Layer == Layer.Dimensions);
            var (side, knee, tip) = (leader.Path.Vertices[0].Point, leader.Path.Vertices[1].Point, leader.Path.End);
            Assert.Equal(4, tip.DistanceTo(new(1, 2)), 1e-9);
            Assert.Equal(0, (knee - tip).Unit().Cross((tip - new Point2(1, 2)).Unit()), 1e-9);
            Assert.Equal(side.Y, knee.Y, 1e-9);
            Assert.Equal(textAt.X > 0, side.X > 1);
            Assert.Equal(tip, items.OfType<DrawingItem.Fill>().Single().Paths[0].Vertices[0].Point);
            Assert.False(ItemExtents.Of(leader).Touches(TextExtents.Of(items.OfType<DrawingItem.Text>().Single())));
        }
    }

    private static PartDimension.Linear Linear(Point2 from, double length, double lean, double angle, double offset)
    {
        var direction = Vector2.FromAngle(angle);
        return new(from, from + (direction * length) + (direction.Left * lean), direction, offset);
    }

    private static List<DrawingItem> Draw(PartDimension.Linear dimension, DisplayUnit unit = DisplayUnit.Millimetre) =>
        Draw([Path2.Line(dimension.From, dimension.From + (dimension.Direction * 1e-3))], unit, dimension);

    private static List<DrawingItem> Draw(Path2[] outline, params PartDimension[] dimensions) =>
        Draw(outline, DisplayUnit.Millimetre, dimensions);

    private static List<DrawingItem> Draw(Path2[] outline, DisplayUnit unit, params PartDimension[] dimensions)
    {
        var sketch = new Sketch();
        var part = new Part(
            "part", "Parts", "Part", Making.Template, "", 0, 1, null, [.. outline.Select(path => new PartLine(LineUse.Cut, path))], [], [.. dimensions], [], [], []);
        Annotations.Draw(sketch, part, new(unit), new(2.5, 3.5, 5), new EvenOddArea(outline, 0.1));
        return [.. sketch.Items];
    }
}
