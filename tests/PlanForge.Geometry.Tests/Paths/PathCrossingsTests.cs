using CsCheck;

namespace PlanForge.Geometry.Tests.Paths;

public sealed class PathCrossingsTests
{
    private const double Tolerance = 1e-7;

    // Oracle: NetTopologySuite's intersection of the two rings, lines only and in general position.
    [Fact]
    public void Crossings_of_polygons_are_those_of_NetTopologySuite() => Gen.Select(Shapes.Star, Shapes.Star).Check(
        300,
        (a, b) =>
        {
            var expected = Nts.Polygon(a).ExteriorRing.Intersection(Nts.Polygon(b).ExteriorRing);
            var found = a.IntersectionsWith(b, Tolerance);

            // Stretches in common have two ends.
            if (expected.Dimension == NetTopologySuite.Geometries.Dimension.Point)
            {
                Assert.Equal(expected.NumGeometries, found.Length);
            }

            Assert.All(found, crossing => Assert.InRange(
                expected.Distance(new NetTopologySuite.Geometries.Point(crossing.Point.X, crossing.Point.Y)), 0, 1e-6));
        });

    [Fact]
    public void Crossings_lie_on_both_paths_where_they_say_in_order_of_travel() =>
        Gen.Select(Gen.OneOf(Shapes.ArcStar, Shapes.RoundedRectangle), Gen.OneOf(Shapes.ArcStar, Shapes.Circle)).Check(
            300,
            (a, b) =>
            {
                var place = -1.0;
                foreach (var crossing in a.IntersectionsWith(b, Tolerance))
                {
                    Assert.True(crossing.Segment + crossing.Fraction >= place);
                    place = crossing.Segment + crossing.Fraction;
                    Assert.InRange(a.SegmentAt(crossing.Segment).PointAt(crossing.Fraction).DistanceTo(crossing.Point), 0, 2 * Tolerance);
                    Assert.InRange(
                        b.SegmentAt(crossing.OtherSegment).PointAt(crossing.OtherFraction).DistanceTo(crossing.Point), 0, 2 * Tolerance);
                }
            });

    // Closed form: circles of 5 about (0, 0) and (6, 0) meet in (3, ±4).
    [Fact]
    public void Circles_meet_in_two_points()
    {
        var found = Path2.Circle(new(0, 0), 5).IntersectionsWith(Path2.Circle(new(6, 0), 5), Tolerance);

        Assert.Equal(2, found.Length);
        Assert.Equal(0, found[0].Point.DistanceTo(new(3, 4)), 1e-12);
        Assert.Equal(0, found[1].Point.DistanceTo(new(3, -4)), 1e-12);
        Assert.Equal((0, 1), (found[0].Segment, found[1].Segment));
    }

    [Fact]
    public void Tangents_touch_once_and_misses_not_at_all()
    {
        var circle = Path2.Circle(new(0, 0), 5);

        Assert.Equal(new(3, 5), Assert.Single(Path2.Circle(new(3, 0), 5).IntersectionsWith(Path2.Line(new(-9, 5), new(9, 5)), Tolerance)).Point);
        Assert.Empty(circle.IntersectionsWith(Path2.Line(new(-9, 5.00001), new(9, 5.00001)), Tolerance));
        Assert.Empty(circle.IntersectionsWith(Path2.Circle(new(0.1, 0), 4), Tolerance));
        Assert.Empty(circle.IntersectionsWith(Path2.Circle(new(0, 0), 4), Tolerance));
        Assert.Single(circle.IntersectionsWith(Path2.Circle(new(1, 0), 4), Tolerance));
    }

    [Fact]
    public void Crossing_in_a_vertex_is_found_once_and_at_the_leaving_segment()
    {
        var crossing = Assert.Single(
            Path2.Polyline(new(0, 0), new(5, 5), new(10, 0)).IntersectionsWith(Path2.Polyline(new(5, 10), new(5, 5), new(5, 0)), Tolerance));

        Assert.Equal(new(new(5, 5), 1, 0, 1, 0), crossing);
    }

    [Fact]
    public void Shared_stretch_gives_its_ends()
    {
        var found = Path2.Line(new(0, 0), new(10, 0)).IntersectionsWith(Path2.Polyline(new(4, 3), new(4, 0), new(20, 0)), Tolerance);

        Assert.Equal([new(4, 0), new(10, 0)], found.Select(crossing => crossing.Point));
        Assert.Equal(1, found[1].Fraction);
    }

    [Fact]
    public void Path_that_passes_a_point_twice_is_found_there_twice()
    {
        var loop = Path2.Polyline(new(0, 0), new(10, 0), new(10, 5), new(5, 5), new(5, -5));

        Assert.Equal(2, loop.IntersectionsWith(Path2.Line(new(0, -5), new(10, 5)), Tolerance).Count(crossing => crossing.Point == new Point2(5, 0)));
    }
}
