using CsCheck;

namespace PlanForge.Geometry.Tests;

public sealed class Path2Tests
{
    private static readonly Gen<Path2> Outline =
        Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.RoundedRectangle, Shapes.Star, Shapes.ArcStar);

    // Simple outlines only: where arcs cross, NetTopologySuite's area of the ring is not the sum of turns.
    private static readonly Gen<Path2> Simple = Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.RoundedRectangle, Shapes.Star);

    // Oracle: NetTopologySuite's area, length and centroid of the flattened outline.
    [Fact]
    public void Area_length_centroid_and_bounds_are_those_of_NetTopologySuite() => Simple.Check(
        300,
        path =>
        {
            var polygon = Nts.Polygon(path);
            var envelope = polygon.EnvelopeInternal;
            var centroid = Assert.NotNull(path.AreaCentroid);

            Assert.Equal(polygon.Area, path.SignedArea, 1e-6 + (Nts.Sagitta * path.Length));
            Assert.Equal(polygon.Length, path.Length, 1e-3);
            Assert.Equal(0, centroid.DistanceTo(new(polygon.Centroid.X, polygon.Centroid.Y)), 1e-3);
            Assert.Equal(envelope.MinX, path.Bounds.MinX, 2 * Nts.Sagitta);
            Assert.Equal(envelope.MaxX, path.Bounds.MaxX, 2 * Nts.Sagitta);
            Assert.Equal(envelope.MinY, path.Bounds.MinY, 2 * Nts.Sagitta);
            Assert.Equal(envelope.MaxY, path.Bounds.MaxY, 2 * Nts.Sagitta);
        });

    // Oracle: the algebraic shoelace area of the flattened outline, which NetTopologySuite computes for crossing rings too.
    [Fact]
    public void Signed_area_of_a_crossing_outline_counts_its_turns() => Shapes.ArcStar.Check(
        300,
        path =>
        {
            var ring = Nts.Polygon(path).ExteriorRing.Coordinates;

            Assert.Equal(-NetTopologySuite.Algorithm.Area.OfRingSigned(ring), path.SignedArea, 1e-6 + (Nts.Sagitta * path.Length));
        });

    // Oracle: NetTopologySuite's distance from a point to the flattened outline.
    [Fact]
    public void Distance_is_that_of_NetTopologySuite() => Gen.Select(Outline, Shapes.Fine(-50, 150), Shapes.Fine(-50, 150)).Check(
        300,
        sample =>
        {
            var (path, x, y) = sample;
            var expected = Nts.Polygon(path).ExteriorRing.Distance(new NetTopologySuite.Geometries.Point(x, y));

            Assert.Equal(expected, path.DistanceTo(new(x, y)), 2 * Nts.Sagitta);
        });

    // Closed forms: a half disc of radius r has its centroid 4r/(3π) from the centre, a quarter disc in both axes.
    [Fact]
    public void Centroid_of_a_half_and_a_quarter_disc_are_the_textbook_ones()
    {
        var half = Path2.Closed([new(new(13, 5), 1), new(new(1, 5))]);
        var quarter = Path2.Closed([new(new(0, 0)), new(new(6, 0), Math.Tan(Math.PI / 8)), new(new(0, 6))]);
        var lever = 8 / Math.PI;

        Assert.Equal(0, Assert.NotNull(half.AreaCentroid).DistanceTo(new(7, 5 + lever)), 1e-12);
        Assert.Equal(0, Assert.NotNull(half.Reversed().AreaCentroid).DistanceTo(new(7, 5 + lever)), 1e-12);
        Assert.Equal(0, Assert.NotNull(quarter.AreaCentroid).DistanceTo(new(lever, lever)), 1e-12);
        Assert.Null(Path2.Line(new(0, 0), new(1, 1)).AreaCentroid);
        Assert.Null(Path2.Polygon(new(0, 0), new(1, 1)).AreaCentroid);
    }

    // check-values 12.5: circular-arc section, chord c, height h: R = (c²/4 + h²)/(2h), bulge 2h/c. c 200 h 12: R 422.666667,
    // length 201.914504, bulge 0.12; c 100 h 10: R 130, length 102.645691, bulge 0.2.
    [Theory]
    [InlineData(200, 12, 422.666667, 201.914504)]
    [InlineData(100, 10, 130, 102.645691)]
    public void Arc_by_chord_and_height_has_the_published_radius_and_length(double chord, double height, double radius, double length)
    {
        var arc = Path2.Open([new(new(0, 0), -2 * height / chord), new(new(chord, 0))]);

        Assert.Equal(radius, arc.SegmentAt(0).Radius, 1e-6);
        Assert.Equal(length, arc.Length, 1e-6);
        Assert.Equal(height, arc.Bounds.MaxY, 1e-9);
    }

    // check-values 12.12: chord tolerance e, segment angle 2·acos(1 − e/r): r 100 e 0.05: 100 segments; 0.01: 223;
    // r 25 e 0.01: 112; r 1000 e 0.05: 315. A path's circle is two half circles, each rounded up for itself.
    [Theory]
    [InlineData(100, 0.05, 100)]
    [InlineData(100, 0.01, 223)]
    [InlineData(25, 0.01, 112)]
    [InlineData(1000, 0.05, 315)]
    public void Circle_flattens_into_the_published_number_of_chords(double radius, double tolerance, int chords) =>
        Assert.InRange(Path2.Circle(new(1, 2), radius).Flattened(tolerance).Length, chords, chords + 1);

    [Fact]
    public void Flattened_path_stays_within_the_tolerance() => Gen.Select(Outline, Shapes.Fine(0.001, 1)).Check(
        200,
        (path, tolerance) =>
        {
            var chords = Path2.Polygon(path.Flattened(tolerance));

            foreach (var segment in path.Segments)
            {
                Assert.InRange(chords.DistanceTo(segment.PointAt(0.41)), 0, tolerance * (1 + 1e-9));
            }
        });

    [Fact]
    public void Reversed_twice_is_the_path_itself() => Outline.Check(
        300,
        path =>
        {
            Assert.Equal(path.Vertices, path.Reversed().Reversed().Vertices);
            Assert.Equal(-path.SignedArea, path.Reversed().SignedArea, 1e-9);
            Assert.Equal(path.Length, path.Reversed().Length, 1e-9);
            Assert.Equal(path.Start, path.Reversed().Start);

            var open = Path2.Open(path.Vertices);
            Assert.Equal(open.Reversed().Vertices.Reverse().Select(v => v.Point), open.Vertices.Select(v => v.Point));
            Assert.Equal(0, open.SegmentAt(0).PointAt(0.3).DistanceTo(open.Reversed().SegmentAt(open.SegmentCount - 1).PointAt(0.7)), 1e-9);
        });

    [Fact]
    public void Placed_path_keeps_its_length_and_area_and_turns_round_when_mirrored() =>
        Gen.Select(Outline, Placement2Tests.Placements).Check(
            300,
            (path, placement) =>
            {
                var placed = path.Placed(placement);
                var segment = path.SegmentCount / 2;

                Assert.Equal(path.Length, placed.Length, 1e-9);
                Assert.Equal(placement.IsMirrored ? -path.SignedArea : path.SignedArea, placed.SignedArea, 1e-8);
                Assert.Equal(
                    0, placed.SegmentAt(segment).PointAt(0.4).DistanceTo(placement.Apply(path.SegmentAt(segment).PointAt(0.4))), 1e-9);
            });

    [Fact]
    public void Circle_is_known_again_and_nothing_else_is_one()
    {
        Assert.Equal((new Point2(3, 4), 5.0), Path2.Circle(new(3, 4), 5).AsCircle());
        Assert.Equal((new Point2(3, 4), 5.0), Path2.Circle(new(3, 4), 5).Reversed().AsCircle());
        Assert.Null(Path2.Closed([new(new(0, 0), 1), new(new(2, 0), 0.9)]).AsCircle());
        Assert.Null(Path2.Open([new(new(0, 0), 1), new(new(2, 0), 1)]).AsCircle());
        Assert.Null(Path2.Rectangle(new(0, 0, 1, 1)).AsCircle());
    }

    [Fact]
    public void Path_of_fewer_than_two_vertices_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Path2.Polyline(new Point2(0, 0)));
        Assert.Throws<ArgumentException>(() => Path2.Closed([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Path2.Circle(new(0, 0), 1).Flattened(0));
    }

    [Fact]
    public void Scaled_path_keeps_its_kind_and_grows_by_the_factor_and_its_square() => Gen.Select(Outline, Gen.Double[0.05, 20]).Check(
        300,
        (path, factor) =>
        {
            var scaled = path.Scaled(factor);

            Assert.True(scaled.IsClosed);
            Assert.Equal(factor * path.Length, scaled.Length, 1e-9 * factor * path.Length);
            Assert.Equal(factor * factor * path.SignedArea, scaled.SignedArea, 1e-9 * factor * factor * path.Length * path.Length);
            Assert.Equal(factor * path.Bounds.MinX, scaled.Bounds.MinX, 1e-9 * factor * path.Length);
            Assert.False(Path2.Line(new(1, 2), new(3, 4)).Scaled(factor).IsClosed);
        });

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Scale_must_be_over_0(double factor) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Path2.Line(new(1, 2), new(3, 4)).Scaled(factor));
}
