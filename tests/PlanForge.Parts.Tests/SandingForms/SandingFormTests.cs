using PlanForge.Geometry;
using static PlanForge.Parts.Tests.Build;

namespace PlanForge.Parts.Tests.SandingForms;

public class SandingFormTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 0.6)]
    [InlineData(1, 0)]
    [InlineData(1, 0.4)]
    public void A_form_for_a_circular_underside_is_a_circle_wider_by_the_tape_and_narrower_by_the_abrasive(double tape, double abrasive)
    {
        // shared/check-values.md 12.5: chord c, sagitta h: R = (c²/4 + h²)/(2h). A circle moved square to itself is a circle.
        const double chord = 200, sagitta = 12;
        var radius = (chord * chord / 4 + (sagitta * sagitta)) / (2 * sagitta);
        Assert.Equal(422.666667, radius, 6);
        var section = new ArcSection(sagitta / chord);
        var description = Description.PlateOnBox(0, 0);
        description = description with
        {
            Wing = description.Wing with
            {
                Root = new(section, chord, Nowhere),
                Panels = [description.Wing.Panels[0] with { Tip = new(section, chord, Nowhere) }],
            },
            Saddle = description.Saddle with { SeatTape = tape, Abrasive = abrasive },
        };
        var form = Description.Single(description, "sanding-form");
        var outline = Assert.Single(form.Lines(LineUse.Cut));

        // The underside's circle has its middle above mid chord; the form's profile is its lower arc.
        var centre = new Point2(chord / 2, radius - sagitta);
        var profile = outline.Flattened(0.001).Where(point => point.Y < -1 && point.X is > 5 and < 195).ToArray();
        Assert.True(profile.Length > 20);
        Assert.All(profile, point => Assert.Equal(radius + tape - abrasive, point.DistanceTo(centre), tolerance: 0.006));
        Assert.Equal(0, form.Value("sanding_form.change"), 9);
    }
}
