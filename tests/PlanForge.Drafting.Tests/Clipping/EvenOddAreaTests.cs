using CsCheck;
using PlanForge.Drafting.Clipping;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tests.Clipping;

public class EvenOddAreaTests
{
    private const double Tolerance = 0.001;

    private static readonly Gen<Point2> Points = from x in Gen.Double[-50, 50] from y in Gen.Double[-50, 50] select new Point2(x, y);

    private static readonly EvenOddArea Ring = new([Path2.Circle(default, 30), Path2.Circle(default, 12).Reversed()], Tolerance);

    [Fact]
    public void A_point_is_inside_a_ring_when_its_distance_is_between_the_radii() =>
        Points.Where(p => Math.Abs(p.DistanceTo(default) - 30) > 0.01 && Math.Abs(p.DistanceTo(default) - 12) > 0.01).Sample(
            p => Assert.Equal(p.DistanceTo(default) is > 12 and < 30, Ring.Contains(p)), iter: 500, seed: "0000000000005");

    [Fact]
    public void A_path_inside_comes_back_whole()
    {
        var arc = Path2.Open([new(new(20, 0), 1), new(new(-20, 0))]);
        Assert.Same(arc, Assert.Single(Ring.Inside(arc)));
    }

    [Fact]
    public void A_path_outside_leaves_nothing() => Assert.Empty(Ring.Inside(Path2.Line(new(40, -40), new(40, 40))));

    [Fact]
    public void An_arc_is_cut_where_it_leaves_and_stays_an_arc()
    {
        // A full circle of radius 18 about (18, 0) meets the ring's circles where x = r² / 36: inside while 4 < x < 25.
        var pieces = Ring.Inside(Path2.Circle(new(18, 0), 18));
        double AngleAt(double x) => Math.Acos((x - 18) / 18);
        Assert.All(pieces, piece => Assert.All(piece.Segments, segment => Assert.Equal(18, segment.Radius, 1e-9)));
        Assert.Equal(2 * 18 * (AngleAt(4) - AngleAt(25)), pieces.Sum(piece => piece.Length), 0.05);
    }

    [Fact]
    public void What_is_inside_and_what_is_outside_make_the_whole()
    {
        var around = Path2.Rectangle(new(-100, -100, 100, 100));
        var outside = new EvenOddArea([Path2.Circle(default, 30), Path2.Circle(default, 12), around], Tolerance);
        Gen.Select(Points, Points, Gen.Double[-1, 1]).Where((a, b, _) => a.DistanceTo(b) > 1).Sample(
            (a, b, bulge) =>
            {
                var path = Path2.Open([new(a, bulge), new(b)]);
                var total = Ring.Inside(path).Sum(piece => piece.Length) + outside.Inside(path).Sum(piece => piece.Length);
                Assert.Equal(path.Length, total, 1e-6);
            },
            iter: 300,
            seed: "0000000000006");
    }

    [Fact]
    public void Pieces_lie_inside() =>
        Gen.Select(Points, Points, Gen.Double[-1, 1]).Where((a, b, _) => a.DistanceTo(b) > 1).Sample(
            (a, b, bulge) =>
            {
                foreach (var point in Ring.Inside(Path2.Open([new(a, bulge), new(b)])).SelectMany(piece => piece.Flattened(0.5)))
                {
                    Assert.InRange(point.DistanceTo(default), 12 - 0.01, 30 + 0.01);
                }
            },
            iter: 200,
            seed: "0000000000007");

    [Fact]
    public void Distance_to_the_outline_of_a_ring_is_that_to_the_nearer_circle() =>
        Points.Sample(
            p =>
            {
                var r = p.DistanceTo(default);
                Assert.Equal(Math.Min(Math.Abs(r - 30), Math.Abs(r - 12)), Ring.DistanceToOutline(p), 2 * Tolerance);
            },
            iter: 200,
            seed: "0000000000008");
}
