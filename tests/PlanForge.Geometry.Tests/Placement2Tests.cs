using CsCheck;

namespace PlanForge.Geometry.Tests;

public sealed class Placement2Tests
{
    internal static Gen<Placement2> Placements { get; } = Gen.Select(
        Gen.Bool,
        Gen.OneOf(Shapes.Fine(-4, 4), Gen.Int[-2, 2].Select(i => i * Math.PI / 2)),
        Shapes.Fine(-200, 200),
        Shapes.Fine(-200, 200),
        (isMirrored, turn, x, y) => new Placement2(isMirrored, turn, new(x, y)));

    private static readonly Gen<Point2> Point = Gen.Select(Shapes.Fine(-100, 100), Shapes.Fine(-100, 100), (x, y) => new Point2(x, y));

    [Fact]
    public void One_motion_after_another_is_their_composition() => Gen.Select(Placements, Placements, Point).Check(
        500,
        sample =>
        {
            var (first, second, point) = sample;

            Assert.Equal(0, first.Then(second).Apply(point).DistanceTo(second.Apply(first.Apply(point))), 1e-9);
        });

    [Fact]
    public void Composition_is_associative_and_has_the_identity() => Gen.Select(Gen.Select(Placements, Placements), Gen.Select(Placements, Point)).Check(
        500,
        (first, second) =>
        {
            var (a, b) = first;
            var (c, point) = second;

            Assert.Equal(0, a.Then(b).Then(c).Apply(point).DistanceTo(a.Then(b.Then(c)).Apply(point)), 1e-9);
            Assert.Equal(a.Apply(point), a.Then(Placement2.Identity).Apply(point));
            Assert.Equal(a.Apply(point), Placement2.Identity.Then(a).Apply(point));
        });

    [Fact]
    public void Motions_keep_distances_and_mirrored_ones_turn_triangles_round() => Gen.Select(Placements, Gen.Select(Point, Point)).Check(
        500,
        (placement, points) =>
        {
            var (a, b) = points;
            var (u, v) = (placement.Apply(a - Point2.Origin), placement.Apply(b - Point2.Origin));

            Assert.Equal(a.DistanceTo(b), placement.Apply(a).DistanceTo(placement.Apply(b)), 1e-9);
            Assert.Equal((placement.IsMirrored ? -1 : 1) * (a - Point2.Origin).Cross(b - Point2.Origin), u.Cross(v), 1e-8);
        });

    [Fact]
    public void Named_motions_do_what_they_say()
    {
        Assert.Equal(new(-3, 4), Placement2.Mirror.Apply(new Point2(3, 4)));
        Assert.Equal(new(4, 6), Placement2.MovedBy(new(1, 2)).Apply(new Point2(3, 4)));
        Assert.Equal(0, Placement2.TurnedBy(Math.PI / 2).Apply(new Point2(3, 4)).DistanceTo(new(-4, 3)), 1e-12);
        Assert.Equal(new(3, 4), Placement2.MovedBy(new(1, 2)).Apply(new Vector2(3, 4)));
    }
}
