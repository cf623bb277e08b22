using CsCheck;
using PlanForge.Drafting.Cutting;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Tests.Cutting;

// Closed forms: shared/check-values.md section 12, no. 14 (derived there, and here where another is given).
public sealed class KerfCompensationTests
{
    private static readonly double Quarter = Math.Tan(Math.PI / 8);

    [Theory]
    [InlineData(0.1, 10.1, 9.9)]
    [InlineData(0.2, 10.2, 9.8)]
    public void A_disc_grows_by_the_kerf_and_a_hole_shrinks_by_it_and_both_stay_circles(double kerf, double disc, double hole)
    {
        var (centre, radius) = Assert.Single(Cuts.Compensated(kerf, Path2.Circle(new(3, -7), 5))).AsCircle()!.Value;
        Assert.Equal(disc, 2 * radius, 1e-12);
        Assert.Equal(0, centre.DistanceTo(new(3, -7)), 1e-12);
        var plate = Cuts.Compensated(kerf, Path2.Rectangle(new(-20, -20, 20, 20)), Path2.Circle(new(3, -7), 5).Reversed());
        Assert.Equal(hole, 2 * plate[1].AsCircle()!.Value.Radius, 1e-12);
        Assert.True(plate[1].SignedArea < 0);
    }

    [Theory]
    [InlineData(0.2, 200.8, 2520.04)]
    [InlineData(0.1, 200.4, 2510.01)]
    public void A_square_keeps_four_sharp_corners(double kerf, double perimeter, double area)
    {
        var square = Assert.Single(Cuts.Compensated(kerf, Path2.Rectangle(new(0, 0, 50, 50))));
        Assert.Equal(4, square.SegmentCount);
        Assert.Equal(perimeter, square.Length, 1e-9);
        Assert.Equal(area, square.SignedArea, 1e-9);
    }

    [Fact]
    public void A_square_opening_shrinks_with_sharp_corners()
    {
        // (50 − 0.2)² is left open of (50)².
        var plate = Cuts.Compensated(0.2, Path2.Rectangle(new(-10, -10, 60, 60)), Path2.Rectangle(new(0, 0, 50, 50)).Reversed());
        Assert.Equal(-2480.04, plate[1].SignedArea, 1e-9);
        Assert.Equal(4, plate[1].SegmentCount);
    }

    [Fact]
    public void The_radii_of_an_arc_slot_change_by_half_the_kerf()
    {
        // A slot of width 2r along an arc of radius R and angle a: area 2Rra + πr², length 2Ra + 2πr. Narrower by the kerf k, only r changes.
        const double R = 40;
        const double Kerf = 0.3;
        var angle = Math.PI / 3;
        var slot = ArcSlot(R, 4, angle).Reversed();
        var plate = Cuts.Compensated(Kerf, Path2.Rectangle(new(-60, -60, 60, 60)), slot);
        const double Half = 4 - (Kerf / 2);
        Assert.Equal(-((2 * R * Half * angle) + (Math.PI * Half * Half)), plate[1].SignedArea, 1e-9);
        Assert.Equal((2 * R * angle) + (2 * Math.PI * Half), plate[1].Length, 1e-9);
        Assert.Equal([Half, Half, R - Half, R + Half], plate[1].Segments.Select(segment => Math.Round(segment.Radius, 9)).Order());
    }

    [Fact]
    public void Rounded_corners_keep_their_centres()
    {
        // A rounded rectangle w by h, radius r: area wh − (4 − π) r²; outside everything grows by k/2 each side, the radius too.
        var outline = Rounded(60, 40, 8);
        var grown = Assert.Single(Cuts.Compensated(0.2, outline));
        Assert.Equal((60.2 * 40.2) - ((4 - Math.PI) * 8.1 * 8.1), grown.SignedArea, 1e-9);
        Assert.Equal(8, grown.SegmentCount);
    }

    [Theory]
    [InlineData(0.15, true)]
    [InlineData(0.19, true)]
    [InlineData(0.21, false)]
    public void A_slot_narrower_than_the_kerf_is_refused_where_it_is(double kerf, bool isCut)
    {
        // A slot 0.2 mm wide and 12 mm deep in the upper edge, from x = 20.
        var outline = Path2.Polygon(new(0, 0), new(50, 0), new(50, 30), new(20.2, 30), new(20.2, 18), new(20, 18), new(20, 30), new(0, 30));
        var compensated = KerfCompensation.Of(Cuts.Drawing(outline), kerf, out var lost);
        Assert.Equal(isCut, compensated is not null);
        Assert.Equal(isCut, lost is null);
        if (lost is { } place)
        {
            Assert.InRange(place.X, 20, 20.2);
            Assert.InRange(place.Y, 18, 30);
        }
    }

