using CsCheck;

namespace PlanForge.Geometry.Tests.Paths;

public sealed class PathMergerTests
{
    private static readonly Gen<Path2> Outline = Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.RoundedRectangle, Shapes.Star);

    [Fact]
    public void Segments_cut_into_parts_are_put_together_again() => Gen.Select(Outline, Gen.Int[2, 5], Gen.Bool).Check(
        300,
        sample =>
        {
            var (path, parts, isClosed) = sample;
            var cut = path.Segments.SelectMany(s => Enumerable.Range(0, parts).Select(i => s.Part((double)i / parts, (i + 1.0) / parts)))
                .Select(part => new PathVertex(part.Start, part.Bulge));
            var merged = isClosed ? Path2.Closed(cut).Merged(1e-9) : Path2.Open([.. cut, new(path.Start)]).Merged(1e-9);

            // An open path of two half circles could not be one arc.
            Assert.Equal(path.SegmentCount, merged.SegmentCount);
            Assert.Equal(path.Length, merged.Length, 1e-6);
            Assert.All(path.Vertices, vertex => Assert.InRange(merged.DistanceTo(vertex.Point), 0, 1e-8));
        });

    [Fact]
    public void Closed_path_is_merged_across_its_start()
    {
        var path = Path2.Polygon(new(5, 0), new(10, 0), new(10, 10), new(0, 10), new(0, 0));

        Assert.Equal(4, path.Merged(0).SegmentCount);
        Assert.Equal(100, path.Merged(0).SignedArea);
    }

    [Fact]
    public void Any_chain_of_arcs_around_a_circle_becomes_the_circle()
    {
        foreach (var cuts in new double[][] { [0.3, 2.5, 4], [0, 1, 2, 3, 4, 5], [1, 1.1], [5, 3, 1] })
        {
            var sense = cuts[0] > cuts[^1] ? -1 : 1;
            var path = Path2.Closed(cuts.Select((from, i) =>
            {
                var sweep = ((cuts[(i + 1) % cuts.Length] - from) * sense) + 0.0;
                return new PathVertex(
                    new Point2(7, -2) + (Vector2.FromAngle(from) * 12), sense * Math.Tan((sweep > 0 ? sweep : sweep + (2 * Math.PI)) / 4));
            }));
            var merged = path.Merged(1e-9);
            var (centre, radius) = Assert.NotNull(merged.AsCircle());

            Assert.Equal(0, centre.DistanceTo(new(7, -2)), 1e-9);
            Assert.Equal(12, radius, 1e-9);
            Assert.Equal(path.SignedArea, merged.SignedArea, 1e-6);
        }
    }

    [Fact]
    public void Corners_spikes_and_other_radii_stay()
    {
        var spike = Path2.Polyline(new(0, 0), new(10, 0), new(4, 0), new(4, 5));
        var radii = Path2.Open([new(new(0, 0), 0.2), new(new(10, 0), 0.21), new(new(20, 5), 0), new(new(30, 10.1))]);

        Assert.Same(spike, spike.Merged(1e-9));
        Assert.Same(radii, radii.Merged(1e-9));
    }

    [Fact]
    public void Result_stays_within_the_tolerance()
    {
        // Chords of a gentle arc: merged by a loose tolerance, not by a strict one.
        var chords = Path2.Polyline(Enumerable.Range(0, 21).Select(i => new Point2(i, 1e-4 * i * i)));

        Assert.Equal(20, chords.Merged(1e-6).SegmentCount);
        var loose = chords.Merged(2e-3);
        Assert.InRange(loose.SegmentCount, 2, 6);
        Assert.All(chords.Vertices, vertex => Assert.InRange(loose.DistanceTo(vertex.Point), 0, 2e-3));
    }

    [Fact]
    public void Open_arc_is_merged_up_to_350_degrees()
    {
        static Path2 Arcs(double sweep) => Path2.Open(
            [.. Enumerable.Range(0, 4).Select(i => new PathVertex(Point2.Origin + (Vector2.FromAngle(i * sweep / 3) * 10), Math.Tan(sweep / 12)))]);

        Assert.Equal(1, Arcs(349 * Math.PI / 180).Merged(1e-9).SegmentCount);
        Assert.Equal(2, Arcs(351 * Math.PI / 180).Merged(1e-9).SegmentCount);
    }
}
