using CsCheck;
using MathNet.Numerics.Integration;

namespace PlanForge.Geometry.Tests;

public sealed class Segment2Tests
{
    private static readonly Gen<Point2> Point = Gen.Select(Shapes.Fine(-100, 100), Shapes.Fine(-100, 100), (x, y) => new Point2(x, y));

    // From lines over arcs with radii of kilometres to nearly full circles, both ways round.
    private static readonly Gen<double> Bulge = Gen.OneOf(
        Gen.Const(0.0), Shapes.Fine(-1, 1), Shapes.Fine(-15, 15), Shapes.Fine(-9, -3).Select(exponent => Math.Pow(10, exponent)));

    private static readonly Gen<Segment2> Segment =
        Gen.Select(Point, Point, Bulge, (start, end, bulge) => new Segment2(start, end, bulge)).Where(s => s.Start != s.End);

    private static readonly Gen<(Segment2 Segment, double Fraction)> Places = Gen.Select(Segment, Shapes.Fine(0, 1));

    [Fact]
    public void Points_along_a_segment_are_found_at_their_fraction() => Places.Check(
        1000, (segment, fraction) => Assert.Equal(fraction, segment.NearestFraction(segment.PointAt(fraction)), 1e-9));

    [Fact]
    public void Ends_are_exact() => Segment.Check(
        500,
        segment =>
        {
            Assert.Equal(segment.Start, segment.PointAt(0));
            Assert.Equal(segment.End, segment.PointAt(1));
        });

    [Fact]
    public void Points_of_an_arc_lie_at_the_radius_from_the_centre() => Places.Where(place => Math.Abs(place.Segment.Bulge) > 1e-3).Check(
        500,
        (arc, fraction) => Assert.Equal(arc.Radius, arc.PointAt(fraction).DistanceTo(arc.Centre), arc.Radius * 1e-9));

    // Definition of the bulge: twice the sagitta over the chord, whatever the radius.
    [Theory]
    [InlineData(0.5)]
    [InlineData(1e-4)]
    [InlineData(1e-9)]
    [InlineData(-1e-12)]
    [InlineData(3)]
    public void Middle_of_an_arc_lies_at_the_sagitta_right_of_its_chord(double bulge)
    {
        var middle = new Segment2(new(0, 0), new(200, 0), bulge).PointAt(0.5);

        Assert.Equal(100, middle.X, 1e-12);
        Assert.Equal(-100 * bulge, middle.Y, 1e-12);
    }

    [Fact]
    public void Direction_is_that_of_the_difference_of_near_points() => Places.Check(
        500,
        (segment, fraction) =>
        {
            var step = 1e-6;
            var difference = segment.PointAt(fraction + step) - segment.PointAt(fraction - step);

            Assert.Equal(0, (difference.Unit() - segment.DirectionAt(fraction)).Length, 1e-6);
        });

    [Fact]
    public void Length_is_that_of_many_chords() => Segment.Check(
        200,
        segment =>
        {
            var chords = Enumerable.Range(0, 2000).Sum(i => segment.PointAt(i / 2000.0).DistanceTo(segment.PointAt((i + 1) / 2000.0)));

            Assert.Equal(segment.Length, chords, segment.Length * 1e-5);
        });

    [Fact]
    public void Part_runs_along_the_segment_between_its_fractions() => Gen.Select(Places, Shapes.Fine(0, 1)).Check(
        1000,
        (place, other) =>
        {
            var (segment, (from, to)) = (place.Segment, (Math.Min(place.Fraction, other), Math.Max(place.Fraction, other)));
            var part = segment.Part(from, to);

            Assert.Equal(segment.Length * (to - from), part.Length, 1e-6);
            Assert.Equal(0, part.PointAt(0.3).DistanceTo(segment.PointAt(from + (0.3 * (to - from)))), 1e-6);
        });

