using CsCheck;
using PlanForge.Airframe;
using PlanForge.Drafting.Dimensions;
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
                var (from, to) = Feet(dimension);
                var tips = Draw(dimension).OfType<DrawingItem.Fill>().Select(fill => fill.Paths[0].Vertices[0].Point).ToList();
                Assert.Equal(2, tips.Count);
                Assert.True(tips.Exists(tip => tip.DistanceTo(from) < 1e-9) && tips.Exists(tip => tip.DistanceTo(to) < 1e-9));
            },
            iter: 200,
            seed: "000000000000A");

    [Fact]
    public void The_text_stands_above_the_dimension_line_and_clear_of_it() =>
        Linears.Sample(
            dimension =>
            {
                var items = Draw(dimension);
                var text = items.OfType<DrawingItem.Text>().Single();
                Assert.InRange(text.Angle, (-Math.PI / 2) + 1e-9, (Math.PI / 2) + 1e-9);
                var up = Vector2.FromAngle(text.Angle).Left;
                var line = Feet(dimension).From;
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
        Assert.Contains(strokes, s => s.Path.Start.DistanceTo(new(0, 1.44)) < 1e-9 && s.Path.End.DistanceTo(new(0, 13.44)) < 1e-9);
        Assert.Contains(strokes, s => s.Path.Start.DistanceTo(new(50, 1.44)) < 1e-9 && s.Path.End.DistanceTo(new(50, 13.44)) < 1e-9);
    }

    [Fact]
    public void A_leader_ends_at_its_place_beside_its_text()
    {
        foreach (var textAt in new[] { new Point2(30, 20), new Point2(-60, 20) })
        {
            var sketch = new Sketch();
            LeaderDrawing.Draw(sketch, new(new(1, 2), textAt, "⌀8"), 2.5);
            var stroke = sketch.Items.OfType<DrawingItem.Stroke>().Single();
            Assert.Equal(new(1, 2), stroke.Path.End);
            Assert.Equal(new(1, 2), sketch.Items.OfType<DrawingItem.Fill>().Single().Paths[0].Vertices[0].Point);
            Assert.False(ItemExtents.Of(stroke).Touches(TextExtents.Of(sketch.Items.OfType<DrawingItem.Text>().Single())));
        }
    }

    private static PartDimension.Linear Linear(Point2 from, double length, double lean, double angle, double offset)
    {
        var direction = Vector2.FromAngle(angle);
        return new(from, from + (direction * length) + (direction.Left * lean), direction, offset);
    }

    private static (Point2 From, Point2 To) Feet(PartDimension.Linear dimension)
    {
        var from = dimension.From + (dimension.Direction.Left * dimension.Offset);
        return (from, from + (dimension.Direction * (dimension.To - dimension.From).Dot(dimension.Direction)));
    }

    private static List<DrawingItem> Draw(PartDimension.Linear dimension, DisplayUnit unit = DisplayUnit.Millimetre)
    {
        var sketch = new Sketch();
        LinearDimension.Draw(sketch, dimension, unit, 2.5);
        return [.. sketch.Items];
    }
}
