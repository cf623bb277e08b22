using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Sections;
using PlanForge.Parts.Bench;
using PlanForge.Parts.Rigging;
using PlanForge.Parts.Shapes;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.Rigging;

public class RiggingTests
{
    [Theory]
    [InlineData(1600, 300, 200, 253.3333, 373.3333, 400_000)] // shared/check-values.md section 8
    [InlineData(1200, 200, 100, 155.5556, 266.6667, 180_000)]
    [InlineData(1000, 150, 150, 150, 250, 150_000)]
    [InlineData(1000, 150, 0, 100, 166.6667, 75_000)]
    public void Mean_chord_its_place_and_the_area_of_a_trapezium_are_those_of_the_handbook(
        double span, double root, double tip, double mean, double across, double area)
    {
        const double sweep = 60;
        var plan = WingPlan.Of(Trapezium(span, root, tip, sweep, incidence: 0));
        Assert.Equal(mean, plan.MeanChord, 4);
        Assert.Equal(area, plan.Area, 6);
        Assert.Equal(across, plan.MeanLeadingEdge.Y, 4);

        // The leading edge is straight: the mean chord's lies on it, y tan of the sweep (same section). Aspect ratio by its definition.
        Assert.Equal(plan.MeanLeadingEdge.Y * sweep / (span / 2), plan.MeanLeadingEdge.X, 9);
        Assert.Equal(span * span / area, plan.AspectRatio, 9);
    }

    [Fact]
    public void Cutting_a_panel_in_two_changes_nothing_of_the_plan()
    {
        var whole = WingPlan.Of(Trapezium(1600, 300, 200, 42, incidence: 0));
        var cut = WingPlan.Of(Wing(
            [new(300, 0, new(new PlateSection(), 262.5, Nowhere), 15.75, 0, Nowhere), new(500, 0, new(new PlateSection(), 200, Nowhere), 26.25, 0, Nowhere)],
            new PlateSection(),
            300,
            0,
            0,
            0));
        Assert.Equal(whole.Area, cut.Area, 6);
        Assert.Equal(whole.MeanChord, cut.MeanChord, 9);
        Assert.Equal(whole.MeanLeadingEdge.Y, cut.MeanLeadingEdge.Y, 9);
        Assert.Equal(whole.MeanLeadingEdge.X, cut.MeanLeadingEdge.X, 9);
    }

    [Fact]
    public void Tail_figures_are_those_of_the_worked_example()
    {
        // shared/check-values.md section 8, worked example (Etkin and Reid's form): S 0.40 m², c 0.25, St 0.08, lt 0.75: V = 0.600.
        // The wing is 1.6 m x 0.25 m at station 100, the tailplane 0.4 m x 0.2 m with its quarter chord 750 behind the wing's.
        var wing = WingDescription([new(800, 0, new(new PlateSection(), 250, Nowhere), 0, 0, Nowhere)], new PlateSection(), 250, 0, 100, 60);
        var plate = new SectionStation(new PlateSection(), 200, Nowhere);
        var description = Description.Airframe(wing, [Box(0, 45, 90, -40), Box(1000, 20, 70, 0)]) with
        {
            Tailplane = new(new(100 + 62.5 + 750 - 50, 60), new(0, IncidenceReference.Chord, Nowhere), 400, plate, plate, 0, 20, Nowhere),
        };
        var figures = RiggingFigures.Of(Description.Rigged(description)).ToDictionary(figure => figure.Key, figure => figure.Value);
        Assert.Equal(750, figures["tailplane.moment_distance"], 9);
        Assert.Equal(0.6, figures["tailplane.volume_ratio"], 9);
        Assert.Equal(6.4, figures["wing.aspect_ratio"], 9);
        Assert.Equal(2, figures["tailplane.aspect_ratio"], 9);

        // From the nose to the tailplane's trailing edge at 862.5 + 200, beyond the body's end.
        Assert.Equal(1062.5, figures["length"], 9);
    }

    [Fact]
    public void A_rise_of_a_thirty_second_of_an_inch_shows_the_front_pin_that_much_higher()
    {
        // Common practice, no source: 1/32 in of rise over the chord; 1/32 in is 0.79375 mm exactly (25.4/32).
        const double chord = 200, rise = 25.4 / 32;
        var incidence = Math.Asin(rise / chord) * 180 / Math.PI;
        var description = Description.PlateOnBox(4, incidence);
        var pins = PinPoints.Of(Description.Rigged(description with { Bench = description.Bench with { PinsOutboardOfSide = 11 } }));
        Assert.Equal(0.79375, pins.Rise, 9);
    }

