using CsCheck;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Regions;

public sealed class BooleanPropertyTests
{
    private static readonly Gen<(Region2 A, Region2 B)> Pairs = Gen.Select(Shapes.Region, Shapes.Region);

    private static readonly Gen<Placement2> Nudge = Gen.Select(Shapes.Fine(-10, -5), Shapes.Fine(-1, 1), Shapes.Fine(-1, 1)).Select(
        (exponent, along, turn) =>
        {
            var size = Math.Pow(10, exponent);
            return new Placement2(false, turn * size / 100, new(along * size, size));
        });

    // Oracle: NetTopologySuite 2.6 (OverlayNG) on the flattened regions.
    [Fact]
    public void Areas_of_union_intersection_and_difference_are_those_of_NetTopologySuite() => Pairs.Check(
        300,
        (a, b) =>
        {
            var (first, second) = (Nts.Of(a), Nts.Of(b));
            var tolerance = Nts.AreaTolerance(a, b);

            Assert.Equal(OverlayNGRobust.Overlay(first, second, SpatialFunction.Union).Area, a.Union(b).Area, tolerance);
            Assert.Equal(OverlayNGRobust.Overlay(first, second, SpatialFunction.Intersection).Area, a.Intersection(b).Area, tolerance);
            Assert.Equal(OverlayNGRobust.Overlay(first, second, SpatialFunction.Difference).Area, a.Difference(b).Area, tolerance);
        });

    [Fact]
    public void Areas_of_union_and_intersection_add_up_to_those_of_the_operands() => Pairs.Check(
        500,
        (a, b) =>
        {
            var (union, both) = (a.Union(b).Area, a.Intersection(b).Area);

            Assert.Equal(a.Area + b.Area, union + both, 1e-6);
            Assert.Equal(a.Area - both, a.Difference(b).Area, 1e-6);
            Assert.Equal(union, a.Difference(b).Area + b.Difference(a).Area + both, 1e-6);
        });

    [Fact]
    public void A_region_less_itself_is_empty_and_joined_with_itself_is_itself() => Shapes.Region.Check(
        400,
        region =>
        {
            Assert.True(region.Difference(region).IsEmpty);
            Assert.Equal(region.Area, region.Union(region).Area, 1e-9);
            Assert.Equal(region.Area, region.Intersection(region).Area, 1e-9);
            Assert.True(region.Difference(Region2.FromContours(FillRule.NonZero, region.Contours)).IsEmpty);
        });

    [Fact]
    public void Pieces_cut_out_and_put_back_give_the_whole() => Pairs.Check(
        400,
        (a, b) =>
        {
            var (left, both, right) = (a.Difference(b), a.Intersection(b), b.Difference(a));

            Assert.True(left.Intersection(right).IsEmpty);
            Assert.Equal(a.Area, left.Union(both).Area, 1e-6);
            Assert.True(a.Union(b).Difference(left).Difference(both).Difference(right).IsEmpty);
            Assert.True(Region2.UnionOf([left, both, right]).Difference(a.Union(b)).IsEmpty);
        });

    [Fact]
    public void Result_contours_are_sound_and_turn_the_right_way() => Pairs.Check(
        400,
        (a, b) =>
        {
            foreach (var region in new[] { a.Union(b), a.Intersection(b), a.Difference(b) })
            {
                foreach (var part in region.Parts)
                {
                    Assert.True(part.Outer.SignedArea > 0);
                    Assert.All(part.Openings, opening => Assert.True(opening.SignedArea < 0));
                }

                // Contours may touch themselves, but never run along themselves or end.
                Assert.All(
                    region.Contours.SelectMany(contour => ContourAudit.Find(contour)),
                    fault => Assert.Equal(ContourFaultKind.SelfCrossing, fault.Kind));
            }
        });

    [Fact]
    public void Points_belong_to_the_results_as_they_belong_to_the_operands() => Gen.Select(
        Pairs, Gen.Select(Gen.Double[-20, 160], Gen.Double[-20, 160], (x, y) => new Point2(x, y)).Array[20]).Check(
        500,
        (pair, points) =>
        {
            var (a, b) = pair;
            var (union, both, difference) = (a.Union(b), a.Intersection(b), a.Difference(b));
            foreach (var point in points)
            {
                if (a.DistanceToBoundary(point) > 1e-6 && b.DistanceToBoundary(point) > 1e-6)
                {
                    var (inA, inB) = (a.Contains(point), b.Contains(point));

                    Assert.Equal(inA || inB, union.Contains(point));
                    Assert.Equal(inA && inB, both.Contains(point));
                    Assert.Equal(inA && !inB, difference.Contains(point));
                }
            }
        });

    // Input as earlier steps leave it: the same shape again, moved and turned by anything between rounding and a hundred snap
    // distances. Only what is lost along all edges may differ, and that by the ten snap distances of a second attempt.
    [Fact]
    public void Operands_that_nearly_coincide_give_consistent_areas() => Gen.Select(Pairs, Nudge).Check(
        500,
        (pair, nudge) =>
        {
            var (shape, other) = pair;
            var moved = shape.Placed(nudge);
            var (a, b) = (shape.Union(other), moved.Difference(other));
            var tolerance = 1e-6 + (10 * Region2.SnapDistance * (Length(a) + Length(b)));
            var (union, both) = (a.Union(b).Area, a.Intersection(b).Area);

            Assert.Equal(a.Area + b.Area, union + both, tolerance);
            Assert.Equal(a.Area - both, a.Difference(b).Area, tolerance);
            Assert.InRange(shape.Difference(moved).Area, 0, (3 * nudge.Move.Length * Length(shape)) + tolerance);
        });

    private static double Length(Region2 region) => region.Contours.Sum(contour => contour.Length);
}