    [Fact]
    public void A_hole_smaller_than_the_kerf_is_refused_where_it_is()
    {
        Assert.Null(KerfCompensation.Of(
            Cuts.Drawing(Path2.Rectangle(new(0, 0, 50, 50)), Path2.Circle(new(30, 20), 0.1).Reversed()), 0.25, out var lost));
        Assert.Equal(0, lost!.Value.DistanceTo(new(30, 20)), 0.1 + 1e-9);
    }

    [Fact]
    public void A_neck_that_parts_an_opening_is_refused_where_it_is()
    {
        // Two halves of an opening joined by a neck 0.2 mm wide and 0.3 mm long about (20, 15).
        var opening = Path2.Polygon(
            new(10, 10), new(19.85, 10), new(19.85, 14.9), new(20.15, 14.9), new(20.15, 10), new(30, 10),
            new(30, 20), new(20.15, 20), new(20.15, 15.1), new(19.85, 15.1), new(19.85, 20), new(10, 20)).Reversed();
        Assert.Null(KerfCompensation.Of(Cuts.Drawing(Path2.Rectangle(new(0, 0, 40, 30)), opening), 0.25, out var lost));
        Assert.Equal(0, lost!.Value.DistanceTo(new(20, 15)), 0.3);
    }

    [Fact]
    public void Two_outlines_nearer_than_the_kerf_are_refused() => Assert.Null(KerfCompensation.Of(
        Cuts.Drawing(Path2.Rectangle(new(0, 0, 20, 20)), Path2.Rectangle(new(20.1, 0, 40, 20))), 0.2, out _));

    // Grow, then shrink: what has no narrow place comes back within 1e-6 mm.
    [Fact]
    public void Growing_and_shrinking_gives_the_same_contour() => Gen.Select(Gen.Double[20, 100], Gen.Double[20, 100], Gen.Double[1, 9], Gen.Double[0.05, 0.4]).Sample(
        (width, height, radius, kerf) =>
        {
            var opening = Path2.Circle(new(0, 0), radius / 2);
            var grown = Cuts.Compensated(kerf, Rounded(width, height, radius), opening.Reversed());

            // The compensation of the waste is the inverse of that of the wood.
            var frame = Path2.Rectangle(new(-200, -200, 200, 200));
            var back = Cuts.Compensated(kerf, frame, grown[0].Reversed(), grown[1].Reversed());
            AssertSame(Rounded(width, height, radius), back[1]);
            AssertSame(opening, back[2]);
        },
        iter: 100);

    [Fact]
    public void What_is_left_after_cutting_a_design_is_what_was_drawn()
    {
        // NetTopologySuite burns the kerf away from the compensated contours: its buffer of the lines, taken off the material.
        const double Kerf = 0.2;
        foreach (var (part, drawing) in Cuts.OfDesigns(new(Kerf, new("test", 1, 1))))
        {
            var drawn = part.Lines.Where(line => line.Use == LineUse.Cut).Select(line => line.Path).ToList();
            var cut = drawing.Contours();
            var left = Cuts.Material(cut).Difference(Cuts.Material(cut).Boundary.Buffer(Kerf / 2, 64));

            // At an inside corner the round beam leaves the corner's tip: (1 − π/4)(k/2)² at a right angle.
            var tolerance = (drawn.Sum(path => path.SegmentCount) * Kerf * Kerf / 4) + (2 * Cuts.Sagitta * drawn.Length());
            Assert.Equal(drawn.Area(), left.Area, tolerance);
            Assert.InRange(Cuts.Material(drawn).SymmetricDifference(left).Area, 0, tolerance);
        }
    }

    private static void AssertSame(Path2 expected, Path2 found)
    {
        Assert.Equal(Math.Abs(expected.SignedArea), Math.Abs(found.SignedArea), 1e-6 * expected.Length);
        Assert.All(found.Flattened(0.01), point => Assert.Equal(0, expected.DistanceTo(point), 1e-6));
        Assert.All(expected.Flattened(0.01), point => Assert.Equal(0, found.DistanceTo(point), 1e-6));
    }

    private static Path2 Rounded(double width, double height, double radius)
    {
        double x = width / 2, y = height / 2;
        return Path2.Closed(
        [
            new(new(radius - x, -y)), new(new(x - radius, -y), Quarter), new(new(x, radius - y)), new(new(x, y - radius), Quarter),
            new(new(x - radius, y)), new(new(radius - x, y), Quarter), new(new(-x, y - radius)), new(new(-x, radius - y), Quarter),
        ]);
    }

    private static Path2 ArcSlot(double radius, double half, double angle)
    {
        Point2 At(double r, double a) => Point2.Origin + (Vector2.FromAngle(a) * r);
        var bulge = Math.Tan(angle / 4);
        return Path2.Closed(
        [
            new(At(radius + half, 0), bulge), new(At(radius + half, angle), 1), new(At(radius - half, angle), -bulge), new(At(radius - half, 0), 1),
        ]);
    }
}
