namespace PlanForge.Geometry.Tests;

public sealed class SegmentPairTests
{
    private const int Count = 2000;

    // Judged by points on both segments: none is nearer, and what is said to be nearest is no farther than the nearest of them.
    [Fact]
    public void Nearest_places_are_as_near_as_any_two_points()
    {
        for (var seed = 0; seed < Count; seed++)
        {
            var random = new Random(seed);
            var (a, b) = (Any(random), Any(random));
            var (onA, onB, distance) = SegmentPair.Nearest(a, b);

            Assert.Equal(distance, a.PointAt(onA).DistanceTo(b.PointAt(onB)), 1e-9);
            if (SegmentPair.SharedPoints(a, b, 1e-6).Count == 0)
            {
                var sampled = Enumerable.Range(0, 2001).Min(i => b.DistanceTo(a.PointAt(i / 2000.0)));
                Assert.InRange(distance, 0, sampled + 1e-9);
                Assert.InRange(sampled, distance - 1e-9, distance + (a.Length / 2000));
            }
        }
    }

    [Fact]
    public void Parts_of_one_segment_overlap_by_what_they_share()
    {
        for (var seed = 0; seed < Count; seed++)
        {
            var random = new Random(seed);
            var whole = Any(random);
            double[] cuts = [.. Enumerable.Range(0, 4).Select(_ => random.NextDouble()).Order()];
            var (a, b) = (whole.Part(cuts[0], cuts[2]), whole.Part(cuts[1], cuts[3]).Reversed());
            var shared = (cuts[2] - cuts[1]) * whole.Length;
            if (shared > 0.1)
            {
                var (from, to) = SegmentPair.Overlap(a, b, 1e-6)!.Value;
                Assert.Equal(shared, (to - from) * a.Length, 1e-4);
            }
        }
    }

    [Fact]
    public void Segments_that_only_meet_or_lie_beside_each_other_share_no_stretch()
    {
        var line = new Segment2(new(0, 0), new(100, 0), 0);

        Assert.Null(SegmentPair.Overlap(line, new(new(0, 0.02), new(100, 0.02), 0), 0.01));
        Assert.Null(SegmentPair.Overlap(new(new(0, 0), new(10, 0), 1), new(new(0, 0), new(10, 0), -1), 0.01));
        Assert.Null(SegmentPair.Overlap(line, new(new(50, -50), new(50, 50), 0), 0.01));
        Assert.True(SegmentPair.IsOnCarrier(line, new(200, 0.005), 0.01));
        Assert.False(SegmentPair.IsOnCarrier(line, new(200, 0.02), 0.01));
    }

    private static Segment2 Any(Random random)
    {
        var start = new Point2(random.NextDouble() * 100, random.NextDouble() * 100);
        var end = start + (Vector2.FromAngle(random.NextDouble() * 7) * (5 + (50 * random.NextDouble())));
        return new(start, end, random.Next(2) == 0 ? 0 : (random.NextDouble() * 4) - 2);
    }
}
