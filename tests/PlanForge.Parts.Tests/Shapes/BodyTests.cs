using CsCheck;
using MathNet.Numerics.Interpolation;
using PlanForge.Airframe;
using PlanForge.Geometry.Curves;
using PlanForge.Parts.Shapes;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Shapes;

public class BodyTests
{
    [Fact]
    public void A_fair_run_is_the_natural_cubic_spline_of_another_library()
    {
        double[] x = [0, 110, 250, 420, 800], y = [12, 40, 55, 47, 15];
        var mine = StationCurve.Through([.. x], [.. y], [Span.Fair, Span.Fair, Span.Fair, Span.Fair]);

        // MathNet.Numerics 5, CubicSpline.InterpolateNatural.
        var theirs = CubicSpline.InterpolateNatural(x, y);
        for (var i = 0; i < 4; i++)
        {
            for (var t = 0.0; t <= 1; t += 0.125)
            {
                var at = x[i] + (t * (x[i + 1] - x[i]));
                var value = mine.At(i, Geometry.Dual.U(at));
                Assert.Equal(theirs.Interpolate(at), value.Value, 9);
                Assert.Equal(theirs.Differentiate(at), value.Du, 9);
            }
        }
    }

    [Fact]
    public void A_fair_run_leaves_a_straight_one_along_its_line()
    {
        var curve = StationCurve.Through([0, 100, 200, 300], [10, 20, 24, 25], [Span.Straight, Span.Fair, Span.Fair]);
        Assert.Equal(0.1, curve.At(0, Geometry.Dual.U(100)).Du, 12);
        Assert.Equal(0.1, curve.At(1, Geometry.Dual.U(100)).Du, 12);
    }

    [Fact]
    public void The_inside_of_a_round_tube_is_a_round_tube_thinner_by_the_skin()
    {
        var body = Body(2.5, Ellipse(0, 50, 50, -50), Ellipse(100, 50, 50, -50));
        var inside = BodyOutline.Inside(body, 40, 0.004)!;

        // Area of a circle; the outline may stray by its tolerance.
        Assert.Equal(Math.PI * 47.5 * 47.5, inside.SignedArea, tolerance: 2 * Math.PI * 47.5 * 0.004);
        Assert.All(inside.Flattened(0.001), point => Assert.Equal(47.5, (point - Geometry.Point2.Origin).Length, tolerance: 0.006));
    }

    [Fact]
    public void The_inside_of_a_cone_lies_one_skin_from_it_along_the_normal()
    {
        // A cone of half angle a: radius r at the plane, inside radius r − t/cos a.
        var body = Body(3, Ellipse(0, 60, 60, -60), Ellipse(200, 20, 20, -20));
        var inside = BodyOutline.Inside(body, 100, 0.004)!;
        var expected = 40 - (3 / Math.Cos(Math.Atan(0.2)));
        Assert.All(inside.Flattened(0.001), point => Assert.Equal(expected, (point - Geometry.Point2.Origin).Length, tolerance: 0.006));
    }

    [Fact]
    public void The_inside_of_a_rounded_box_keeps_its_flats_and_lessens_its_radius()
    {
        var stations = new[] { 0.0, 100 }.Select(x => new FuselageStation(x, 40, 40, 30, -30, new(10, 10, 10, 10), Run.Straight, Nowhere));
        var inside = BodyOutline.Inside(Body(3, [.. stations]), 50, 0.004)!;
        Assert.Equal((74 * 54) - ((4 - Math.PI) * 49), inside.SignedArea, tolerance: 0.2);
        Assert.Equal(37, inside.Bounds.MaxX, 9);
        Assert.Equal(27, inside.Bounds.MaxY, 9);
    }

    [Fact]
    public void A_corner_radius_within_the_skin_is_sharp_inside()
    {
        var stations = new[] { 0.0, 100 }.Select(x => new FuselageStation(x, 40, 40, 30, -30, new(2, 2, 2, 2), Run.Straight, Nowhere));
        var inside = BodyOutline.Inside(Body(3, [.. stations]), 50, 0.004)!;
        Assert.Equal(74 * 54, inside.SignedArea, 6);
        Assert.Equal(4, inside.SegmentCount);
    }

    [Fact]
    public void Skins_of_different_thickness_each_narrow_their_own_side()
    {
        var body = FuselageShape.Of(new FuselageDescription(new(4, 1, 2), [Box(0, 40, 30, -30), Box(100, 40, 30, -30)], [], Nowhere));
        var bounds = BodyOutline.Inside(body, 50, 0.004)!.Bounds;
        Assert.Equal([-36, -28, 36, 29], new[] { bounds.MinX, bounds.MinY, bounds.MaxX, bounds.MaxY }.Select(value => Math.Round(value, 9)));
    }

    [Fact]
    public void Sides_that_lean_keep_their_thickness_square_to_themselves()
    {
        // Half-breadth 30 below to 50 above over 100: inside, across, the skin measures 3/cos of the lean.
        var stations = new[] { 0.0, 100 }.Select(x => new FuselageStation(x, 50, 30, 60, -40, default, Run.Straight, Nowhere));
        var body = Body(3, [.. stations]);
        var across = 3 / Math.Cos(Math.Atan(0.2));
        Assert.Equal(40 - across, body.Skins.HalfBreadthAt(50, 10)!.Value, 9);
    }

    [Fact]
    public void Folded_sides_meet_in_a_mitre_inside()
    {
        // A raised fold at station 100: both inner faces run on to the plane through the fold; at the fold the narrower one counts.
        var body = Body(3, Box(0, 40, 30, -30), Box(100, 50, 30, -30), Box(200, 40, 30, -30));
        var across = 3 / Math.Cos(Math.Atan(0.1));
        Assert.Equal(50 - across, body.Skins.HalfBreadthAt(100, 0)!.Value, 9);
        Assert.Equal(49.9 - across, body.Skins.HalfBreadthAt(99, 0)!.Value, 9);

        // A hollow fold: the inner faces are prolonged until they meet.
        var hollow = Body(3, Box(0, 50, 30, -30), Box(100, 40, 30, -30), Box(200, 50, 30, -30));
        Assert.Equal(40 - across, hollow.Skins.HalfBreadthAt(100, 0)!.Value, 9);
    }

    [Fact]
    public void The_side_is_its_own_half_breadth_everywhere() => Gen.Select(Gen.Double[0, 300], Gen.Double[-0.95, 0.95]).Sample((x, t) =>
    {
        var body = Body(0, Ellipse(0, 20, 22, -18, Run.Fair), Ellipse(150, 55, 60, -40, Run.Fair), Ellipse(300, 30, 28, -30, Run.Fair));
        double upper = body.UpperAt(x), lower = body.LowerAt(x), z = ((upper + lower) / 2) + (t * (upper - lower) / 2);

        // The equation of an ellipse with the section's own axes.
        var breadth = body.HalfBreadthAt(x, (upper + lower) / 2);
        Assert.Equal(breadth * Math.Sqrt(1 - (t * t)), body.HalfBreadthAt(x, z), 9);
    }, iter: 500);
}
