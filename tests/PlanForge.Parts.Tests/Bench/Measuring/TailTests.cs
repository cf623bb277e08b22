using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Geometry;
using PlanForge.Parts.Arrangement;
using PlanForge.Parts.Bench;
using PlanForge.Parts.Bench.Measuring;
using PlanForge.Parts.Bench.Setup;
using PlanForge.Parts.Rigging;

namespace PlanForge.Parts.Tests.Bench.Measuring;

/// <summary>The tailplane as it sits against its drawing and against the wing.</summary>
public sealed class TailTests
{
    // Tailplane at no incidence: root leading edge at station 905, height 30, chord 140, seat 24 wide; the wing at asin(5.5/262).
    private static readonly RiggedAirframe Oxbow = Designs.Rigged("oxbow-1420");

    private static readonly TailPins Pins = TailPins.Of(Oxbow)!.Value;

    private static double Board => PinPoints.Of(Oxbow).BoardBelowDatum;

    // Closed form: turned about the leading edge of the root by a, a place x behind it stands x sin a lower.
    [Theory]
    [InlineData(0.4)]
    [InlineData(-1)]
    public void Incidence_is_found_back_and_the_seat_sanded_at_the_high_end(double degrees)
    {
        var sine = Math.Sin(Build.Degrees(degrees));
        double front = 30 + Board - ((Pins.Front.X - 905) * sine), rear = 30 + Board - ((Pins.Rear.X - 905) * sine);
        var tail = Tail(Readings.Pins(front, front, rear, rear))!;

        Assert.Equal(Build.Degrees(degrees), tail.Pose.Incidence, 1e-9);
        var most = 140 * Math.Abs(sine);
        var (atFront, atRear) = degrees > 0 ? (most, 0.0) : (0.0, most);
        Assert.Equal(new SeatCorners(atFront, atRear, atFront, atRear), Rounded(tail.Seat!.TakeOff), new Near());
        Assert.Equal(new SeatCorners(atRear, atFront, atRear, atFront), Rounded(tail.Seat.Shims), new Near());
        Assert.False(tail.Checks.Single(check => check.Kind == CheckKind.Rise).IsWithin);
    }

    // Closed form: rolled by a, the seat's right edge, 12 mm out, stands 24 sin a over the left one.
    [Fact]
    public void Roll_is_found_back_and_sanded_off_the_high_side()
    {
        var sine = Math.Sin(Build.Degrees(0.5));
        var up = Pins.Front.Y * sine;
        var tail = Tail(Readings.Pins(30 + Board - up, 30 + Board + up, 30 + Board - up, 30 + Board + up))!;

        Assert.Equal(Build.Degrees(0.5), tail.Pose.Roll, 1e-9);
        Assert.Equal(new SeatCorners(0, 0, 24 * sine, 24 * sine), Rounded(tail.Seat!.TakeOff), new Near());
    }

    // A body that lies nose up by t turns wing and tailplane alike: neither sits as drawn against the board, the decalage is right.
    [Fact]
    public void Body_that_does_not_lie_level_does_not_enter_the_decalage()
    {
        var tilt = Build.Degrees(0.3);
        var plan = PinPoints.Of(Oxbow);
        double Height(Point3 point) => Board + (point.Z * Math.Cos(tilt)) - (point.X * Math.Sin(tilt)) + 20;
        var round = Readings.Round(Readings.Pins(Height(plan.Front), Height(plan.Front), Height(plan.Rear), Height(plan.Rear))) with
        {
            Tailplane = Read(Readings.Pins(Height(Pins.Front), Height(Pins.Front), Height(Pins.Rear), Height(Pins.Rear))),
        };
        var tail = Readings.Result(Oxbow, round).Last.Tail!;

        Assert.Equal(tilt, tail.Pose.Incidence, 1e-9);
        Assert.Equal(Math.Asin(5.5 / 262), tail.Decalage!.Drawn, 1e-12);
        Assert.Equal(tail.Decalage.Drawn, tail.Decalage.Value, 1e-9);
        Assert.Equal(0, tail.Decalage.Seat.Shims.Most, 1e-6);
    }