    [Fact]
    public void Pins_stand_eleven_millimetres_outside_the_body_sides()
    {
        // Common practice, no source: pins 11 mm outside the sides.
        var description = Description.PlateOnBox(4, 2);
        var pins = PinPoints.Of(Description.Rigged(description with { Bench = description.Bench with { PinsOutboardOfSide = 11 } }));
        Assert.Equal(45 + 11, pins.Across, 9);
        Assert.Equal(56, pins.Front.Y, 9);
        Assert.Equal(56, pins.Rear.Y, 9);

        // The lowest body point, 40 below the datum, is 50 above the board: the board is 90 below the datum.
        Assert.Equal(pins.Front.Z + 90, pins.FrontAboveBoard, 9);

        // Leading edge at 56 out: up by 56 tan of the dihedral, then pitched about the root leading edge.
        Assert.Equal(60 + (56 * Math.Tan(Degrees(4)) * Math.Cos(Degrees(2))), pins.Front.Z, 9);
    }

    [Fact]
    public void An_underside_incidence_is_measured_on_the_flat()
    {
        // A wedge whose underside falls from the nose at a known angle, through the section's own underside line.
        var section = NacaSection.TryCreate("4412", TrailingEdge.Open, out _)!;
        var underside = section.Underside!.Value;
        var chord = ChordIncidence.Of(new(Degrees(2), IncidenceReference.Underside, Nowhere), section)!.Value;
        Assert.Equal(Degrees(2), chord + underside.Angle, 12);
    }

    [Fact]
    public void A_convex_underside_cannot_carry_an_incidence()
    {
        var section = NacaSection.TryCreate("0012", TrailingEdge.Open, out _)!;
        var description = Description.PlateOnBox(0, 0);
        description = description with
        {
            Wing = description.Wing with
            {
                Root = new(section, 200, Nowhere),
                Incidence = new(0.02, IncidenceReference.Underside, Nowhere),
            },
        };
        var finding = Assert.Single(PartList.Of(description).Findings);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.StartsWith("the underside of NACA 0012 is convex", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60, 700, "does not meet the body: at station 841.4 mm")]
    [InlineData(160, 100, "but the body there lies between heights -40 mm and 90 mm")]
    public void A_wing_that_misses_the_body_says_where_it_is(double height, double station, string words)
    {
        var description = Description.PlateOnBox(0, 0);
        var list = PartList.Of(description with { Wing = description.Wing with { LeadingEdge = new(station, height) } });
        Assert.Empty(list.Parts);
        Assert.Contains(words, Assert.Single(list.Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wing_shorter_than_the_body_is_wide_says_so()
    {
        var description = Description.PlateOnBox(0, 0);
        var panel = description.Wing.Panels[0] with { Length = 30 };
        var finding = Assert.Single(PartList.Of(description with { Wing = description.Wing with { Panels = [panel] } }).Findings);
        Assert.Contains("does not reach the body's sides: the half wing is 30 mm long", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_saddle_that_leaves_the_bodys_height_is_cut_short_with_a_warning()
    {
        var description = Description.PlateOnBox(0, 4);

        // The plate rises to 60 at its front end; a body 55 high takes it only from where it has come down to that.
        var stations = description.Fuselage.Stations.Select(station => station with { Upper = 55 });
        var list = PartList.Of(description with { Fuselage = description.Fuselage with { Stations = [.. stations] } });
        var finding = Assert.Single(list.Findings);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.StartsWith("the saddle begins only at station 171.5 mm", finding.Message, StringComparison.Ordinal);
        Assert.Equal(100 + (5 / Math.Tan(Degrees(4))), list.Parts.Single(part => part.Id == "saddle-port").Value("saddle.port.from"), 6);
    }

    private static WingShape Trapezium(double span, double root, double tip, double sweep, double incidence) => Wing(
        [new(span / 2, 0, new(new PlateSection(), tip, Nowhere), sweep, 0, Nowhere)], new PlateSection(), root, incidence, 0, 0);
}
