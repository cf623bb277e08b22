using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Conventions;

public class SignsTests
{
    [Fact]
    public void An_arrow_head_has_15_degrees_between_its_flanks_and_its_tip_at_the_place()
    {
        // ISO 129-1: 15° or 30°, filled: from memory.
        var sketch = new Sketch();
        var tip = new Point2(12, -7);
        var direction = Vector2.FromAngle(0.7);
        Arrowhead.Draw(sketch, tip, direction);
        var vertices = Assert.Single(Assert.IsType<DrawingItem.Fill>(Assert.Single(sketch.Items)).Paths).Vertices;
        Assert.Equal(tip, vertices[0].Point);
        var (a, b) = (vertices[1].Point - tip, vertices[2].Point - tip);
        Assert.Equal(15, double.RadiansToDegrees(Math.Acos(a.Dot(b) / (a.Length * b.Length))), 1e-9);
        Assert.True(a.Dot(direction) < 0 && b.Dot(direction) < 0);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(37)]
    public void A_grain_arrow_lies_along_the_grain_and_says_so(double degrees)
    {
        var angle = double.DegreesToRadians(degrees);
        var items = GrainArrow.Draw(angle, 60, 2.5).Items;
        var line = items.OfType<DrawingItem.Stroke>().Single().Path;
        var shaft = line.SegmentAt(1);
        Assert.Equal(60, shaft.Length, 1e-9);
        Assert.Equal(0, (shaft.End - shaft.Start).Cross(Vector2.FromAngle(angle)), 1e-9);

        // Half heads on opposite sides: the sign is the same turned by half a turn.
        var barbs = (line.Vertices[0].Point - shaft.Start, line.Vertices[3].Point - shaft.End);
        Assert.Equal(barbs.Item1, -barbs.Item2);
        Assert.Equal("grain", items.OfType<DrawingItem.Text>().Single().Content);
    }

    [Fact]
    public void A_centre_line_sign_stands_beyond_the_upper_end_whichever_way_the_line_runs()
    {
        var up = CentreLineSymbol.For(Path2.Line(new(3, -50), new(3, 60)), 3.5).First();
        var down = CentreLineSymbol.For(Path2.Line(new(3, 60), new(3, -50)), 3.5).First();
        Assert.Equal(up.At, down.At);
        var room = PlanForge.Drafting.Lettering.TextExtents.Of(up);
        Assert.True(room.MinY > 60);
        Assert.Equal(3, room.Centre.X, 1e-9);
    }

    [Fact]
    public void The_cross_of_a_hole_has_no_centre_line_sign() => Assert.Empty(CentreLineSymbol.For(Path2.Line(new(0, 0), new(12, 0)), 3.5));
}
