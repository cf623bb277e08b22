using PlanForge.Geometry.Offsets;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Offsets;

public sealed class OffsetterTests
{
    private static Region2 Of(params Path2[] contours) => Region2.FromContours(FillRule.NonZero, contours);

    private static Region2 Rectangle(double minX, double minY, double maxX, double maxY) => Of(Path2.Rectangle(new(minX, minY, maxX, maxY)));

    // check-values 12.14: kerf k, path offset k/2. Square a 50: mitred perimeter 4(a + k), area (a + k)²; rounded 4a + πk,
    // a² + 2ak + πk²/4. k 0.2: 200.8 / 200.628319; 2520.04 / 2520.031416. k 0.1: 200.4 / 200.314159.
    [Theory]
    [InlineData(0.2, 200.8, 2520.04, 200.628319, 2520.031416)]
    [InlineData(0.1, 200.4, 2510.01, 200.314159, 2510.007854)]
    public void Square_grows_by_the_kerf_as_published(double kerf, double sharpLength, double sharpArea, double roundLength, double roundArea)
    {
        var square = Rectangle(0, 0, 50, 50);
        var (sharp, round) = (Offset(CornerStyle.Sharp), Offset(CornerStyle.Round));

        Assert.Equal(4, sharp.SegmentCount);
        Assert.Equal(sharpLength, sharp.Length, 1e-6);
        Assert.Equal(sharpArea, sharp.SignedArea, 1e-6);
        Assert.Equal(8, round.SegmentCount);
        Assert.Equal(roundLength, round.Length, 1e-6);
        Assert.Equal(roundArea, round.SignedArea, 1e-6);

        Path2 Offset(CornerStyle corners) => Assert.Single(Offsetter.Offset(square, kerf / 2, corners).Parts).Outer;
    }

    // check-values 12.14: disc d becomes d + k, hole d becomes d − k; 10 and 0.1: 10.1 and 9.9. Circles stay circles.
    [Fact]
    public void Disc_grows_and_hole_shrinks_by_the_kerf_and_both_stay_circles()
    {
        var plate = Of(Path2.Rectangle(new(-50, -50, 50, 50)), Path2.Circle(new(3, 4), 5).Reversed()).Union(Of(Path2.Circle(new(80, 0), 5)));
        var offset = Offsetter.Offset(plate, 0.05, CornerStyle.Sharp);

        var (holeCentre, holeRadius) = Assert.NotNull(Assert.Single(offset.Parts[0].Openings).AsCircle());
        var (discCentre, discRadius) = Assert.NotNull(offset.Parts[1].Outer.AsCircle());
        Assert.Equal(9.9, 2 * holeRadius, 1e-12);
        Assert.Equal(10.1, 2 * discRadius, 1e-12);
        Assert.Equal(0, holeCentre.DistanceTo(new(3, 4)), 1e-12);
        Assert.Equal(0, discCentre.DistanceTo(new(80, 0)), 1e-12);
    }

    // Closed form: an L of two 30 × 10 arms has the perimeter 120 and the area 500. Outward by d with round corners: five
    // quarter discs at the outside corners, and the inside corner takes d² twice over: 500 + 120d + 5πd²/4 − d².
    [Theory]
    [InlineData(1)]
    [InlineData(7.5)]
    public void L_shape_grows_round_by_its_closed_form(double distance)
    {
        var arms = Rectangle(0, 0, 30, 10).Union(Rectangle(0, 0, 10, 30));
        var expected = 500 + (120 * distance) + (5 * Math.PI * distance * distance / 4) - (distance * distance);

        Assert.Equal(expected, Offsetter.Offset(arms, distance, CornerStyle.Round).Area, 1e-9);
    }

    // Closed form: inward by d the arms are 10 − 2d wide; the inside corner, rounded, adds d²(1 − π/4) less than sharp.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void L_shape_shrinks_by_its_closed_form(double distance)
    {
        var arms = Rectangle(0, 0, 30, 10).Union(Rectangle(0, 0, 10, 30));
        var sharp = ((30 - (2 * distance)) * (10 - (2 * distance))) + ((10 - (2 * distance)) * 20);

        Assert.Equal(sharp, Offsetter.Offset(arms, -distance, CornerStyle.Sharp).Area, 1e-9);
        Assert.Equal(
            sharp + (distance * distance * (1 - (Math.PI / 4))), Offsetter.Offset(arms, -distance, CornerStyle.Round).Area, 1e-9);
    }

    [Fact]
    public void Dumbbell_splits_in_two_when_its_bar_is_used_up()
    {
        var dumbbell = Region2.UnionOf([Of(Path2.Circle(new(0, 0), 20)), Of(Path2.Circle(new(100, 0), 20)), Rectangle(0, -4, 100, 4)]);

        Assert.Single(Offsetter.Offset(dumbbell, -3.9, CornerStyle.Round).Parts);
        var halves = Offsetter.Offset(dumbbell, -4.1, CornerStyle.Round);
        Assert.Equal(2, halves.Parts.Length);
        foreach (var half in halves.Parts)
        {
            // The fillets at the bar's ends run around its corners at the distance of the offset; opposite the bar the
            // circle of 20 - 4.1 is left.
            Assert.Equal(15.9, Math.Max(Math.Abs(half.Outer.Bounds.MaxY), Math.Abs(half.Outer.Bounds.MinY)), 1e-9);
        }
    }

