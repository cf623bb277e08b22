using PlanForge.Geometry.Fitting;

namespace PlanForge.Geometry.Tests.Fitting;

public sealed class BiarcTests
{
    // check-values 12.13: D. S. Meek and D. J. Walton (named there from memory), checked on spirals: error |dκ/ds|·h³/324;
    // dκ/ds 1e-4, h 20: 2.472e-3; h 10: 3.087e-4.
    [Theory]
    [InlineData(20, 2.472e-3)]
    [InlineData(10, 3.087e-4)]
    public void Error_on_a_clothoid_is_the_published_one(double length, double expected)
    {
        var clothoid = TestCurve.Clothoid(1e-4, 0, length);

        Assert.Equal(expected, GreatestDeviation(clothoid), expected * 2e-3);
    }

    // The same formula around an inflection, where both arcs bend different ways.
    [Theory]
    [InlineData(-10, 10)]
    [InlineData(-4, 8)]
    [InlineData(30, 45)]
    public void Error_depends_on_the_rate_of_curvature_only(double from, double to)
    {
        var clothoid = TestCurve.Clothoid(2e-4, from, to);
        var expected = 2e-4 * Math.Pow(to - from, 3) / 324;

        Assert.Equal(expected, GreatestDeviation(clothoid), expected * 0.02);
    }

    [Fact]
    public void Biarc_is_tangent_at_its_ends_and_its_joint()
    {
        var ellipse = TestCurve.Ellipse(80, 30, 0.2, 1.1);
        var (start, end) = (ellipse.At(0.2), ellipse.At(1.1));
        var biarc = new Biarc(start, end);

        Assert.Equal(0, (biarc.First.DirectionAt(0) - start.Direction).Length, 1e-12);
        Assert.Equal(0, (biarc.First.DirectionAt(1) - biarc.Second.DirectionAt(0)).Length, 1e-12);
        Assert.Equal(0, (biarc.Second.DirectionAt(1) - end.Direction).Length, 1e-12);
    }

    [Fact]
    public void Deviation_is_the_distance_and_the_angle_from_the_nearer_arc()
    {
        var biarc = new Biarc(new(new(0, 0), new(1, 0)), new(new(30, 12), Vector2.FromAngle(0.9)));
        foreach (var arc in new[] { biarc.First, biarc.Second })
        {
            var (on, direction) = (arc.PointAt(0.4), arc.DirectionAt(0.4));
            var (distance, slope) = biarc.Deviation(new(on + (direction.Left * 0.3), direction.Turned(0.05)));

            Assert.Equal(0.3, distance, 1e-9);
            Assert.Equal(Math.Sin(0.05), slope, 1e-9);
        }
    }

    private static double GreatestDeviation(TestCurve curve)
    {
        var biarc = new Biarc(curve.At(curve.From), curve.At(curve.To));
        var greatest = 0.0;
        for (var i = 1; i < 1000; i++)
        {
            var sample = curve.At(curve.From + ((curve.To - curve.From) * i / 1000));
            greatest = Math.Max(greatest, Math.Min(biarc.First.DistanceTo(sample.Point), biarc.Second.DistanceTo(sample.Point)));
        }

        return greatest;
    }
}
