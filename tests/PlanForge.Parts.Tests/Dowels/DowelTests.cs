using PlanForge.Geometry;
using PlanForge.Parts.Dowels;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Dowels;

public class DowelTests
{
    [Theory]
    [InlineData(6, 3, 3.004117)] // shared/check-values.md 12.9
    [InlineData(6, 10, 3.046280)]
    [InlineData(8, 45, 5.656854)]
    public void An_oblique_dowel_makes_an_ellipse_of_semi_axis_r_over_cosine(double diameter, double angle, double expected)
    {
        var description = Description.PlateOnBox(0, angle, Description.Former("F", 96, 4) with { IsCrossFormer = true }) with
        {
            Dowels = new(diameter, 40, 0, 14, 0, Nowhere),
            Wing = Description.PlateOnBox(0, angle).Wing with { LeadingEdge = new(100, 40) },
        };
        var hole = DowelAxis.Of(Description.Rigged(description))!.HoleAt(96);
        Assert.Equal(diameter / 2, hole.Across, 12);
        Assert.Equal(expected, hole.Along, 6);
    }

    [Fact]
    public void The_drawn_hole_lies_on_its_ellipse_within_the_drawing_tolerance()
    {
        var hole = new EllipticHole(new(20, 30), 3, 3.2);
        var contour = hole.Contour();
        Assert.True(contour.SignedArea < 0, "an opening runs clockwise");
        Assert.All(contour.Flattened(0.0005), point =>
        {
            // To first order the distance from an ellipse is (√Q − 1) × radius, Q its implicit equation.
            double x = (point.X - 20) / 3, y = (point.Y - 30) / 3.2;
            Assert.Equal(0, (Math.Sqrt((x * x) + (y * y)) - 1) * 3.1, tolerance: 0.006);
        });
    }

    [Fact]
    public void A_hole_round_within_a_few_thousandths_is_cut_as_a_circle()
    {
        Assert.NotNull(new EllipticHole(new(20, 30), 4, 4.0009).Contour().AsCircle());
        Assert.Null(new EllipticHole(new(20, 30), 4, 4.1).Contour().AsCircle());
    }

    [Fact]
    public void Holes_of_wing_and_former_agree_through_the_axis()
    {
        // Closed form: the axis is parallel to the chord, a above it: at station x it lies at z0 + a/cos i − (x − x0) tan i.
        const double i = 3, above = 5;
        var description = Description.PlateOnBox(2, i, Description.Former("F", 90, 6) with { IsCrossFormer = true }) with
        {
            Dowels = new(8, 40, above, 14, 0.1, Nowhere),
        };
        var part = Description.Single(description, "former-F");
        double Expected(double x) => 60 + (above / Math.Cos(Degrees(i))) - ((x - 100) * Math.Tan(Degrees(i)));
        Assert.Equal(Expected(90), part.Value("former.F.dowel.front"), 9);
        Assert.Equal(Expected(96), part.Value("former.F.dowel.rear"), 9);

        var template = Description.Single(description, "dowels-wing");
        var holes = template.Lines(LineUse.Cut).Where(path => path.AsCircle() is not null).Select(path => path.AsCircle()!.Value).ToArray();
        Assert.Equal([new Point2(-20, above), new Point2(20, above)], holes.Select(hole => hole.Centre));
        Assert.All(holes, hole => Assert.Equal(4.05, hole.Radius, 12));
    }

    [Fact]
    public void The_hole_is_cut_where_the_axis_passes_mid_thickness()
    {
        var description = Description.PlateOnBox(0, 3, Description.Former("F", 90, 6) with { IsCrossFormer = true }) with
        {
            Dowels = new(8, 40, 5, 14, 0.1, Nowhere),
        };
        var part = Description.Single(description, "former-F");
        var middle = (part.Value("former.F.dowel.front") + part.Value("former.F.dowel.rear")) / 2;
        var holes = part.Lines(LineUse.Cut).Skip(1).ToArray();
        Assert.Equal(2, holes.Length);
        Assert.All(holes, hole => Assert.Equal(middle, hole.Bounds.Centre.Y, 6));
    }
}
