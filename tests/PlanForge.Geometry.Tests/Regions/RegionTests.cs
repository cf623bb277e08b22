using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Regions;

public sealed class RegionTests
{
    private static readonly Region2 Square = Of(Path2.Rectangle(new(0, 0, 10, 10)));

    private static Region2 Of(params Path2[] contours) => Region2.FromContours(FillRule.NonZero, contours);

    // Closed form (plane trigonometry): two circles of radius r at the distance d share 2r²acos(d/2r) − (d/2)√(4r² − d²).
    [Theory]
    [InlineData(10, 5)]
    [InlineData(10, 19.9)]
    [InlineData(250, 0.1)]
    public void Lens_of_two_circles_has_its_closed_form_area(double radius, double distance)
    {
        var (a, b) = (Of(Path2.Circle(new(3, 4), radius)), Of(Path2.Circle(new(3 + distance, 4), radius)));
        var lens = (2 * radius * radius * Math.Acos(distance / (2 * radius)))
            - (distance / 2 * Math.Sqrt((4 * radius * radius) - (distance * distance)));

        Assert.Equal(lens, a.Intersection(b).Area, 1e-9 * radius * radius);
        Assert.Equal((2 * Math.PI * radius * radius) - lens, a.Union(b).Area, 1e-9 * radius * radius);
        Assert.Equal(2, Assert.Single(a.Intersection(b).Parts).Outer.SegmentCount);
    }

    [Fact]
    public void Circle_inside_becomes_an_opening_and_stays_a_circle()
    {
        var plate = Square.Difference(Of(Path2.Circle(new(4, 5), 2)));

        var part = Assert.Single(plate.Parts);
        Assert.Equal(Path2.Rectangle(new(0, 0, 10, 10)).Vertices, part.Outer.Vertices);
        Assert.Equal((new Point2(4, 5), 2.0), Assert.Single(part.Openings).AsCircle());
        Assert.Equal(100 - (4 * Math.PI), plate.Area, 1e-12);
    }

    [Fact]
    public void Untouched_contours_come_out_as_they_went_in()
    {
        var outline = Path2.Closed([new(new(0.1, 0.2), 0.3), new(new(9.7, 0.1), -0.2), new(new(8.3, 9.9), 1.7)]);
        var result = Of(outline).Union(Of(Path2.Circle(new(40, 40), 1.1))).Difference(Of(Path2.Circle(new(30, 0), 3)));

        Assert.Equal(outline.Vertices, result.Parts[0].Outer.Vertices);
        Assert.Equal(Path2.Circle(new(40, 40), 1.1).Vertices, result.Parts[1].Outer.Vertices);
    }

    [Fact]
    public void Squares_side_by_side_become_one_rectangle()
    {
        var union = Square.Union(Of(Path2.Rectangle(new(10, 0, 25, 10))));

        var outer = Assert.Single(union.Parts).Outer;
        Assert.Equal(4, outer.SegmentCount);
        Assert.Equal(250, union.Area);
        Assert.True(Square.Intersection(Of(Path2.Rectangle(new(10, 0, 25, 10)))).IsEmpty);
    }

    [Fact]
    public void Halves_of_a_disc_put_together_are_a_circle_again()
    {
        var disc = Of(Path2.Circle(new(0, 0), 7));
        var upper = Of(Path2.Rectangle(new(-8, 1, 8, 8)));

        var whole = disc.Intersection(upper).Union(disc.Difference(upper));

        var (centre, radius) = Assert.NotNull(Assert.Single(whole.Parts).Outer.AsCircle());
        Assert.Equal(0, centre.DistanceTo(new(0, 0)), 1e-9);
        Assert.Equal(7, radius, 1e-9);
    }

    [Fact]
    public void Squares_that_touch_in_a_corner_stay_two_pieces()
    {
        var union = Square.Union(Of(Path2.Rectangle(new(10, 10, 20, 20))));

        Assert.Equal(2, union.Parts.Length);
        Assert.All(union.Parts, part => Assert.Equal(100, part.Area));
    }

    [Fact]
    public void Opening_that_touches_the_outline_in_a_point_stays_an_opening()
    {
        var diamond = Path2.Polygon(new(5, 0), new(8, 4), new(5, 8), new(2, 4));

        var part = Assert.Single(Square.Difference(Of(diamond)).Parts);
        Assert.Equal(4, Assert.Single(part.Openings).SegmentCount);
        Assert.Equal(100 - 24, part.Area, 1e-12);
    }

    [Fact]
    public void Circles_that_touch_inside_and_outside_have_nothing_but_the_point_in_common()
    {
        var big = Of(Path2.Circle(new(0, 0), 10));
        var outside = Of(Path2.Circle(new(13, 0), 3));
        var inside = Of(Path2.Circle(new(0, 6), 4));

        Assert.True(big.Intersection(outside).IsEmpty);
        Assert.Equal(2, big.Union(outside).Parts.Length);
        Assert.Equal(Math.PI * 84, big.Difference(inside).Area, 1e-9);
        Assert.Single(Assert.Single(big.Difference(inside).Parts).Openings);
        Assert.NotNull(Assert.Single(big.Union(inside).Parts).Outer.AsCircle());
    }

