using CsCheck;
using NetTopologySuite.Operation.Buffer;
using PlanForge.Geometry.Fitting;
using PlanForge.Geometry.Offsets;
using PlanForge.Geometry.Regions;
using PlanForge.Geometry.Tests.Fitting;

namespace PlanForge.Geometry.Tests.Offsets;

public sealed class OffsetPropertyTests
{
    // Grid distances meet the shapes' own measures, so that parts vanish exactly and boundaries touch.
    private static readonly Gen<double> Distance = Gen.Select(
        Gen.OneOf(Shapes.Fine(0.01, 20), Gen.Int[1, 8].Select(i => i * 3.125)), Gen.Bool, (size, isInward) => isInward ? -size : size);

    private static readonly Gen<(Region2 Region, double Distance)> Cases = Gen.Select(Shapes.Region, Distance);

    // The definition itself: the boundary of the offset is as far from the old boundary as asked for, everywhere.
    [Fact]
    public void Every_point_of_a_round_offset_lies_at_the_distance() => Cases.Check(400, AssertAtTheDistance);

    // Joints that are tangent only nearly, as fits and earlier steps leave them, next to arcs that vanish or nearly do.
    [Fact]
    public void Every_point_lies_at_the_distance_where_joints_are_tangent_only_nearly() => Gen.Select(
        Gen.OneOf(Shapes.RoundedRectangle, Shapes.Circle), Distance, Gen.Select(Shapes.Fine(-9, -4), Shapes.Fine(-1, 1).Array[16])).Check(
        400,
        sample =>
        {
            var (path, distance, (exponent, shifts)) = sample;
            var size = Math.Pow(10, exponent);
            var shaken = Path2.Closed(path.Vertices.Select((vertex, i) => new PathVertex(
                vertex.Point + new Vector2(size * shifts[2 * i], size * shifts[(2 * i) + 1]), vertex.Bulge)));

            AssertAtTheDistance(Region2.FromContours(FillRule.NonZero, shaken), distance);
        });

    [Fact]
    public void Every_point_of_an_offset_of_a_fitted_curve_lies_at_the_distance()
    {
        var section = Region2.FromContours(
            FillRule.NonZero,
            Path2.Closed(ArcFitter.Fit(TestCurve.Nose.At, -1, 1, [], 0.005).Vertices),
            ArcFitter.FitClosed(TestCurve.Ellipse(90, 30, 0, 2 * Math.PI).Samples(400)[..^1], 0.005));
        for (var i = 1; i <= 60; i++)
        {
            AssertAtTheDistance(section, -0.5 * i);
            AssertAtTheDistance(section, 0.7 * i);
        }
    }

    // The definition the other way: a point belongs to the offset just when it is near enough, or deep enough.
    [Fact]
    public void Points_belong_to_a_round_offset_by_their_distance() => Gen.Select(
        Cases, Gen.Select(Shapes.Fine(-30, 170), Shapes.Fine(-30, 170), (x, y) => new Point2(x, y)).Array[20]).Check(
        400,
        (offset, points) =>
        {
            var (region, distance) = offset;
            var result = Offsetter.Offset(region, distance, CornerStyle.Round);
            foreach (var point in points)
            {
                var depth = region.DistanceToBoundary(point) * (region.Contains(point) ? 1 : -1);
                if (Math.Abs(depth + distance) > 1e-6)
                {
                    Assert.Equal(depth + distance > 0, result.Contains(point));
                }
            }
        });

    // Oracle: NetTopologySuite 2.6 Buffer with 200 segments a quarter circle, whose own error goes with the perimeter.
    [Fact]
    public void Area_of_a_round_offset_is_that_of_a_NetTopologySuite_buffer() => Cases.Check(
        100,
        (region, distance) =>
        {
            var buffer = Nts.Of(region).Buffer(distance, new BufferParameters(200) { SimplifyFactor = 1e-6 });
            var tolerance = 1e-3 + (0.01 * (Length(region) + buffer.Length));

            Assert.Equal(buffer.Area, Offsetter.Offset(region, distance, CornerStyle.Round).Area, tolerance);
        });

    [Fact]
    public void Offset_in_two_steps_is_the_offset_by_their_sum() => Cases.Check(
        400,
        (region, distance) =>
        {
            var steps = Offsetter.Offset(Offsetter.Offset(region, 0.3 * distance, CornerStyle.Round), 0.7 * distance, CornerStyle.Round);

            Assert.Equal(Offsetter.Offset(region, distance, CornerStyle.Round).Area, steps.Area, 1e-3);
        });

    // Out and back never loses anything (closing), in and back never gains (opening).
    [Fact]
    public void Offset_and_back_contains_or_is_contained_in_the_region() => Cases.Check(
        400,
        (region, distance) =>
        {
            var back = Offsetter.Offset(Offsetter.Offset(region, distance, CornerStyle.Round), -distance, CornerStyle.Round);
            var lost = distance > 0 ? region.Difference(back) : back.Difference(region);

            Assert.Equal(0, lost.Area, 1e-3);
        });

    [Fact]
    public void Convex_shape_offset_sharp_and_back_is_itself() =>
        Gen.Select(Gen.OneOf(Shapes.Rectangle, Shapes.RoundedRectangle, Shapes.Circle), Shapes.Fine(0.01, 30)).Check(
            200,
            (outline, distance) =>
            {
                var region = Region2.FromContours(FillRule.NonZero, outline);
                var back = Offsetter.Offset(Offsetter.Offset(region, distance, CornerStyle.Sharp), -distance, CornerStyle.Sharp);

                Assert.Equal(region.Area, back.Area, 1e-6);
                Assert.Equal(region.Parts[0].Outer.SegmentCount, back.Parts[0].Outer.SegmentCount);
            });

    [Fact]
    public void Sharp_offset_contains_the_round_one_outward_and_lies_in_it_inward() => Cases.Check(
        400,
        (region, distance) =>
        {
            var (sharp, round) = (Offsetter.Offset(region, distance, CornerStyle.Sharp), Offsetter.Offset(region, distance, CornerStyle.Round));

            Assert.Equal(0, (distance > 0 ? round.Difference(sharp) : sharp.Difference(round)).Area, 1e-6);
        });

    // A fitted curve joins its arcs to within rounding only; its offset must not fall into crumbs for that.
    [Theory]
    [InlineData(0.1)]
    [InlineData(3)]
    [InlineData(-0.5)]
    public void Offset_of_a_fitted_section_keeps_its_segments(double distance)
    {
        var fit = ArcFitter.Fit(TestCurve.Nose.At, -1, 1, [], 0.005);
        var section = Region2.FromContours(FillRule.NonZero, Path2.Closed(fit.Vertices));
        var offset = Assert.Single(Offsetter.Offset(section, distance, CornerStyle.Round).Parts).Outer;

        Assert.InRange(offset.SegmentCount, fit.SegmentCount - 6, fit.SegmentCount + 4);
        Assert.All(offset.Segments, segment => Assert.True(segment.Length > 0.01));
        Assert.Empty(ContourAudit.Find(offset));
    }

    private static void AssertAtTheDistance(Region2 region, double distance)
    {
        foreach (var segment in Offsetter.Offset(region, distance, CornerStyle.Round).Contours.SelectMany(contour => contour.Segments))
        {
            foreach (var fraction in new[] { 0, 0.3, 0.5, 0.9 })
            {
                Assert.Equal(Math.Abs(distance), region.DistanceToBoundary(segment.PointAt(fraction)), 1e-6);
            }
        }
    }

    private static double Length(Region2 region) => region.Contours.Sum(contour => contour.Length);
}
