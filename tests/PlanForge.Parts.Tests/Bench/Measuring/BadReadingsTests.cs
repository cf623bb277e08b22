using System.Collections.Immutable;
using PlanForge.Airframe.Measuring;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Parts.Tests.Bench.Measuring;

/// <summary>Readings that cannot be right are named, in the words a builder reads.</summary>
public sealed class BadReadingsTests
{
    // Plate of chord 200 at 2 degrees: pins 11 mm outside the body sides (common practice, no source), front ones 60 + 90 above the
    // board at the leading edge, rear ones 200 sin 2° = 6.98 lower.
    private static readonly RiggedAirframe Plate = Description.Rigged(Description.PlateOnBox(0, 2) is var plate
        ? plate with { Bench = plate.Bench with { PinsOutboardOfSide = 11 } }
        : null!);

    [Fact]
    public void Front_and_rear_exchanged_on_one_side() => Assert.Equal(
        "the front and the rear pin on the left (port) are likely swapped: exchanged, the heights agree with the drawing to 0.01 mm instead of 4.94 mm",
        Single(Readings.Round(Readings.Pins(143, 150, 150, 143))));

    [Fact]
    public void Front_and_rear_exchanged_on_both_sides() => Assert.Equal(
        "the front and rear pins are likely swapped: exchanged, the heights agree with the drawing to 0.01 mm instead of 6.99 mm",
        Single(Readings.Round(Readings.Pins(143, 143, 150, 150))));

    // Rolled by 4 mm in 112: the tips, 600 from the centre line, stand 42.8 mm apart.
    [Fact]
    public void Left_and_right_exchanged_against_the_tips()
    {
        var finding = Single(Readings.Round(Readings.Pins(148, 152, 141, 145)) with
        {
            Tips = [Readings.Tip(Hand.Port, 150 + 21.4), Readings.Tip(Hand.Starboard, 150 - 21.4)],
        });

        Assert.StartsWith("the left (port) and the right (starboard) tip, or left (port) and right (starboard) of all pins are likely swapped: ", finding, StringComparison.Ordinal);
    }

    [Fact]
    public void Left_and_right_exchanged_at_one_edge() => Assert.Equal(
        "the left (port) and the right (starboard) front pin, or the left (port) and the right (starboard) rear pin are likely swapped: "
        + "exchanged, the heights agree with each other to 0 mm instead of 2 mm",
        Single(Readings.Round(Readings.Pins(152, 148, 141, 145))));

    [Fact]
    public void Everything_read_in_inches() => Assert.Equal(
        "all 4 readings are about 1/25.4 of what is drawn: were inches read, and taken for millimetres?",
        Single(Readings.Round(Readings.Pins(150 / 25.4, 150 / 25.4, 143 / 25.4, 143 / 25.4))));

    [Fact]
    public void One_pin_read_in_centimetres() => Assert.Equal(
        "rear pin, right (starboard), reads 14.3 mm, about a tenth of the 143 mm that is drawn: were centimetres read, and taken for millimetres?",
        Single(Readings.Round(Readings.Pins(150, 150, 143, 14.3))));

    [Theory]
    [InlineData(10, "ten times what is drawn: were millimetres read, and taken for centimetres?")]
    [InlineData(25.4, "25.4 times what is drawn: were millimetres read, and taken for inches?")]
    [InlineData(0.1, "a tenth of what is drawn: were centimetres read, and taken for millimetres?")]
    public void Everything_in_another_unit(double factor, string expected) => Assert.EndsWith(
        expected, Single(Readings.Round(Readings.Pins(150 * factor, 150 * factor, 143 * factor, 143 * factor))), StringComparison.Ordinal);