    [Fact]
    public void Bounds_touch_the_segment_on_all_sides_and_hold_it() => Segment.Check(
        500,
        segment =>
        {
            var sampled = Bounds2.Around(Enumerable.Range(0, 2001).Select(i => segment.PointAt(i / 2000.0)));
            var slack = segment.Length * 1e-6;

            Assert.Equal(sampled.MinX, segment.Bounds.MinX, slack);
            Assert.Equal(sampled.MinY, segment.Bounds.MinY, slack);
            Assert.Equal(sampled.MaxX, segment.Bounds.MaxX, slack);
            Assert.Equal(sampled.MaxY, segment.Bounds.MaxY, slack);
            Assert.True(segment.Bounds.Grown(1e-9).Contains(segment.PointAt(0.37)));
        });

    [Fact]
    public void Distance_is_the_least_of_many_points() => Gen.Select(Segment, Point).Check(
        300,
        (segment, point) =>
        {
            var least = Enumerable.Range(0, 2001).Min(i => segment.PointAt(i / 2000.0).DistanceTo(point));

            Assert.InRange(segment.DistanceTo(point), least - (segment.Length / 2000), least + 1e-9);
        });

    [Fact]
    public void Reversed_segment_runs_through_the_same_points() => Places.Check(
        500,
        (segment, fraction) =>
        {
            Assert.Equal(0, segment.PointAt(fraction).DistanceTo(segment.Reversed().PointAt(1 - fraction)), 1e-9);
            Assert.Equal(segment, segment.Reversed().Reversed());
        });

    [Fact]
    public void Reversed_line_has_no_negative_zero() =>
        Assert.False(double.IsNegative(new Segment2(new(0, 0), new(1, 0), 0).Reversed().Bulge));

    // Closed form: a half disc has πr²/2.
    [Fact]
    public void Cap_of_a_half_circle_is_a_half_disc() =>
        Assert.Equal(-12.5 * Math.PI, new Segment2(new(-5, 2), new(5, 2), -1).CapArea, 1e-12);

    // Oracle: MathNet.Numerics quadrature of the height over the chord, y = √(R² − x²) − R cos(θ/2), and of half its square.
    [Theory]
    [InlineData(0.9)]
    [InlineData(0.3)]
    [InlineData(0.03)]
    [InlineData(0.024)]
    [InlineData(2e-4)]
    [InlineData(9e-5)]
    public void Cap_area_and_moment_are_those_of_quadrature(double bulge)
    {
        var arc = new Segment2(new(-40, 0), new(40, 0), -bulge);
        var (radius, depth) = (arc.Radius, arc.Radius * Math.Cos(arc.Sweep / 2));
        double Height(double x) => ((radius * radius) - (x * x) - (depth * depth)) / (Math.Sqrt((radius * radius) - (x * x)) + depth);
        var area = GaussLegendreRule.Integrate(Height, -40, 40, 256);
        var moment = GaussLegendreRule.Integrate(x => Height(x) * Height(x) / 2, -40, 40, 256);

        Assert.Equal(-area, arc.CapArea, area * 1e-6);
        Assert.Equal(moment, arc.CapMoment, moment * 1e-6);
    }

    [Fact]
    public void Curvature_is_one_over_the_radius_with_the_sign_of_the_turn()
    {
        Assert.Equal(0.1, new Segment2(new(10, 0), new(0, 10), Math.Tan(Math.PI / 8)).Curvature, 1e-12);
        Assert.Equal(-0.1, new Segment2(new(0, 10), new(10, 0), -Math.Tan(Math.PI / 8)).Curvature, 1e-12);
        Assert.Equal(0, new Segment2(new(0, 10), new(10, 0), 0).Curvature);
    }

    [Fact]
    public void Point_of_the_circle_is_within_the_sweep_when_the_arc_passes_it()
    {
        var arc = new Segment2(new(10, 0), new(0, 10), Math.Tan(3 * Math.PI / 8));

        // Three quarters of a circle about (10, 10), by way of (20, 10) and (10, 20).
        Assert.True(arc.IsWithinSweep(new(20, 10)));
        Assert.True(arc.IsWithinSweep(new(10, 20)));
        Assert.False(arc.IsWithinSweep(new(10 - (10 / Math.Sqrt(2)), 10 - (10 / Math.Sqrt(2)))));
    }
}
