using CsCheck;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Geometry.Regions;

namespace PlanForge.Drafting.Tests.Cutting;

public sealed class KerfCouponTests
{
    // Closed form: every strip loses half a kerf on either side, so n strips of width w pushed together are n (w − k) wide.
    [Fact]
    public void The_row_of_strips_gives_back_the_kerf_that_was_burnt() => Gen.Double[0.01, 2].Sample(kerf =>
    {
        var strips = Strips(KerfCoupon.Of("birch ply", 3));
        var row = strips.Sum(strip => strip.Bounds.Grown(-kerf / 2).Width);
        Assert.Equal(kerf, KerfCoupon.KerfOf(row), 1e-9);
    });

    [Theory]
    [InlineData(98.2, 0.18)]
    [InlineData(97.5, 0.25)]
    public void A_measured_row_is_read_into_a_kerf(double measured, double kerf) => Assert.Equal(kerf, KerfCoupon.KerfOf(measured), 1e-12);

    [Theory]
    [InlineData(100)]
    [InlineData(101)]
    [InlineData(50)]
    [InlineData(double.NaN)]
    public void A_row_that_no_cutter_leaves_is_refused(double measured) => Assert.Throws<ArgumentOutOfRangeException>(() => KerfCoupon.KerfOf(measured));

    [Theory]
    [InlineData(0.5)]
    [InlineData(3)]
    [InlineData(12)]
    public void Slots_step_by_a_tenth_around_the_thickness_and_say_their_size(double thickness)
    {
        var coupon = KerfCoupon.Of("balsa", thickness);
        var slots = coupon.Contours().Where(path => path.SignedArea < 0).Select(path => path.Bounds).ToList();
        Assert.Equal([-0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3], slots.Select(slot => Math.Round(slot.Width - thickness, 9)));
        Assert.All(slots, slot => Assert.Equal(KerfCoupon.SlotLength, slot.Height, 1e-12));
        var words = coupon.Drawing.Items.OfType<DrawingItem.Text>().Select(text => text.Content).ToList();
        Assert.All(slots, slot => Assert.Contains(slot.Width.ToString("0.0#", System.Globalization.CultureInfo.InvariantCulture), words));
        Assert.Contains(coupon.Notes, note => note.Contains("kerf = (100 mm - measured) / 10", StringComparison.Ordinal));
    }

    [Fact]
    public void Tongues_step_by_a_tenth_around_the_length_of_the_slots()
    {
        var comb = KerfCoupon.Of("balsa", 3).Contours().Single(path => path.SegmentCount > 4);
        var top = comb.Bounds.MaxY;
        var tongues = comb.Segments.Where(segment => segment.Start.Y == top && segment.End.Y == top).Select(segment => Math.Round(segment.Length, 9)).Order();
        Assert.Equal([9.7, 9.8, 9.9, 10, 10.1, 10.2, 10.3], tongues);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(3)]
    [InlineData(25)]
    public void Contours_are_sound_and_lettering_is_clear_of_them(double thickness)
    {
        var coupon = KerfCoupon.Of("birch ply", thickness);
        var contours = coupon.Contours();
        Assert.All(contours, contour => Assert.Empty(ContourAudit.Find(contour)));
        Assert.All(contours.Index(), one => Assert.All(contours.Skip(one.Index + 1), other => Assert.Empty(one.Item.IntersectionsWith(other, 1e-6))));
        foreach (var text in coupon.Drawing.Items.OfType<DrawingItem.Text>().Select(TextExtents.Of))
        {
            Assert.All(contours, contour => Assert.DoesNotContain(contour.Segments.SelectMany(segment => Enumerable.Range(0, 101).Select(i => segment.PointAt(i / 100.0))), text.Contains));
            Assert.Contains(contours, contour => contour.SignedArea > 0 && contour.Bounds.Contains(text.Centre));
        }
    }

    private static IEnumerable<Path2> Strips(CutDrawing coupon) => coupon.Contours().Take(KerfCoupon.Strips);
}