    // The wing's tips are taken where the wing's cords put them: a tailplane square to the body is found square behind a crooked wing.
    [Theory]
    [InlineData("oxbow-1420", 0.5, 0.0)]
    [InlineData("oxbow-1420", -0.3, 0.4)]
    [InlineData("fellside-2800", 0.2, -0.2)]
    public void Yaw_is_found_back_from_the_wing_tips_whatever_the_wing_does(string design, double wingYaw, double tailYaw)
    {
        var airframe = Designs.Rigged(design);
        var pose = new WingPose(0, 0, 0, 0, Build.Degrees(wingYaw), 1.5);
        var round = Readings.Exactly(airframe, pose, PinPoints.Of(airframe).BoardBelowDatum, new(airframe.Body.To, 10));
        var result = Readings.Result(airframe, round with { Tailplane = Lengths(airframe, pose, Build.Degrees(tailYaw), null) }).Last;

        Assert.Equal(Build.Degrees(tailYaw), result.Tail!.Pose.Yaw, 1e-7);
        Assert.False(result.Tail.IsWingTakenSquare);
    }

    [Fact]
    public void Yaw_is_found_back_from_a_pin_ahead()
    {
        var from = new CordStart(100, 80);
        var tail = Readings.Result(Oxbow, Readings.Round([]) with { Tailplane = Lengths(Oxbow, default, Build.Degrees(0.6), from) }).Last.Tail!;

        Assert.Equal(Build.Degrees(0.6), tail.Pose.Yaw, 1e-7);
        Assert.Equal((Hand.Port, false), (tail.Square!.Value.To, tail.IsWingTakenSquare));
        Assert.Equal(140 * Math.Sin(Build.Degrees(0.6)), tail.Square.Value.TrailingEdge, 1e-6);
    }

    [Fact]
    public void Wing_without_cords_is_taken_to_be_square_and_that_is_said()
    {
        var round = Readings.Result(Oxbow, Readings.Round([]) with { Tailplane = Lengths(Oxbow, default, 0, null) }).Last;

        Assert.True(round.Tail!.IsWingTakenSquare);
        Assert.Equal(
            "The tailplane's yaw is told from the wing's tips, and no cords tell whether the wing is square: it is taken to be.",
            Assert.Single(new BenchTexts(new(Airframe.DisplayUnit.Millimetre)).Advice(round)));
    }

    // 10 000 misplaced wings and tailplanes, read with a rule of a quarter millimetre and a hand of 0.3 mm.
    [Fact]
    public void Intervals_of_tailplane_and_decalage_hold_what_they_promise()
    {
        const int CaseCount = 10_000;
        var random = new Random(11);
        double Within(double greatest) => greatest * ((2 * random.NextDouble()) - 1);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        ImmutableArray<MeasuredLength> Noisy(ImmutableArray<MeasuredLength> from) =>
            [new(Math.Round((from[0].Value + (0.3 * Normal())) / 0.25) * 0.25, Build.Nowhere)];
        var shape = TailplaneShape.Of(Oxbow.Description.Tailplane)!;
        var pivot = shape.InPlace(Point3.Origin);
        int incidence = 0, roll = 0, yaw = 0, decalage = 0;
        for (var i = 0; i < CaseCount; i++)
        {
            var wing = new WingPose(Within(0.02), Within(0.02), 0, Within(3), Within(0.01), Within(2));
            var pose = new WingPose(Within(0.02), Within(0.02), Within(0.005), Within(3), Within(0.01), Within(2));
            var exact = Readings.Exactly(Oxbow, wing, 119, new(1060, 29));
            double Height(Point3 point, Hand hand) => pose.Moved(pivot, BenchMarks.On(hand, point), hand).Z + 119;
            var pins = Readings.Pins(Height(Pins.Front, Hand.Port), Height(Pins.Front, Hand.Starboard), Height(Pins.Rear, Hand.Port), Height(Pins.Rear, Hand.Starboard));
            var lengths = Lengths(Oxbow, wing, pose, null);
            var round = exact with
            {
                Pins = [.. exact.Pins.Select(pin => pin with { Heights = Noisy(pin.Heights) })],
                Cords = [.. exact.Cords.Select(cord => cord with { Lengths = Noisy(cord.Lengths) })],
                Scatter = 0.3,
                Tailplane = lengths with
                {
                    Pins = [.. pins.Select(pin => pin with { Heights = Noisy(pin.Heights) })],
                    Cords = [.. lengths.Cords.Select(cord => cord with { Lengths = Noisy(cord.Lengths) })],
                },
            };
            var tail = Readings.Result(Oxbow, round).Last.Tail!;
            incidence += Holds(PoseUnknown.Incidence);
            roll += Holds(PoseUnknown.Roll);
            yaw += Holds(PoseUnknown.Yaw);
            var off = tail.Decalage!.Error - (wing.Incidence - pose.Incidence);
            decalage += Math.Abs(off) <= tail.Decalage.HalfWidth ? 1 : 0;

            foreach (var seat in new[] { tail.Seat!, tail.Decalage.Seat })
            {
                Assert.Equal((0, 0), (seat.TakeOff.Least, seat.Shims.Least));
            }

            int Holds(PoseUnknown unknown) => Math.Abs(tail.Pose[unknown] - pose[unknown]) <= tail.Estimates[(int)unknown].HalfWidth ? 1 : 0;
        }

        Assert.All([incidence, roll, yaw, decalage], count => Assert.InRange(count, 0.93 * CaseCount, 0.97 * CaseCount));
    }

