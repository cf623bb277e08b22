using CsCheck;
using PlanForge.Geometry;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Tests.Curves;

public sealed class ArcsTests
{
    private static readonly Gen<Segment2> Arcs =
        from x in Gen.Double[-500, 500]
        from y in Gen.Double[-500, 500]
        from bulge in Gen.Double[-3, 3]
        select new Segment2(new(12, -7), new(x, y), bulge);

    [Fact]
    public void Halves_lie_on_the_arc_and_turn_half_as_far() => Arcs.Sample(
        arc =>
        {
            var (first, second) = arc.Halves();
            return arc.Start == arc.End || (first.End.DistanceTo(arc.PointAt(0.5)) < 1e-9 * (1 + arc.Radius)
                && first.Start == arc.Start && first.End == second.Start && second.End == arc.End
                && Math.Abs(first.Sweep - (arc.Sweep / 2)) < 1e-12 && first.Bulge == second.Bulge);
        },
        iter: 2000);

    [Fact]
    public void A_quarter_circle_strays_as_far_as_published()
    {
        // shared/check-values.md section 12, no. 13 (derived there): k = 0.5522847498, radial error 2.7253e-4 R.
        var quarter = new Segment2(new(100, 0), new(0, 100), Math.Tan(Math.PI / 8));
        var (first, second) = quarter.BezierControls();
        Assert.Equal(55.22847498, first.Y, 1e-6);
        Assert.Equal(100, first.X, 1e-9);
        Assert.Equal(55.22847498, second.X, 1e-6);
        Assert.Equal(2.7253e-2, LargestRadialError(quarter), 1e-5);
        Assert.Equal(2.7256e-2, quarter.BezierError(), 1e-6);
    }

    [Fact]
    public void The_bound_holds_and_is_close() => Arcs.Where(arc => Math.Abs(arc.Bulge) is > 0.02 and < 0.5).Sample(
        arc => LargestRadialError(arc) is var error && error <= arc.BezierError() + 1e-9 && error >= (0.99 * arc.BezierError()) - 1e-9,
        iter: 500);

    private static double LargestRadialError(Segment2 arc)
    {
        var (first, second) = arc.BezierControls();
        var (centre, radius) = (arc.Centre, arc.Radius);
        var largest = 0.0;
        for (var i = 0; i <= 1000; i++)
        {
            var t = i / 1000.0;
            var point = Bezier.PointAt(arc.Start, first, second, arc.End, t);
            largest = Math.Max(largest, Math.Abs(point.DistanceTo(centre) - radius));
        }

        return largest;
    }
}
