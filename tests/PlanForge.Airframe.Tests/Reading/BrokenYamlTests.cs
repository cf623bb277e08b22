using static PlanForge.Airframe.Tests.Reading.BrokenDescription;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Texts that are no YAML, or YAML that a description must not hold.</summary>
public class BrokenYamlTests
{
    public static TheoryData<BrokenDescription> Texts => Table(
        new("Nothing at all", "", "?"),
        new("A comment alone", "# later\n", "?"),
        new("A list instead of keys", "- planforge: 1\n", "?"),
        new("A sentence instead of keys", "An aeroplane\n", "?"),
        Edit("A square bracket left open at the end", "lower: -40}\n    - {station: 600, half_breadth: 40, upper: 40, lower: -40}", "lower: [-40", "?"),
        Edit("A square bracket left open before other keys", "[{length: 500}]", "[{length: 500}", "?"),
        Edit("A brace left open before other keys", "chord: 200}", "chord: 200", "?"),
        Edit("A bracket closed by a brace", "[{length: 500}]", "[{length: 500}}", "?"),
        Edit("A comma forgotten between keys", "{station: 100, height: 40}", "{station: 100 height: 40}", "?"),
        Edit("A comma forgotten at the end of a line", "{station: 100, height: 40}", "{station: 100\n    height: 40}", "?"),
        Edit("A tab that indents", "  root:", "\troot:", "?"),
        Edit("A tab that indents the first key", "  leading_edge:", "\tleading_edge:", "?"),
        Edit("A double quote left open", "name: Sound", "name: \"Sound", "?"),
        Edit("A single quote left open", "name: Sound", "name: 'Sound", "?"),
        Edit("An alias", "chord: 200", "chord: *width", "?"),
        Edit("An anchor", "chord: 200", "chord: &width 200", "?"),
        Edit("An anchor on a mapping keeps its values readable", "root: {section: naca 2412, chord: 200}", "root: &r {section: naca 2412, chord: 0}", "?", "?"),
        Edit("A tag", "chord: 200", "chord: !!float 200", "?"),
        Edit("A merge key", "root: {section", "root: {<<: {chord: 100}, section", "?"),
        Edit("A merge key may stand for a missing key", "root: {section: naca 2412, chord: 200}", "root: {<<: {chord: 100}, section: naca 2412}", "?"),
        Edit("The same key twice", "chord: 200}", "chord: 200, section: naca 0009}", "?"),
        Edit("The same key twice at the top", "units: mm", "units: mm\nname: Other", "?"),
        Add("A second document", "---\nplanforge: 1", "?"),
        Add("A list as a key", "? [a, b]\n: c", "?"),
        Add("No key before the colon", ": c", "?"),
        Edit("A colon in a value", "name: Sound", "name: Sound: the second", "?"),
        Edit("A value that begins with a reserved sign", "name: Sound", "name: @home", "?"),
        Edit("An unknown escape", "name: Sound", "name: \"So\\qund\"", "?"),
        Edit("An escape beyond Unicode", "name: Sound", "name: \"\\UFFFFFFFF\"", "?"),
        Edit("A NUL, at which the parser would stop reading", "units: mm", "units: mm\0", "?"),
        Edit("A line separator, which editors do not count", "name: Sound", "name: So\u2028und", "?"),
        Edit("A direction mark, which hides what is read", "name: Sound", "name: So\u202Eund", "?"),
        Edit("Half a character", "name: Sound", "name: So\uD83Dund", "?"),
        Edit("A line without a colon", "units: mm", "units", "?"),
        Edit("A key out of its column", "  panels", "   panels", "?"),
        Edit("A dash behind a key", "panels: [{length: 500}]", "panels: - {length: 500}", "?"),
        Edit("Brackets nested 33 deep", "name: Sound", "name: " + new string('[', 33) + new string(']', 33), "?"));

    [Theory]
    [MemberData(nameof(Texts))]
    public void Text_is_refused_with_its_reason(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());
}
