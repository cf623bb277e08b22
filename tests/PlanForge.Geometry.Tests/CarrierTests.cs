using CsCheck;

namespace PlanForge.Geometry.Tests;

public sealed class CarrierTests
{
    private static readonly Gen<double> Curvature = Gen.OneOf(
        Gen.Const(0.0), Shapes.Fine(-0.5, 0.5), Shapes.Fine(-12, -3).Select(exponent => Math.Pow(10, exponent)));

    private static readonly Gen<Carrier> Carriers = Gen.Select(Shapes.Fine(-3.1, 3.1), Curvature, (angle, curvature) =>
        new Carrier(new(20, -30), Vector2.FromAngle(angle), curvature));

    // A planted answer: two carriers through the same point at an angle must be found to meet there.
    [Fact]
    public void Carriers_through_a_common_point_meet_there() => Gen.Select(Carriers, Carriers, Shapes.Fine(-20, 20)).Check(
        2000,
        sample =>
        {
            var (a, b, along) = sample;
            if (Math.Abs(a.Left.Cross(b.Left)) < 1e-3)
            {
                return;
            }

            // The first carrier is given by another of its points, so that the planted one is nothing special to it.
            var segment = Math.Abs(a.Curvature * along) < 3 ? OnCarrier(a, along) : a;
            var count = Carrier.Meet(segment, b, 1e-9, out var first, out var second);
            var nearest = count == 2 ? Math.Min(first.DistanceTo(a.Through), second.DistanceTo(a.Through)) : first.DistanceTo(a.Through);

            Assert.InRange(count, 1, 2);
            Assert.Equal(0, nearest, 1e-7);
        });

    [Fact]
    public void Signed_distance_of_a_point_set_off_along_the_normal_is_the_offset() => Gen.Select(Carriers, Shapes.Fine(-1.5, 1.5)).Check(
        500,
        (carrier, offset) =>
        {
            var point = carrier.Through + (carrier.Left * offset);

            Assert.Equal(offset, carrier.SignedDistance(point), 1e-9);
            Assert.Equal(0, (carrier.LeftNear(point) - carrier.Left).Length, 1e-9);
        });

    [Fact]
    public void Carrier_of_an_arc_passes_through_the_arc() => Gen.Select(Shapes.Fine(-3, 3), Shapes.Fine(0, 1)).Check(
        300,
        (bulge, fraction) =>
        {
            var segment = new Segment2(new(3, 4), new(50, -7), bulge);

            Assert.Equal(0, Carrier.Of(segment).SignedDistance(segment.PointAt(fraction)), 1e-9);
            Assert.Equal(0, (Carrier.Of(segment).LeftNear(segment.PointAt(fraction)) - segment.DirectionAt(fraction).Left).Length, 1e-9);
        });

    [Fact]
    public void Parallel_lines_and_concentric_circles_do_not_meet()
    {
        var line = new Carrier(new(0, 0), new(0, 1), 0);
        var circle = new Carrier(new(10, 0), new(-1, 0), 0.1);

        Assert.Equal(0, Carrier.Meet(line, line with { Through = new(0, 1) }, 1e-9, out _, out _));
        Assert.Equal(0, Carrier.Meet(circle, new(new(0, 5), new(0, -1), 0.2), 1e-9, out _, out _));
        Assert.Equal(0, Carrier.Meet(circle, circle, 1e-9, out _, out _));
        Assert.Equal(0, Carrier.Meet(circle, line with { Through = new(0, 10.001) }, 1e-9, out _, out _));
        Assert.Equal(1, Carrier.Meet(circle, line with { Through = new(0, 10) }, 1e-9, out _, out _));
        Assert.Equal(2, Carrier.Meet(circle, line with { Through = new(0, 9.999) }, 1e-9, out _, out _));
    }

    // The same carrier seen from the point a distance further along it.
    private static Carrier OnCarrier(Carrier carrier, double along)
    {
        var direction = new Vector2(carrier.Left.Y, -carrier.Left.X);
        var half = carrier.Curvature * along / 2;
        var chord = along * (half == 0 ? 1 : Math.Sin(half) / half);
        return new(carrier.Through + (direction.Turned(half) * chord), carrier.Left.Turned(2 * half), carrier.Curvature);
    }
}
