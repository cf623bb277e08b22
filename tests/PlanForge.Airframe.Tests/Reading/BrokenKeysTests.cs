using static PlanForge.Airframe.Tests.Reading.BrokenDescription;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Keys that are unknown, missing or of the wrong kind.</summary>
public class BrokenKeysTests
{
    public static TheoryData<BrokenDescription> Texts => Table(
        Edit("A misspelled key is not missing too", "chord: 200", "cord: 200", "?"),
        Edit("Two letters exchanged", "units: mm", "untis: mm", "?"),
        Edit("Another case", "name: Sound", "Name: Sound", "?"),
        Add("A key nothing like any other", "colour: red", "?"),
        Edit("A key of another mapping", "{length: 500}", "{length: 500, chord: 150}", "?"),
        Add("A key of the panel's tip in the tailplane's", "tailplane: {leading_edge: {station: 500, height: 0}, span: 300, root: {section: naca 0009, chord: 80}, tip: {twist: 1}}", "?"),
        new("Everything missing, all said at once", "planforge: 1\n", "?", "?", "?", "?"),
        Edit("A required key missing in a mapping", "{section: naca 2412, chord: 200}", "{chord: 200}", "?"),
        Edit("A required key missing in an item", "[{length: 500}]", "[{length: 500}, {dihedral: 3}]", "?"),
        Edit("Two faults in one place", "{section: naca 2412, chord: 200}", "{section: naca 2412, colour: red}", "?", "?"),
        Edit("A value where a mapping belongs", "root: {section: naca 2412, chord: 200}", "root: naca 2412", "?"),
        Edit("A list where a mapping belongs", "root: {section: naca 2412, chord: 200}", "root: [naca 2412, 200]", "?"),
        Edit("A mapping where a list belongs", "[{length: 500}]", "{length: 500}", "?"),
        Edit("A value where a list belongs", "[{length: 500}]", "500", "?"),
        Edit("A list where a value belongs", "chord: 200", "chord: [200]", "?"),
        Edit("An item of the wrong kind", "[{length: 500}]", "[500]", "?"),
        Edit("A key without a value", "chord: 200", "chord:", "?"),
        Edit("An empty text", "name: Sound", "name: \"\"", "?"),
        Edit("No panel", "[{length: 500}]", "[]", "?"),
        Edit("One fuselage station", "    - {station: 600, half_breadth: 40, upper: 40, lower: -40}\n", "", "?"),
        Edit("Another version of the format", "planforge: 1", "planforge: 2", "?"),
        Edit("A misspelled word", "wing:", "wing:\n  placement: hihg", "?"),
        Edit("A word in another case", "wing:", "wing:\n  placement: High", "?"),
        Edit("A word nothing like the others", "wing:", "wing:\n  placement: shoulder", "?"),
        Edit("A unit that is none of the three", "units: mm", "units: ft", "?"),
        Add("A paper in another case", "sheets: {paper: a3}", "?"),
        Add("A thread that is in no table", "retention: {bolts: {thread: M7, ahead_of_trailing_edge: 20, plate: {thickness: 4}}}", "?"),
        Edit("An incidence that says nothing", "wing:", "wing:\n  incidence: {reference: chord}", "?"),
        Edit("An incidence by angle and by rise", "wing:", "wing:\n  incidence: {angle: 2, rise: 5, over: chord}", "?", "?"),
        Edit("An incidence with a misspelled key", "wing:", "wing:\n  incidence: {angel: 2}", "?"),
        Edit("A rise over nothing", "wing:", "wing:\n  incidence: {rise: 5}", "?"),
        Edit("A list as an incidence", "wing:", "wing:\n  incidence: [2]", "?"),
        Add("An opening round and square", "formers:\n  - {name: F1, station: 10, thickness: 3, openings: [{diameter: 20, height: 0, corner_radius: 3}]}", "?"),
        Add("An opening without size", "formers:\n  - {name: F1, station: 10, thickness: 3, openings: [{height: 0}]}", "?"),
        Add("An opening that is a number", "formers:\n  - {name: F1, station: 10, thickness: 3, openings: [20]}", "?"),
        Edit("A shape that is no word of shapes", "upper: 40, lower: -40}\n    - {station: 600", "upper: 40, lower: -40, shape: round}\n    - {station: 600", "?"),
        Edit("A blend of one section", "section: naca 2412", "section: {blend: [naca 2412], at: 0.5}", "?"),
        Add("A note that is a mapping", "notes: [{a: 1}]", "?"),
        Edit("A decimal comma within braces", "chord: 200}", "chord: 200,5 mm}", "?"),
        Edit("A function with a comma within braces", "chord: 200}", "chord: max(200 mm, 210 mm)}", "?"));

    [Theory]
    [MemberData(nameof(Texts))]
    public void Keys_are_refused_with_their_reason(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());
}
