using CsCheck;

namespace PlanForge.Geometry.Tests.Paths;

public class CrumbFilterTests
{
    private static readonly Path2 Square = Path2.Rectangle(new(0, 0, 40, 30));

    [Fact]
    public void A_short_segment_on_a_straight_line_goes_and_nothing_moves()
    {
        var path = Path2.Closed([new(new(0, 0)), new(new(20, 0)), new(new(20.01, 0)), new(new(40, 0)), new(new(40, 30)), new(new(0, 30))]);
        var clean = CrumbFilter.Clean(path, 0.05, 0.005);
        Assert.Equal(5, clean.SegmentCount);
        Assert.Equal(1200, clean.SignedArea, 1e-9);
    }

    [Fact]
    public void A_step_at_a_corner_stays_where_leaving_it_out_would_stray_too_far()
    {
        // A corner broken at 45 degrees over 0.03 mm: leaving it out strays by up to 0.03, more than is allowed.
        var path = Path2.Closed([new(new(0, 0)), new(new(39.97, 0)), new(new(40, 0.03)), new(new(40, 30)), new(new(0, 30))]);
        Assert.Same(path, CrumbFilter.Clean(path, 0.05, 0.005));
        Assert.Equal(4, CrumbFilter.Clean(path, 0.05, 0.03).SegmentCount);
    }

    [Fact]
    public void A_path_without_short_segments_and_an_open_one_come_back_as_they_are()
    {
        Assert.Same(Square, CrumbFilter.Clean(Square, 0.05, 0.005));
        var open = Path2.Polyline(new(0, 0), new(0.01, 0), new(5, 5));
        Assert.Same(open, CrumbFilter.Clean(open, 0.05, 0.005));
    }

    [Fact]
    public void The_path_strays_no_farther_than_the_tolerance_and_keeps_its_radii() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[0.001, 0.04], Gen.Double[-1, 1], Gen.Double[0.002, 0.02]).Sample((radius, step, turn, tolerance) =>
        {
            // A circle in four arcs with a short chord, turned a little, put in between two of them.
            var circle = Path2.Circle(new(0, 0), radius);
            var vertices = new List<PathVertex>();
            for (var i = 0; i < circle.SegmentCount; i++)
            {
                var (first, second) = (circle.SegmentAt(i).Part(0, 0.5), circle.SegmentAt(i).Part(0.5, 1));
                vertices.Add(new(first.Start, first.Bulge));
                vertices.Add(new(second.Start, second.Bulge));
            }

            var at = vertices[1].Point;
            vertices.Insert(1, new(at + (Vector2.FromAngle(turn) * step)));
            var path = Path2.Closed(vertices);
            var clean = CrumbFilter.Clean(path, 0.05, tolerance);
            Assert.True(clean.SegmentCount is var count && (count == path.SegmentCount || count == path.SegmentCount - 1));
            for (var i = 0; i < path.SegmentCount; i++)
            {
                for (var t = 0.0; t <= 1; t += 0.125)
                {
                    var point = path.SegmentAt(i).PointAt(t);
                    var least = Enumerable.Range(0, clean.SegmentCount).Min(k => clean.SegmentAt(k).DistanceTo(point));
                    Assert.True(least <= tolerance + 1e-9, $"{least} over {tolerance}");
                }
            }
        });
}
