using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Parts.Tests.Bench.Measuring;

/// <summary>The thrust line as it was found: 2° down and 1.5° right are drawn, on a mount of 25 x 25 mm.</summary>
public sealed class ThrustTests
{
    private static readonly RiggedAirframe Oxbow = Designs.Rigged("oxbow-1420");

    // Closed form: a stick of length l at an angle a falls l tan a; half a step of the rule is r/√12 wide by 1.96.
    [Fact]
    public void Angle_is_the_rise_over_the_stick()
    {
        var thrust = Of(200, [200 * Math.Tan(Build.Degrees(1.2))], [200 * Math.Tan(Build.Degrees(1.4))])!;

        Assert.Equal(Build.Degrees(1.2), thrust.Down!.Value.Value, 1e-12);
        Assert.Equal(Build.Degrees(-0.8), thrust.Down.Value.Error, 1e-12);
        Assert.Equal(Build.Degrees(-0.1), thrust.Right!.Value.Error, 1e-12);
        Assert.Equal((false, true, false), (thrust.Down.Value.IsWithin, thrust.Right.Value.IsWithin, thrust.IsWithin));
        var cosine = Math.Cos(Build.Degrees(1.2));
        Assert.Equal(1.959964 * 0.25 / Math.Sqrt(12) / 200 * cosine * cosine, thrust.Down.Value.HalfWidth, 1e-8);
    }

    // The washers lie in a plane whose slopes are what is lacking: tan drawn less tan found, over the distance of the bolts.
    [Theory]
    [InlineData(1.2, 1.5)]
    [InlineData(3, 0)]
    [InlineData(2, 2.5)]
    [InlineData(0, 0)]
    public void Washers_give_back_the_drawn_line(double down, double right)
    {
        var bolts = Of(100, [100 * Math.Tan(Build.Degrees(down))], [100 * Math.Tan(Build.Degrees(right))])!.Washers!.Bolts;
        double up = 25 * (Math.Tan(Build.Degrees(2)) - Math.Tan(Build.Degrees(down))), port = 25 * (Math.Tan(Build.Degrees(1.5)) - Math.Tan(Build.Degrees(right)));

        Assert.Equal(["upper port", "upper starboard", "lower port", "lower starboard"], bolts.Select(bolt => bolt.Bolt));
        AssertPlane(bolts.Select(bolt => bolt.More), up, port);
        AssertPlane(bolts.Select(bolt => bolt.InAll), up + (25 * Math.Tan(Build.Degrees(2))), port + (25 * Math.Tan(Build.Degrees(1.5))));
    }

    [Fact]
    public void Only_what_was_read_is_changed()
    {
        var thrust = Of(100, [100 * Math.Tan(Build.Degrees(1))], [])!;

        Assert.Null(thrust.Right);
        AssertPlane(thrust.Washers!.Bolts.Select(bolt => bolt.More), 25 * (Math.Tan(Build.Degrees(2)) - Math.Tan(Build.Degrees(1))), 0);
    }

    // Four readings of 0.1 mm scatter: the mean's interval by Student's factor for 3 degrees of freedom, 3.182 (any table).
    [Fact]
    public void Repeated_readings_tell_their_scatter()
    {
        ImmutableArray<double> readings = [3, 3.4, 3.2, 3.6];
        var thrust = Of(100, readings, [])!;
        var (mean, sigma) = (3.3, Math.Sqrt(0.2 / 3));
        Assert.Equal(Math.Atan(mean / 100), thrust.Down!.Value.Value, 1e-12);
        Assert.Equal(3.182 * sigma / 2 / 100 / (1 + (0.033 * 0.033)), thrust.Down.Value.HalfWidth, 1e-6);
    }

    [Fact]
    public void Stick_read_in_another_unit_is_told() => Assert.Equal(
        "88.7 mm over 100 mm is 41.57°, and 2° is drawn: was one of both lengths read in another unit?",
        Assert.Single(Readings.Result(Oxbow, Round(100, [88.7], [])).Findings).Text());

    [Fact]
    public void Thrust_line_that_is_not_there_is_an_error()
    {
        var flat = Description.Rigged(Description.PlateOnBox(0, 0));

        Assert.Equal("the design has no `thrust_line` to hold these readings against", Assert.Single(Readings.Result(flat, Round(100, [3], [])).Findings).Text());
    }

    private static void AssertPlane(IEnumerable<double> washers, double up, double port)
    {
        var all = washers.ToArray();
        Assert.Equal(0, all.Min(), 1e-9);
        Assert.Equal((up, up), (all[0] - all[2], all[1] - all[3]), new Near());
        Assert.Equal((port, port), (all[0] - all[1], all[2] - all[3]), new Near());
    }

    private static ThrustResult? Of(double over, ImmutableArray<double> down, ImmutableArray<double> right) => Readings.Result(Oxbow, Round(over, down, right)).Last.Thrust;

    private static MeasuringRound Round(double over, ImmutableArray<double> down, ImmutableArray<double> right) => Readings.Round([]) with
    {
        Thrust = new(over, [.. down.Select(it => new MeasuredLength(it, Build.Nowhere))], [.. right.Select(it => new MeasuredLength(it, Build.Nowhere))], Build.Nowhere),
    };

    private sealed class Near : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) a, (double, double) b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9;

        public int GetHashCode((double, double) value) => 0;
    }
}
