using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;

namespace PlanForge.Airframe.Tests.Measuring;

public sealed class MeasurementReaderTests
{
    private const string Whole =
        """
        design: oxbow-1420.yaml
        tolerance: {rise: 0.2 mm}
        rounds:
          - name: first fit
            pins:
              across: {port: 61, starboard: 2 1/2 in}
              front: {port: [168.25, 168.5], starboard: 167.9}
              rear: {port: 16.31 cm}
            tips: {to: trailing edge, port: 210, starboard: 209}
            cord: {from: {station: 1060, height: 12}, port: 812, starboard: [815, 815.5]}
            board_offset: 115 mm
            scatter: 0.1 mm
          - name: second
            pins: {rear: {starboard: 160}}
            board_offset: as drawn
            resolution: 1/64 in

        """;

    [Fact]
    public void Whole_file_is_read()
    {
        var read = MeasurementReader.Read("m.yaml", Whole, DisplayUnit.Millimetre);

        Assert.Empty(read.Findings);
        var measured = read.Measurements!;
        Assert.Equal(("oxbow-1420.yaml", new BenchTolerance(0.25, 0.2, 1)), (measured.Design, measured.Tolerance));
        var (first, second) = (measured.Rounds[0], measured.Rounds[1]);
        Assert.Equal("first fit", first.Name);
        Assert.Equal(
            ["Front Port 61: 168.25 168.5", "Front Starboard 63.5: 167.9", "Rear Port 61: 163.1"],
            first.Pins.Select(pin => FormattableString.Invariant($"{pin.Edge} {pin.Hand} {pin.Across}: ") + Lengths(pin.Heights)));
        Assert.Equal((WingEdge.Rear, "210", "209"), (first.TipEdge, Lengths(first.Tips[0].Lengths), Lengths(first.Tips[1].Lengths)));
        Assert.Equal((new CordStart(1060, 12), "812", "815 815.5"), (first.Cord!.Value, Lengths(first.Cords[0].Lengths), Lengths(first.Cords[1].Lengths)));
        Assert.Equal((new BoardOffset(BoardKnowledge.Measured, 115), 0.25, 0.1), (first.Board, first.Resolution, first.Scatter));
        Assert.Equal(new SourcePosition("m.yaml", 7, 30, 5), first.Pins[0].Heights[1].At);
        Assert.Equal((Hand.Starboard, null), (second.Pins.Single().Hand, second.Pins[0].Across));
        Assert.Equal((BoardKnowledge.AsDrawn, 25.4 / 64, null), (second.Board.Knowledge, second.Resolution, second.Scatter));
    }

    [Fact]
    public void Tailplane_and_thrust_line_are_read()
    {
        const string Text =
            """
            tolerance: {thrust: 0.5 deg}
            rounds:
              - name: a
                tailplane:
                  pins: {across: 40, front: {port: 149}, rear: {starboard: [148, 148.5]}}
                  cord: {from: {station: 100, height: 80}, to: trailing edge, port: 700, starboard: 701}
                thrust: {over: 200, down: [-7, -7.1], right: 5}
              - {name: b, tailplane: {cord: {port: 840}}}

            """;
        var read = MeasurementReader.Read("m.yaml", Text, DisplayUnit.Millimetre).Measurements!;
        var (tail, thrust) = (read.Rounds[0].Tailplane!, read.Rounds[0].Thrust!);

        Assert.Equal(0.5 * Math.PI / 180, read.Tolerance.Thrust, 1e-12);
        Assert.Equal(["Front Port 40: 149", "Rear Starboard 40: 148 148.5"],
            tail.Pins.Select(pin => FormattableString.Invariant($"{pin.Edge} {pin.Hand} {pin.Across}: ") + Lengths(pin.Heights)));
        Assert.Equal((new CordStart(100, 80), WingEdge.Rear, 2), (tail.From!.Value, tail.TipEdge, tail.Cords.Length));
        Assert.Equal((200, "-7 -7.1", "5"), (thrust.Over, Lengths(thrust.Down), Lengths(thrust.Right)));
        Assert.Equal((null, WingEdge.Front, null), (read.Rounds[1].Tailplane!.From, read.Rounds[1].Tailplane!.TipEdge, read.Rounds[1].Thrust));
    }

