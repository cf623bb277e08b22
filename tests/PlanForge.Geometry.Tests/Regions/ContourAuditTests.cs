using CsCheck;
using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Tests.Regions;

public sealed class ContourAuditTests
{
    [Fact]
    public void Sound_contours_have_no_faults() =>
        Gen.OneOf(Shapes.Circle, Shapes.Rectangle, Shapes.RoundedRectangle, Shapes.Star)
            .Check(500, path => Assert.Empty(ContourAudit.Find(path)));

    // Oracle: NetTopologySuite's validity check of the flattened polygon.
    [Fact]
    public void Polygons_have_faults_exactly_when_NetTopologySuite_finds_them_invalid() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], (x, y) => new Point2(x, y)).Array[3, 8]
            .Where(points => points.Zip([.. points.Skip(1), points[0]]).All(pair => pair.First != pair.Second))
            .Check(
                2000,
                points => Assert.Equal(!Nts.Polygon(Path2.Polygon(points)).IsValid, !ContourAudit.Find(Path2.Polygon(points)).IsEmpty));

    [Fact]
    public void Open_path_is_found()
    {
        var fault = Assert.Single(ContourAudit.Find(Path2.Polyline(new(0, 0), new(5, 0), new(5, 5))));

        Assert.Equal(new(ContourFaultKind.Open, new(5, 5), 1), fault);
    }

    [Fact]
    public void Segment_without_length_is_found()
    {
        var fault = Assert.Single(ContourAudit.Find(Path2.Polygon(new(0, 0), new(5, 0), new(5, 0), new(5, 5))));

        Assert.Equal(new(ContourFaultKind.ZeroLengthSegment, new(5, 0), 1), fault);
    }

    [Fact]
    public void Crossing_is_found_with_its_place()
    {
        var fault = Assert.Single(ContourAudit.Find(Path2.Polygon(new(0, 0), new(10, 10), new(10, 0), new(0, 10))));

        Assert.Equal(ContourFaultKind.SelfCrossing, fault.Kind);
        Assert.Equal((0, 2), (fault.Segment, fault.OtherSegment));
        Assert.Equal(0, fault.At.DistanceTo(new(5, 5)), 1e-12);
    }

    [Fact]
    public void Arc_that_cuts_a_line_of_the_same_contour_is_found_at_both_points()
    {
        // A half circle of radius 5 about (5, 0) reaches down to -5; the lower edge lies at -3: crossings at 5 ± 4.
        var path = Path2.Closed([new(new(0, 0), 1), new(new(10, 0)), new(new(20, 0)), new(new(20, -3)), new(new(-10, -3)), new(new(-10, 0))]);
        var places = ContourAudit.Find(path).Select(fault => fault.At).OrderBy(at => at.X).ToList();

        Assert.Equal(2, places.Count);
        Assert.Equal(0, places[0].DistanceTo(new(1, -3)), 1e-9);
        Assert.Equal(0, places[1].DistanceTo(new(9, -3)), 1e-9);
    }

    [Fact]
    public void Edges_cut_twice_are_found()
    {
        // There and back along a slit; and two arcs of one circle that overlap.
        var slit = Path2.Polygon(new(0, 0), new(10, 0), new(10, 10), new(10, 4), new(0, 4));
        Assert.Contains(ContourAudit.Find(slit), fault => fault.Kind == ContourFaultKind.DuplicateEdge && fault.At.X == 10);

        var twice = Path2.Closed([.. Path2.Circle(new(0, 0), 3).Vertices, .. Path2.Circle(new(0, 0), 3).Vertices]);
        Assert.Contains(ContourAudit.Find(twice), fault => fault.Kind == ContourFaultKind.DuplicateEdge);
    }
}