    [Fact]
    public void Readings_at_a_tailplane_that_is_not_there_are_an_error()
    {
        var flat = Description.Rigged(Description.PlateOnBox(0, 0));
        var finding = Assert.Single(Readings.Result(flat, Readings.Round(Readings.Pins(150, 150, 150, 150)) with { Tailplane = Read(Readings.Pins(150, 150, 150, 150)) }).Findings);

        Assert.Equal("the design has no tailplane to measure", finding.Text());
    }

    [Fact]
    public void Tailplane_read_in_inches_is_told() => Assert.StartsWith(
        "tailplane: all 4 readings are about 1/25.4 of what is drawn",
        Assert.Single(Readings.Result(Oxbow, Readings.Round([]) with { Tailplane = Read(Readings.Pins(5.87, 5.87, 5.87, 5.87)) }).Findings).Text(),
        StringComparison.Ordinal);

    private static TailResult? Tail(ImmutableArray<PinHeight> pins) => Readings.Result(Oxbow, Readings.Round([]) with { Tailplane = Read(pins) }).Last.Tail;

    private static TailReadings Read(ImmutableArray<PinHeight> pins) => new(pins, [], null, WingEdge.Front, Build.Nowhere);

    private static TailReadings Lengths(RiggedAirframe airframe, WingPose wing, double yaw, CordStart? from) =>
        Lengths(airframe, wing, new WingPose(0, 0, 0, 0, yaw, 0), from);

    private static TailReadings Lengths(RiggedAirframe airframe, WingPose wing, WingPose pose, CordStart? from)
    {
        var shape = TailplaneShape.Of(airframe.Description.Tailplane)!;
        double Length(Hand hand)
        {
            var end = pose.Moved(shape.InPlace(Point3.Origin), BenchMarks.On(hand, ArrangedWing.Of(shape).Tip.Leading), hand);
            var start = from is { } pin
                ? new Point3(pin.Station, 0, pin.Height)
                : wing.Moved(airframe.Wing.InPlace(Point3.Origin), BenchMarks.On(hand, ArrangedWing.Of(airframe.Wing).Tip.Leading), hand);
            return start.DistanceTo(end);
        }

        return new([], [Readings.Tip(Hand.Port, Length(Hand.Port)), Readings.Tip(Hand.Starboard, Length(Hand.Starboard))], from, WingEdge.Front, Build.Nowhere);
    }

    private static SeatCorners Rounded(SeatCorners corners) => corners.Map(it => Math.Round(it, 9));

    private sealed class Near : IEqualityComparer<SeatCorners>
    {
        public bool Equals(SeatCorners a, SeatCorners b) => Math.Abs(a.PortFront - b.PortFront) < 1e-6 && Math.Abs(a.PortRear - b.PortRear) < 1e-6
            && Math.Abs(a.StarboardFront - b.StarboardFront) < 1e-6 && Math.Abs(a.StarboardRear - b.StarboardRear) < 1e-6;

        public int GetHashCode(SeatCorners corners) => 0;
    }
}