    [Fact]
    public void Description_and_measurements_given_for_each_other_are_told()
    {
        Assert.Equal(
            "a.yaml:1:1: error: this is a description of an airframe, not a file of measurements: the description comes first, what was measured second",
            Assert.Single(MeasurementReader.Read("a.yaml", Reading.BrokenDescription.Sound, DisplayUnit.Millimetre).Findings).ToString());
        Assert.Equal(
            "m.yaml:1:1: error: this is a file of measurements, not a description of an airframe: use `planforge bench DESIGN m.yaml`",
            Assert.Single(Airframe.Reading.AirframeReader.Read("m.yaml", Whole, _ => null).Diagnostics).ToString());
    }

    [Fact]
    public void Bare_numbers_take_the_design_s_unit_or_the_file_s_own()
    {
        const string Text = "rounds: [{name: a, pins: {front: {port: 6.5}}}]\n";

        Assert.Equal(165.1, Height(Text, DisplayUnit.Inch), 1e-9);
        Assert.Equal(65, Height("units: cm\n" + Text, DisplayUnit.Inch), 1e-9);
        Assert.Equal(BoardKnowledge.Unknown, MeasurementReader.Read("m.yaml", Text, DisplayUnit.Inch).Measurements!.Rounds[0].Board.Knowledge);
    }

    [Theory]
    [InlineData("pins: {frnt: {port: 1}}", "1:27: error: the pins has no key `frnt`; did you mean `front`?")]
    [InlineData("pins: {front: {prot: 1}}", "1:35: error: a pair of pins has no key `prot`; did you mean `port`?")]
    [InlineData("pins: {front: {port: -1}}", "1:41: error: each of `port` is -1 mm; it must be over 0 mm")]
    [InlineData("pins: {front: {port: 3 kg}}", "1:41: error: a length is needed here, and `3 kg` is a mass")]
    [InlineData("pins: {front: {port: []}}", "1:41: error: `port` needs at least one, not 0")]
    [InlineData("pins: {front: {port: 1}}, board_offset: unknwn", "1:60: error: `board_offset` cannot be `unknwn`; did you mean `unknown`?")]
    [InlineData("thrust: {over: 100}", "1:28: error: `thrust` needs `down` or `right`")]
    [InlineData("thrust: {down: 3}", "1:28: error: a reading of the thrust line needs the key `over`")]
    [InlineData("tailplane: {cord: {from: wing tip, port: 1}}", "1:45: error: `from` cannot be `wing tip`; did you mean `wing tips`?")]
    [InlineData("cord: {port: 812}", "1:26: error: the cord needs the key `from`")]
    [InlineData("board_offset: unknown", "1:10: error: nothing was measured in `a`: give heights of `pins` or `tips`, a `cord`, or readings of the `tailplane` or the `thrust` line")]
    public void What_is_wrong_is_shown_where_it_stands(string keys, string expected)
    {
        var read = MeasurementReader.Read("m.yaml", $"rounds: [{{name: a, {keys}}}]\n", DisplayUnit.Millimetre);

        Assert.Null(read.Measurements);
        Assert.StartsWith("m.yaml:" + expected, Assert.Single(read.Findings).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void File_without_rounds_says_so() => Assert.Contains(
        MeasurementReader.Read("m.yaml", "design: a.yaml\n", DisplayUnit.Millimetre).Findings,
        finding => finding.Message == "a file of measurements needs the key `rounds`");

    private static double Height(string text, DisplayUnit units) => MeasurementReader.Read("m.yaml", text, units).Measurements!.Rounds[0].Pins[0].Heights[0].Value;

    private static string Lengths(IEnumerable<MeasuredLength> lengths) =>
        string.Join(' ', lengths.Select(length => FormattableString.Invariant($"{Math.Round(length.Value, 9)}")));
}