    [Fact]
    public void Reading_that_contradicts_its_repeats_is_named()
    {
        var pins = Readings.Pins(150, 150, 143, 143).Select(pin =>
            Readings.Pin(pin.Edge, pin.Hand, null, pin.Heights[0].Value, pin.Heights[0].Value + 0.25, pin.Heights[0].Value - 0.25)).ToArray();
        pins[1] = Readings.Pin(WingEdge.Front, Hand.Starboard, null, 150, 150.25, 153);

        Assert.Equal(
            "front pin, right (starboard), reads 153 mm, 1.92 mm more than the other readings allow (over 4 standard deviations): measure it again, and what it was compared with",
            Single(Readings.Round([.. pins])));
    }

    [Fact]
    public void Honest_repeats_contradict_nothing()
    {
        var random = new Random(11);
        var wrong = 0;
        for (var i = 0; i < 2000; i++)
        {
            ImmutableArray<double> Three(double height) => [.. Enumerable.Range(0, 3).Select(_ => height + random.NextDouble() - 0.5)];
            var result = Readings.Result(Plate, Readings.Round(
            [
                Readings.Pin(WingEdge.Front, Hand.Port, null, Three(150)),
                Readings.Pin(WingEdge.Front, Hand.Starboard, null, Three(150)),
                Readings.Pin(WingEdge.Rear, Hand.Port, null, Three(143)),
                Readings.Pin(WingEdge.Rear, Hand.Starboard, null, Three(143)),
            ]));
            wrong += result.Findings.Length;
        }

        // Four standard deviations are passed once in 16 000 readings; these are 24 000.
        Assert.InRange(wrong, 0, 5);
    }

    [Fact]
    public void Too_few_readings_say_what_is_lacking()
    {
        var result = Readings.Result(Plate, Readings.Round(Readings.Pins(150, double.NaN, double.NaN, double.NaN)));

        Assert.StartsWith("too few readings: incidence needs the height of a front and of a rear pin, ", Assert.Single(result.Findings).Message, StringComparison.Ordinal);
        Assert.All(result.Last.Estimates, estimate => Assert.False(estimate.IsSettled));
        Assert.Null(result.Last.Correction);
    }

    // Which readings settle what: by hand, from what each pair of heights can show.
    [Theory]
    [InlineData(1, 1, 1, 1, "Incidence Roll Warp")]
    [InlineData(1, 1, 1, 0, "Incidence Roll")]
    [InlineData(1, 0, 1, 0, "Incidence")]
    [InlineData(1, 1, 0, 0, "Roll")]
    [InlineData(1, 0, 0, 1, "")]
    public void Readings_settle_what_they_can_and_no_more(int frontPort, int frontStarboard, int rearPort, int rearStarboard, string settled)
    {
        double Height(int isThere, double height) => isThere == 1 ? height : double.NaN;
        var round = Readings.Result(Plate, Readings.Round(
            Readings.Pins(Height(frontPort, 150), Height(frontStarboard, 150), Height(rearPort, 143), Height(rearStarboard, 143)))).Last;

        Assert.Equal(settled, string.Join(' ', round.Estimates.Where(estimate => estimate.IsSettled).Select(estimate => estimate.Unknown)));
        Assert.All(round.Estimates, estimate => Assert.Equal(estimate.IsSettled, estimate.Lack.Length == 0));
    }

    [Fact]
    public void One_cord_says_nothing_of_square()
    {
        var round = Readings.Result(Plate, Readings.Round([]) with { Cord = new(900, 0), Cords = [Readings.Tip(Hand.Port, 1000)] }).Last;

        Assert.False(round[PoseUnknown.Yaw].IsSettled);
        Assert.Null(round.Square);
    }

    [Fact]
    public void Bad_readings_of_earlier_rounds_are_warnings()
    {
        var result = Readings.Result(
            Plate, Readings.Round(Readings.Pins(143, 150, 150, 143)), Readings.Round(Readings.Pins(150, 150, 143, 143)));

        Assert.Equal(Airframe.Diagnostics.Severity.Warning, Assert.Single(result.Findings).Severity);
    }

    private static string Single(MeasuringRound round) => Assert.Single(Readings.Result(Plate, round).Findings).Message;
}
