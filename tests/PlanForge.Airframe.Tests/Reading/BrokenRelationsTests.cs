using static PlanForge.Airframe.Tests.Reading.BrokenDescription;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Values that are sound by themselves and not together, and what is warned of.</summary>
public class BrokenRelationsTests
{
    private const string LastStation = "    - {station: 600, half_breadth: 40, upper: 40, lower: -40}";

    public static TheoryData<BrokenDescription> Errors => Table(
        Edit("Stations the wrong way round", "{station: 600,", "{station: -600,", "?"),
        Edit("Two stations in one place", "{station: 600,", "{station: 0,", "?"),
        Edit("A bottom over its top", LastStation, "    - {station: 600, half_breadth: 40, upper: 40, lower: 41}", "?"),
        Edit("A bottom at its top", LastStation, "    - {station: 600, half_breadth: 40, upper: 40, lower: 40}", "?"),
        Edit("Corners wider than the body", LastStation, "    - {station: 600, half_breadth: {upper: 40, lower: 20}, upper: 40, lower: -40, shape: {rounded: 21}}", "?"),
        Edit("Corners higher than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 10, lower: -10, shape: {rounded: 11}}", "?"),
        Edit("Upper corners wider than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 60, lower: -60, shape: {upper: 41, lower: 10}}", "?"),
        Edit("Lower corners wider than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 60, lower: -60, shape: {upper: 10, lower: 41}}", "?"),
        Edit("Corners together higher than the body", LastStation, "    - {station: 600, half_breadth: 40, upper: 20, lower: -20, shape: {upper: 30, lower: 30}}", "?"),
        Add("Corners of an opening larger than half of it", "formers:\n  - {name: F1, station: 10, thickness: 3, openings: [{width: 30, depth: 20, height: 0, corner_radius: 10.5}]}", "?"),
        Edit("A longeron on the side without height", "fuselage:", "fuselage:\n  longerons: [{name: L, place: side, size: 6}]", "?"),
        Edit("A keel with a height", "fuselage:", "fuselage:\n  longerons: [{name: L, place: keel, height: 3, size: 6}]", "?"),
        Add("Two formers of one name", "formers:\n  - {name: F1, station: 10, thickness: 3}\n  - {name: F1, station: 20, thickness: 3}", "?"),
        Add("Two formers whose files would have one name on some systems", "formers:\n  - {name: F1, station: 10, thickness: 3}\n  - {name: f1, station: 20, thickness: 3}", "?"),
        Add("Two sheets of stock of one name", "stock:\n  - {name: B3, material: balsa, thickness: 3, size: 100 x 1000}\n  - {name: B3, material: balsa, thickness: 3, size: 80 x 1000}", "?"),
        Edit("A rise over the chord itself", "wing:", "wing:\n  incidence: {rise: 201 mm, over: chord}", "?"),
        Edit("A rise of more than 45 degrees along the chord", "wing:", "wing:\n  incidence: {rise: 150 mm, over: chord}", "?"),
        Edit("A rise of more than 45 degrees along the datum line", "wing:", "wing:\n  incidence: {rise: -30 mm, over: 20 mm}", "?"),
        Add("A saddle that ends before it begins", "saddle: {from: 200, to: 150}", "?"),
        Add("A saddle that ends before the leading edge, where it begins", "saddle: {to: 90}", "?"),
        Add("A saddle that begins behind the trailing edge, where it ends", "saddle: {from: 300}", "?"),
        Add("Shims from high to low", "shims: {from: 1, to: -1}", "?"),
        Add("Over a hundred shims", "shims: {step: 0.01}", "?"),
        Edit("A camber asked of a section that has none", "section: naca 2412", "section: {naca: \"0012\", camber: 2 %}", "?"),
        new("Several faults in one run, in the order of the file", Sound
            .Replace("name: Sound", "name: a/b", StringComparison.Ordinal)
            .Replace("chord: 200", "chord: 0", StringComparison.Ordinal)
            .Replace("{station: 600,", "{station: -1,", StringComparison.Ordinal)
            .Replace("length: 500", "lenght: 500", StringComparison.Ordinal), "?", "?", "?", "?"));

    public static TheoryData<BrokenDescription> Warnings => Table(
        Edit("A wing at seven degrees", "wing:", "wing:\n  incidence: 7", "?"),
        Edit("A wing at seven degrees by its rise", "wing:", "wing:\n  incidence: {rise: 24.4 mm, over: 200 mm}", "?"),
        Add("A tailplane at minus seven degrees", "tailplane: {leading_edge: {station: 500, height: 0}, incidence: -7, span: 300, root: {section: naca 0009, chord: 80}}", "?"),
        Add("A former ahead of the nose", "formers:\n  - {name: F1, station: -10, thickness: 3}", "?"),
        Add("A former behind the tail", "formers:\n  - {name: F1, station: 601, thickness: 3}", "?"),
        Add("A former half out of the tail", "formers:\n  - {name: F1, station: 598, thickness: 3}", "?"),
        Add("A former half out of the nose", "formers:\n  - {name: F1, station: -1, thickness: 3}", "?"),
        Add("A rim of two millimetres", "formers:\n  - {name: F1, station: 10, thickness: 3, lightening: {rim: 2}}", "?"),
        Add("A saddle longer than the chord", "saddle: {from: 90, to: 310}", "?"),
        Add("A saddle that begins ahead of the wing", "saddle: {from: 90, to: 250}", "?"),
        Add("A saddle that ends behind the wing", "saddle: {from: 150, to: 310}", "?"),
        Add("A parameter that nothing uses", "parameters: {a: 3 mm, b: a * 2}", "?"),
        Add("Nothing at the limits", "formers:\n  - {name: F1, station: 0, thickness: 3, lightening: {rim: 3}}\n  - {name: F2, station: 597, thickness: 3}\nsaddle: {from: 100, to: 300}\ntailplane: {leading_edge: {station: 500, height: 0}, incidence: 6, span: 300, root: {section: naca 0009, chord: 80}}"),
        Add("No warning of what an error may have caused", "parameters: {a: 3 mm}\ncolour: a", "?"));

    [Theory]
    [MemberData(nameof(Errors))]
    public void Values_that_do_not_go_together_are_refused(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());

    [Theory]
    [MemberData(nameof(Warnings))]
    public void Unusual_values_are_warned_of(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());
}