    [Fact]
    public void Region_narrower_than_twice_the_distance_vanishes_and_a_hole_that_small_closes()
    {
        var plate = Of(Path2.Rectangle(new(0, 0, 100, 10)), Path2.Circle(new(20, 5), 2).Reversed());

        Assert.True(Offsetter.Offset(plate, -5, CornerStyle.Round).IsEmpty);
        Assert.True(Offsetter.Offset(plate, -5.5, CornerStyle.Sharp).IsEmpty);
        Assert.Empty(Assert.Single(Offsetter.Offset(plate, 2, CornerStyle.Sharp).Parts).Openings);
        Assert.Equal(104 * 14, Offsetter.Offset(plate, 2, CornerStyle.Sharp).Area, 1e-9);
        Assert.True(Offsetter.Offset(Region2.Empty, 3, CornerStyle.Round).IsEmpty);
    }

    [Fact]
    public void Arc_that_shrinks_to_nothing_leaves_the_corner_of_its_neighbours()
    {
        var rounded = Of(Shapes.Rounded(new(0, 0, 40, 30), 3));

        foreach (var distance in new[] { -3, -4.0, -10 })
        {
            var part = Assert.Single(Offsetter.Offset(rounded, distance, CornerStyle.Round).Parts).Outer;
            Assert.Equal(4, part.SegmentCount);
            Assert.Equal((40 + (2 * distance)) * (30 + (2 * distance)), part.SignedArea, 1e-9);
        }
    }

    // Closed form: the tip lies d/sin(a/2) from a corner of the angle a. The limit of 4 is passed at a = 2·asin(1/4).
    [Fact]
    public void Corner_sharper_than_the_mitre_limit_is_rounded()
    {
        var limit = 2 * Math.Asin(1 / Offsetter.MitreLimit);

        Assert.Equal(-4, Offsetter.Offset(Wedge(limit + 0.001), 1, CornerStyle.Sharp).Bounds.MinX, 0.01);
        Assert.Equal(-1, Offsetter.Offset(Wedge(limit - 0.001), 1, CornerStyle.Sharp).Bounds.MinX, 1e-9);

        static Region2 Wedge(double angle) => Of(
            Path2.Polygon(new(0, 0), new(100, -100 * Math.Tan(angle / 2)), new(100, 100 * Math.Tan(angle / 2))));
    }

    [Fact]
    public void Distance_within_the_snap_distance_changes_nothing_and_none_at_all_is_refused()
    {
        var square = Rectangle(0, 0, 1, 1);

        Assert.Same(square, Offsetter.Offset(square, 0, CornerStyle.Sharp));
        Assert.Throws<ArgumentOutOfRangeException>(() => Offsetter.Offset(square, double.NaN, CornerStyle.Sharp));
    }

    // Closed form: a rectangle whose corners are rounded to r has lost (4 − π)r².
    [Fact]
    public void Rounding_inside_corners_of_a_rectangle_gives_a_rounded_rectangle()
    {
        var rounded = Assert.Single(Offsetter.WithRoundedInsideCorners(Rectangle(10, 20, 50, 45), 4).Parts).Outer;

        Assert.Equal(8, rounded.SegmentCount);
        Assert.Equal((40 * 25) - ((4 - Math.PI) * 16), rounded.SignedArea, 1e-9);
        Assert.All(rounded.Segments.Where(segment => !segment.IsLine), arc => Assert.Equal(4, arc.Radius, 1e-9));
        Assert.Equal(new(10, 20, 50, 45), Rounded(rounded.Bounds));

        static Bounds2 Rounded(Bounds2 b) => new(Math.Round(b.MinX, 9), Math.Round(b.MinY, 9), Math.Round(b.MaxX, 9), Math.Round(b.MaxY, 9));
    }

    // Closed form: of a slot narrower than the tool nothing is left but the cap by which the tool, lying against the two
    // corners of its mouth, reaches into it: r²(θ − sin θ)/2 with θ = 2·asin(1/3).
    [Fact]
    public void Rounding_inside_corners_loses_what_the_tool_does_not_fit_into()
    {
        var opening = Rectangle(0, 0, 40, 30).Union(Rectangle(40, 14, 60, 16));
        var angle = 2 * Math.Asin(1 / 3.0);
        var cap = 9 * (angle - Math.Sin(angle)) / 2;

        Assert.Equal(1200 - ((4 - Math.PI) * 9) + cap, Offsetter.WithRoundedInsideCorners(opening, 3).Area, 1e-9);
    }
}
