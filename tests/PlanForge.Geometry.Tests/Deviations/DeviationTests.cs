using CsCheck;
using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;
using PlanForge.Geometry.Deviations;

namespace PlanForge.Geometry.Tests.Deviations;

public sealed class DeviationTests
{
    private const double Tolerance = 0.001;

    private static readonly Gen<Path2> Outline = Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.RoundedRectangle, Shapes.Star, Shapes.ArcStar);

    [Fact]
    public void A_moved_square_is_off_by_the_move()
    {
        var (old, now) = (Square(0, 0, 40), Square(3, 4, 40));

        // The corners that lead and trail are farthest: a whole move away from the corner they left.
        Assert.Equal(5, Deviation.Between([old], [now], Tolerance).Distance, Tolerance);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-6)]
    public void A_grown_circle_is_off_by_what_its_radius_grew(double tolerance)
    {
        var (old, now) = (Path2.Circle(new(5, 7), 20), Path2.Circle(new(5, 7), 21.25));

        Assert.Equal(1.25, Deviation.OneWay([old], [now], tolerance).Distance, 1e-9);
        Assert.Equal(1.25, Deviation.OneWay([now], [old], tolerance).Distance, 1e-9);
    }

    [Fact]
    public void Circles_within_each_other_are_off_by_offset_and_radius()
    {
        var (old, now) = (Path2.Circle(new(0, 0), 20), Path2.Circle(new(3, 0), 12));

        // r1 - r2 + d on the far side of the outer one, r1 - r2 - d on the near side.
        Assert.Equal(11, Deviation.OneWay([old], [now], Tolerance).Distance, Tolerance);
        Assert.Equal(11, Deviation.OneWay([now], [old], Tolerance).Distance, Tolerance);
        Assert.Equal(-20, Deviation.OneWay([old], [now], Tolerance).At.X, 0.5);
    }

    [Fact]
    public void One_way_is_not_the_other()
    {
        var (line, shorter) = (Path2.Line(new(0, 0), new(100, 0)), Path2.Line(new(0, 2), new(60, 2)));

        Assert.Equal(2, Deviation.OneWay([shorter], [line], Tolerance).Distance, 1e-12);
        Assert.Equal(Math.Sqrt(1604), Deviation.OneWay([line], [shorter], Tolerance).Distance, Tolerance);
        Assert.Equal(new Point2(100, 0), Deviation.Between([shorter], [line], Tolerance).Nearest);
    }

    [Fact]
    public void The_place_is_as_far_off_as_is_said() => Gen.Select(Outline, Outline).Sample(
        (a, b) =>
        {
            var found = Deviation.OneWay([a], [b], Tolerance);
            Assert.Equal(found.Distance, b.DistanceTo(found.At), 1e-9);
            Assert.Equal(found.Distance, found.At.DistanceTo(found.Nearest), 1e-9);
            Assert.True(a.DistanceTo(found.At) < 1e-9);
        },
        iter: 100);

    [Fact]
    public void No_way_depends_on_the_sense_of_travel_or_the_place() => Gen.Select(Outline, Outline, Shapes.Fine(-3, 3)).Sample(
        (a, b, turn) =>
        {
            var placement = new Placement2(true, turn, new(12, -7));
            var found = Deviation.Between([a], [b], Tolerance).Distance;
            Assert.Equal(found, Deviation.Between([b], [a], Tolerance).Distance, Tolerance);
            Assert.Equal(found, Deviation.Between([a.Reversed()], [b], Tolerance).Distance, Tolerance);
            Assert.Equal(found, Deviation.Between([a.Placed(placement)], [b.Placed(placement)], Tolerance).Distance, Tolerance);
        },
        iter: 60);

    [Fact]
    public void Agrees_with_NetTopologySuite_on_chords() => Gen.Select(Outline.Array[1, 2], Outline.Array[1, 2]).Sample(
        (a, b) => Assert.Equal(Theirs(a, b), Deviation.Between(a, b, Tolerance).Distance, 0.01),
        iter: 25);

    [Fact]
    public void Nearly_equal_outlines_agree_too() => Gen.Select(Outline, Shapes.Fine(-0.2, 0.2), Shapes.Fine(-0.02, 0.02)).Sample(
        (outline, move, turn) =>
        {
            var moved = outline.Placed(new(false, turn, new(move, -move)));
            Assert.Equal(Theirs([outline], [moved]), Deviation.Between([outline], [moved], Tolerance).Distance, 0.01);
        },
        iter: 60);

    [Fact]
    public void A_line_without_length_is_nothing_to_be_near_to() =>
        Assert.Throws<ArgumentException>(() => Deviation.OneWay([Square(0, 0, 1)], [Path2.Line(new(1, 1), new(1, 1))], Tolerance));

    [Fact]
    public void Their_discrete_distance_of_vertices_is_ours_for_squares()
    {
        var (a, b) = (Square(0, 0, 40), Square(3, 4, 40));
        Assert.Equal(DiscreteHausdorffDistance.Distance(Lines([a], Step), Lines([b], Step)), Deviation.Between([a], [b], Tolerance).Distance, 0.01);
    }

    private static Path2 Square(double x, double y, double side) => Path2.Rectangle(new(x, y, x + side, y + side));

    // Theirs looks from points alone: every 0.016 mm, so that it lacks 0.008 mm at most, at chords within 0.0001 mm.
    private const double Step = 0.016;

    private static double Theirs(IReadOnlyList<Path2> a, IReadOnlyList<Path2> b)
    {
        return Math.Max(OneWay(a, b), OneWay(b, a));

        static double OneWay(IReadOnlyList<Path2> from, IReadOnlyList<Path2> to)
        {
            var lines = Lines(to, double.PositiveInfinity);
            var index = new NetTopologySuite.Operation.Distance.IndexedFacetDistance(lines);
            return Lines(from, Step).Coordinates.Max(place => index.Distance(lines.Factory.CreatePoint(place)));
        }
    }

    private static MultiLineString Lines(IReadOnlyList<Path2> paths, double step)
    {
        var factory = new GeometryFactory();
        return factory.CreateMultiLineString([.. paths.Select(path => factory.CreateLineString([.. Points(path), At(path.Start)]))]);

        IEnumerable<Coordinate> Points(Path2 path)
        {
            var flat = path.Flattened(Nts.Sagitta);
            for (var i = 0; i < flat.Length; i++)
            {
                var next = flat[(i + 1) % flat.Length];
                var count = Math.Max(1, (int)Math.Ceiling(flat[i].DistanceTo(next) / step));
                for (var k = 0; k < count; k++)
                {
                    yield return At(flat[i].Towards(next, (double)k / count));
                }
            }
        }

        static Coordinate At(Point2 point) => new(point.X, point.Y);
    }
}
