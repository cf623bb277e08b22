using PlanForge.Airframe.Measuring;
using PlanForge.Parts.Bench;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Parts.Tests.Bench.Measuring;

/// <summary>Poses whose readings can be written down by hand.</summary>
public sealed class PoseClosedFormTests
{
    // A flat plate at no incidence: root leading edge at station 100, height 60; chord 200; pins 45 + 10 from the centre line; the
    // board 40 + 50 below the datum line.
    private static readonly RiggedAirframe Flat = Description.Rigged(Description.PlateOnBox(0, 0));

    private const double Chord = 200, Across = 55, LeadingEdge = 60, Board = 90;

    [Fact]
    public void Pins_of_the_flat_plate_stand_where_they_were_put()
    {
        var plan = PinPoints.Of(Flat);

        Assert.Equal((Across, 100, 300, 150, 150), (plan.Across, plan.Front.X, plan.Rear.X, plan.FrontAboveBoard, plan.RearAboveBoard));
    }

    // Closed form: turned about the x axis by a, a pin at y stands y sin a higher.
    [Theory]
    [InlineData(0.2)]
    [InlineData(-1)]
    [InlineData(3)]
    public void Roll_is_found_back(double degrees)
    {
        var roll = Build.Degrees(degrees);
        var up = Across * Math.Sin(roll);
        var round = Readings.Result(Flat, Readings.Round(Readings.Pins(150 - up, 150 + up, 150 - up, 150 + up), Board)).Last;

        Assert.Equal(roll, round.Pose.Roll, 1e-9);
        Assert.Equal(0, round.Pose.Incidence, 1e-9);
        Assert.Equal(0, round.Pose.Warp, 1e-9);
        Assert.Equal(0, round.Pose.Height, 1e-9);
    }

    // Closed form: the plate turned about its leading edge by a, the rear pins stand chord × sin a lower.
    [Theory]
    [InlineData(0.5)]
    [InlineData(-2)]
    public void Incidence_and_height_are_found_back(double degrees)
    {
        var incidence = Build.Degrees(degrees);
        double front = 151.5, rear = front - (Chord * Math.Sin(incidence));
        var round = Readings.Result(Flat, Readings.Round(Readings.Pins(front, front, rear, rear), Board)).Last;

        Assert.Equal(incidence, round.Pose.Incidence, 1e-9);
        Assert.Equal(1.5, round.Pose.Height, 1e-9);
    }

    [Fact]
    public void Halves_that_disagree_are_a_warp_and_not_a_seat()
    {
        var warp = Build.Degrees(0.4);
        var down = Chord * Math.Sin(warp);
        var round = Readings.Result(Flat, Readings.Round(Readings.Pins(150, 150, 150 + down, 150 - down), Board)).Last;

        Assert.Equal(warp, round.Pose.Warp, 1e-9);
        Assert.Equal(0, round.Pose.Incidence, 1e-9);
        Assert.Equal(0, round.Pose.Roll, 1e-9);
        Assert.Equal(2 * Chord * warp, round.Checks.Single(check => check.Kind == CheckKind.RiseAcross).Value, 1e-9);
    }

    // With dihedral d a pin y off the centre line stands (y) tan d above the root. Pins measured 5 mm farther out stand higher by
    // 5 tan d though nothing is wrong.
    [Fact]
    public void Pins_off_the_planned_distance_are_corrected_for_dihedral()
    {
        var airframe = Description.Rigged(Description.PlateOnBox(5, 0));
        var rise = Math.Tan(Build.Degrees(5));
        var across = PinPoints.Of(airframe).Across;
        double planned = LeadingEdge + Board + (across * rise), farther = planned + (5 * rise);
        var pins = Readings.Pins(planned, farther, planned, farther, across) is var all
            ? all.Select(pin => pin.Hand == Hand.Starboard ? pin with { Across = across + 5 } : pin)
            : [];
        var told = Readings.Result(airframe, Readings.Round([.. pins], Board)).Last;
        var untold = Readings.Result(airframe, Readings.Round(Readings.Pins(planned, farther, planned, farther), Board)).Last;

        Assert.Equal(0, told.Pose.Roll, 1e-9);
        Assert.Equal(5 * rise, untold.Checks[0].Value, 1e-3);
    }

    // Closed form: tips at (100 ± 600 sin a, ±600 cos a) after a yaw a about (100, 0): distances to (1100, 0) by Pythagoras.
    [Theory]
    [InlineData(0.1)]
    [InlineData(-0.7)]
    public void Yaw_is_found_back_from_two_cords(double degrees)
    {
        var yaw = Build.Degrees(degrees);
        double x = 600 * Math.Sin(yaw), y = 600 * Math.Cos(yaw), starboard = Math.Sqrt(((1000 + x) * (1000 + x)) + (y * y));
        var port = Math.Sqrt(((1000 - x) * (1000 - x)) + (y * y));
        var round = Readings.Result(Flat, Readings.Round([]) with
        {
            Cord = new(1100, LeadingEdge),
            Cords = [Readings.Tip(Hand.Port, port), Readings.Tip(Hand.Starboard, starboard)],
        }).Last;

        Assert.Equal(yaw, round.Pose.Yaw, 1e-9);
        Assert.Equal(0, round.Pose.Aft, 1e-6);
        Assert.Equal(yaw > 0 ? Hand.Port : Hand.Starboard, round.Square!.Value.To);
        Assert.Equal(Chord * Math.Abs(Math.Sin(yaw)), round.Square.Value.TrailingEdge, 1e-9);
        Assert.Equal(Math.Abs(x), round.Square.Value.Tip, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Designs.All), MemberType = typeof(Designs))]
    public void Every_pose_of_every_design_is_found_back(string design)
    {
        var airframe = Designs.Rigged(design);
        var random = new Random(7);
        for (var i = 0; i < 50; i++)
        {
            double Angle(double degrees) => Build.Degrees(degrees * ((2 * random.NextDouble()) - 1));
            var pose = new WingPose(Angle(1.5), Angle(1.5), Angle(0.5), Angle(100), Angle(1), Angle(100));
            var found = Readings.Result(airframe, Readings.Exactly(airframe, pose, 200, new(airframe.Body.To, 10))).Last.Pose;
            foreach (var unknown in Enum.GetValues<PoseUnknown>())
            {
                Assert.Equal(pose[unknown], found[unknown], 1e-7);
            }
        }
    }

    // The standard uncertainty of a rule read to r is r/√12 (rectangular distribution); the rise of two pins over a chord c then has
    // √2 of it, the mean of both sides 1/√2 of that: r/√12 in all, and 95 % of a normal distribution lie within 1.96 of it. A warp
    // about the leading edge leaves the front pins alone, so one side over the other is settled by those two: √2 r/√12.
    [Fact]
    public void Uncertainty_of_single_readings_comes_from_the_step_of_the_rule()
    {
        var round = Readings.Result(Flat, Readings.Round(Readings.Pins(150, 150, 150, 150))).Last;

        Assert.Equal(1.959964 * 0.25 / Math.Sqrt(12) / Chord, round[PoseUnknown.Incidence].HalfWidth!.Value, 1e-9);
        Assert.Equal(1.959964 * 0.25 * Math.Sqrt(2.0 / 12), round.Checks.Single(check => check.Kind == CheckKind.Across).HalfWidth, 1e-6);
        Assert.Null(round[PoseUnknown.Height].HalfWidth);
    }
}
