using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Building;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Drafting.Tests.Sheets;

public class AsBuiltNoteTests
{
    private static readonly AirframeDescription Design = DemoDesigns.Read("oxbow-1420.yaml");

    private static readonly Measurement Former = Measured(new FormerStation("F3"), 205, 206.2);

    [Fact]
    public void Sheets_of_a_design_that_nothing_is_measured_of_say_nothing() => Assert.Equal(Design.Notes, PlanOptions.Of(Design, "").Notes);

    [Fact]
    public void All_sheets_say_which_wood_they_follow() => Assert.Equal(
        ["As built: former F3, station of its front face 206.2 mm (designed 205); fuselage at station 205 mm, breadth 94 mm (designed 92).", .. Design.Notes],
        Notes(Former, Measured(new BodyExtent(205, BodySize.Breadth), 92, 94)));

    [Fact]
    public void What_measures_as_designed_needs_no_word() => Assert.Equal(Design.Notes, Notes(Measured(new FormerStation("F3"), 205, 205)));

    [Fact]
    public void A_long_list_is_cut_short()
    {
        var note = Notes([.. Design.Formers.Select(former => Measured(new FormerThickness(former.Name), former.Thickness, former.Thickness + 0.1))])[0];
        Assert.EndsWith("former F6, thickness 3.1 mm (designed 3); and 2 more, in the report.", note, StringComparison.Ordinal);
    }

    private static ImmutableArray<string> Notes(params ImmutableArray<Measurement> measured) =>
        PlanOptions.Of(AsBuiltDescription.Apply(Design, measured), "").Notes;

    private static Measurement Measured(MeasuredThing thing, double designed, double built) =>
        new(thing, designed, built, SourcePosition.WholeFile("test"));
}