    [Fact]
    public void Slot_through_a_plate_leaves_two_pieces_with_their_own_openings()
    {
        var plate = Of(Path2.Rectangle(new(0, 0, 100, 40)), Path2.Circle(new(20, 20), 5).Reversed(), Path2.Circle(new(80, 20), 6).Reversed());
        var parts = plate.Difference(Of(Path2.Rectangle(new(45, -5, 55, 45)))).Parts;

        Assert.Equal(2, parts.Length);
        Assert.Equal(1800 - (25 * Math.PI), parts.Single(part => part.Outer.Bounds.MinX == 0).Area, 1e-9);
        Assert.Equal(1800 - (36 * Math.PI), parts.Single(part => part.Outer.Bounds.MaxX == 100).Area, 1e-9);
    }

    [Fact]
    public void Fill_rules_differ_where_contours_overlap()
    {
        Path2[] nested = [Path2.Rectangle(new(0, 0, 10, 10)), Path2.Rectangle(new(2, 2, 8, 8)), Path2.Rectangle(new(4, 4, 6, 6))];

        Assert.Equal(100, Region2.FromContours(FillRule.NonZero, nested).Area);
        var rings = Region2.FromContours(FillRule.EvenOdd, nested);
        Assert.Equal(100 - 36 + 4, rings.Area);
        Assert.Equal(2, rings.Parts.Length);
        Assert.Single(rings.Parts[0].Openings);
    }

    // A pentagram's inner pentagon is run around twice: inside by NonZero, outside by EvenOdd.
    [Fact]
    public void Pentagram_is_hollow_by_even_odd_only()
    {
        var star = Path2.Polygon(Enumerable.Range(0, 5).Select(i => Point2.Origin + Vector2.FromAngle(4 * Math.PI * i / 5)));
        var (full, hollow) = (Region2.FromContours(FillRule.NonZero, star), Region2.FromContours(FillRule.EvenOdd, star));

        // The inner pentagon's circumradius is 1/φ² of the star's; a regular pentagon has 5/2·r²·sin 72°.
        var ratio = 2 / (3 + Math.Sqrt(5));
        Assert.Equal(2.5 * ratio * ratio * Math.Sin(2 * Math.PI / 5), full.Area - hollow.Area, 1e-12);
        Assert.True(full.Contains(new(0, 0)));
        Assert.False(hollow.Contains(new(0, 0)));
        Assert.Equal(5, hollow.Parts.Length);
    }

    [Fact]
    public void Slivers_thinner_than_the_snap_distance_vanish()
    {
        Assert.True(Square.Difference(Square.Placed(Placement2.MovedBy(new(3e-8, -2e-8)))).IsEmpty);
        Assert.Equal(4, Assert.Single(Square.Union(Square.Placed(Placement2.MovedBy(new(3e-8, -2e-8)))).Parts).Outer.SegmentCount);
        Assert.Equal(1e-3, Square.Difference(Square.Placed(Placement2.MovedBy(new(1e-4, 0)))).Area, 1e-9);
    }

    [Fact]
    public void Contains_counts_the_boundary_in()
    {
        var disc = Of(Path2.Circle(new(5, 5), 3));

        Assert.True(disc.Contains(new(8, 5)));
        Assert.True(disc.Contains(new(5, 2)));
        Assert.True(disc.Contains(new(5 + (3 / Math.Sqrt(2)), 5 + (3 / Math.Sqrt(2)))));
        Assert.False(disc.Contains(new(8.000001, 5)));
        Assert.False(Region2.Empty.Contains(new(0, 0)));
    }

    [Fact]
    public void Mirrored_region_still_lies_left_of_its_contours()
    {
        var plate = Square.Difference(Of(Path2.Circle(new(3, 4), 2)));
        var mirrored = plate.Placed(new(true, 0.3, new(2, 5)));

        Assert.Equal(plate.Area, mirrored.Area, 1e-12);
        Assert.True(mirrored.Parts[0].Outer.SignedArea > 0);
        Assert.True(mirrored.Parts[0].Openings[0].SignedArea < 0);
    }

    [Fact]
    public void Empty_region_is_neutral()
    {
        Assert.Same(Square, Square.Difference(Region2.Empty));
        Assert.Equal(100, Square.Union(Region2.Empty).Area);
        Assert.True(Region2.Empty.Difference(Square).IsEmpty);
        Assert.True(Square.Intersection(Region2.Empty).IsEmpty);
        Assert.True(Region2.UnionOf([]).IsEmpty);
        Assert.True(Region2.Empty.Bounds.IsEmpty);
    }

    [Fact]
    public void Open_or_broken_contours_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Of(Path2.Line(new(0, 0), new(1, 1))));
        Assert.Throws<ArgumentException>(() => Of(Path2.Polygon(new(0, 0), new(double.NaN, 1), new(1, 0))));
    }
}
