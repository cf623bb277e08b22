using PlanForge.Airframe;
using PlanForge.Airframe.Sections;
using PlanForge.Parts.Bench;
using PlanForge.Parts.Bench.Setup;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Bench.Setup;

public class SetupTargetTests
{
    public static TheoryData<string> All => Tests.Designs.All;

    // Closed form: a panel of 600 at 5 degrees of dihedral from a root at (100, 60); the board is 90 below the datum line.
    [Fact]
    public void Tips_stand_the_panel_times_the_sine_of_the_dihedral_higher()
    {
        var targets = SetupTargets.Of(Description.Rigged(Description.PlateOnBox(5, 0)));
        Assert.Equal(90 + 60 + (600 * Math.Sin(Degrees(5))), targets.TipAboveBoard, 9);
    }

    // Pythagoras in space: from the top of the tail (500, 0, 90) to the tip's leading edge.
    [Fact]
    public void Cords_run_through_the_air_from_the_top_of_the_tail_to_the_tips()
    {
        var description = Description.PlateOnBox(5, 0);
        var (across, height) = (600 * Math.Cos(Degrees(5)), 60 + (600 * Math.Sin(Degrees(5))));
        Assert.Equal(Math.Sqrt((400 * 400) + (across * across) + ((height - 90) * (height - 90))), Cord(description), 9);
        Assert.Equal(
            Math.Sqrt((350 * 350) + (across * across) + ((height - 90) * (height - 90))),
            Cord(description with { Bench = description.Bench with { CordStation = 450 } }),
            9);
    }

    // Closed form: pins 55 out on a level plate of chord 200.
    [Fact]
    public void Pins_of_a_level_plate_are_a_rectangle_with_equal_diagonals()
    {
        var targets = Targets(Description.PlateOnBox(0, 0));
        Assert.Equal(110, targets["setup.across.front"], 9);
        Assert.Equal(110, targets["setup.across.rear"], 9);
        Assert.Equal(200, targets["setup.along"], 9);
        Assert.Equal(Math.Sqrt((110 * 110) + (200 * 200)), targets["setup.diagonal"], 9);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Heights_are_those_of_the_pins_and_both_hands_are_alike(string name)
    {
        var airframe = Tests.Designs.Rigged(name);
        var pins = PinPoints.Of(airframe);
        var targets = Targets(airframe.Description);
        Assert.Equal((pins.FrontAboveBoard, pins.FrontAboveBoard), (targets["setup.p1"], targets["setup.p2"]));
        Assert.Equal((pins.RearAboveBoard, pins.RearAboveBoard), (targets["setup.p3"], targets["setup.p4"]));
        Assert.Equal((pins.Rise, pins.Rise), (targets["setup.rise.port"], targets["setup.rise.starboard"]));
        Assert.Equal(pins.Rise, targets["setup.p1"] - targets["setup.p3"], 9);
        Assert.Equal(targets["setup.tip.port"], targets["setup.tip.starboard"]);
        Assert.Equal(targets["setup.cord.port"], targets["setup.cord.starboard"]);
    }

    // Closed form: an untapered tailplane at two degrees rises by chord times the sine over chord times the cosine.
    [Fact]
    public void Incidence_of_the_tailplane_is_the_rise_of_its_pins_over_their_distance()
    {
        var description = Description.PlateOnBox(0, 0);
        var section = new SectionStation(NacaSection.TryCreate("0009", TrailingEdge.Open, out _)!, 100, Nowhere);
        description = description with
        {
            Tailplane = new(new(380, 70), new(Degrees(2), IncidenceReference.Chord, Nowhere), 400, section, section, 0, 20, Nowhere),
        };
        var tail = TailPins.Of(Description.Rigged(description))!.Value;
        Assert.Equal(100 * Math.Sin(Degrees(2)), tail.Rise, 9);
        Assert.Equal(100 * Math.Cos(Degrees(2)), tail.Over, 9);
        Assert.Equal(45 + 10, tail.Front.Y, 9);
    }

    [Fact]
    public void The_sheet_has_room_for_three_readings_of_everything_and_says_it_is_not_to_scale()
    {
        var sheet = Description.Single(Description.PlateOnBox(3, 1), "bench-readings");
        var rows = sheet.Tables[0].Rows;
        Assert.Equal(SetupTargets.Of(Description.Rigged(Description.PlateOnBox(3, 1))).All().Length, rows.Length);
        Assert.Equal(3, sheet.Tables[0].BlankColumns);
        Assert.All(rows, row => Assert.Equal(["", "", ""], row[3..]));
        Assert.Equal("0.1", rows.Single(row => row[0].StartsWith("P1 over P3", StringComparison.Ordinal))[2].TrimStart('±'));
        Assert.Contains("not to scale", Description.Single(Description.PlateOnBox(3, 1), "bench-steps").Notes[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bench-from-tail", "P1", "p1")]
    [InlineData("bench-from-tail", "P4", "p4")]
    [InlineData("bench-from-tail", "datum line", "datum.front")]
    [InlineData("bench-from-port", "rise", "rise.port")]
    public void The_views_say_what_the_table_says(string view, string label, string key)
    {
        var description = Description.PlateOnBox(3, 1);
        var text = new Parts.Wording.MeasureText(description.DisplayUnit);
        Assert.Contains(Description.Single(description, view).Labels, it => it.Text == $"{label} {text.Fine(Targets(description)["setup." + key])}");
    }

    private static double Cord(AirframeDescription description) => SetupTargets.Of(Description.Rigged(description)).CordLength;

    private static Dictionary<string, double> Targets(AirframeDescription description) =>
        SetupTargets.Of(Description.Rigged(description)).All().ToDictionary(target => target.Key, target => target.Value);
}
