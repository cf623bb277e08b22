using static PlanForge.Airframe.Tests.Reading.BrokenDescription;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Values that cannot be read or lie outside their range.</summary>
public class BrokenValuesTests
{
    public static TheoryData<BrokenDescription> Texts => Table(
        Edit("A decimal comma", "length: 500", "\"length\": \"1,5 mm\"", "?"),
        Edit("Two decimal points", "chord: 200", "chord: 1.234.5", "?"),
        Edit("An unknown unit near a known one", "chord: 200", "chord: 200 mn", "?"),
        Edit("A unit in another case, which UnitsNet would read as megametres", "chord: 200", "chord: 200 Mm", "?"),
        Edit("A unit written out", "chord: 200", "chord: 8 inches", "?"),
        Edit("A word where a length belongs", "chord: 200", "chord: wide", "?"),
        Edit("An angle where a length belongs", "chord: 200", "chord: 3 deg", "?"),
        Edit("A length where an angle belongs", "wing:", "wing:\n  incidence: 3 mm", "?"),
        Edit("Minutes alone are feet", "wing:", "wing:\n  incidence: 30'", "?"),
        Edit("A mass where a length belongs", "chord: 200", "chord: 6 oz", "?"),
        Edit("A percentage where a length belongs", "chord: 200", "chord: 9 %", "?"),
        Edit("A chord of nothing", "chord: 200", "chord: 0", "?"),
        Edit("A negative chord", "chord: 200", "chord: -3 mm", "?"),
        Edit("A negative chord in a file in inches", "units: mm\nwing:\n  leading_edge: {station: 100, height: 40}\n  root: {section: naca 2412, chord: 200}", "units: in\nwing:\n  leading_edge: {station: 4, height: 1 1/2}\n  root: {section: naca 2412, chord: -25.4 mm}", "?"),
        Edit("A chord of a kilometre", "chord: 200", "chord: 1000 m", "?"),
        Edit("A number too large for a double", "chord: 200", "chord: 1e400", "?"),
        Edit("A fraction over nothing", "chord: 200", "chord: 1/0 in", "?"),
        Edit("A mixed number with too large a fraction", "chord: 200", "chord: 2 5/4 in", "?"),
        Edit("A fraction with blanks divides by a length", "chord: 200", "chord: 3 / 64 in", "?"),
        Edit("A decimal before a fraction", "chord: 200", "chord: 2.5 1/4 in", "?"),
        Edit("A mixed number with a hyphen subtracts", "chord: 200", "chord: 8-1/4 in", "?"),
        Edit("Twelve inches after feet", "chord: 200", "chord: 1' 12\"", "?"),
        Edit("Half a foot before inches", "chord: 200", "chord: 1.5' 3\"", "?"),
        Edit("Millimetres after feet", "chord: 200", "chord: 1' 20 mm", "?"),
        Edit("Sixty minutes", "wing:", "wing:\n  incidence: 1° 60'", "?"),
        Edit("Half a degree before minutes", "wing:", "wing:\n  incidence: 1.5° 30'", "?"),
        Edit("A number alone after degrees", "wing:", "wing:\n  incidence: 1° 30", "?"),
        Edit("Half a minute before seconds", "wing:", "wing:\n  incidence: 1° 30.5' 10\"", "?"),
        Edit("Inches after minutes and no seconds sign", "wing:", "wing:\n  incidence: 1° 30' 10 in", "?"),
        Edit("The masculine sign for the degree sign", "wing:", "wing:\n  incidence: 3º", "?"),
        Edit("A typographic minus", "wing:", "wing:\n  incidence: −3 deg", "?"),
        Edit("A no-break space", "chord: 200", "chord: 200\u00A0mm", "?"),
        Edit("A fraction in one sign", "chord: 200", "chord: 8 ½ in", "?"),
        Edit("An incidence of 50 degrees", "wing:", "wing:\n  incidence: 50", "?"),
        Edit("A panel standing upright", "{length: 500}", "{length: 500, dihedral: 90 deg}", "?"),
        Edit("A tip twisted by a radian", "{length: 500}", "{length: 500, tip: {twist: 1 rad}}", "?"),
        Add("A bevel of exactly 80 degrees", "formers:\n  - {name: F1, station: 10, thickness: 3, bevel: {edge: upper, face: front, angle: 80}}", "?"),
        Add("A bevel of nothing", "formers:\n  - {name: F1, station: 10, thickness: 3, bevel: {edge: upper, face: front, angle: 0}}", "?"),
        Edit("A blend beyond its end", "section: naca 2412", "section: {blend: [naca 2412, naca 0009], at: 110 %}", "?"),
        Edit("A section thicker than half its chord", "section: naca 2412", "section: {naca: \"2412\", thickness: 60 %}", "?"),
        Edit("A camber that is a length", "section: naca 2412", "section: {naca: \"2412\", camber: 3 mm}", "?"),
        Edit("Three digits", "naca 2412", "naca 241", "?"),
        Edit("Digits without a blank", "naca 2412", "naca2412", "?"),
        Edit("A section by a name of its own", "naca 2412", "flat plate", "?"),
        Edit("A section file that does not exist", "naca 2412", "otter.dat", "?"),
        Edit("A section file by an absolute path", "naca 2412", "/home/otter.dat", "?"),
        Edit("A section file with backslashes", "naca 2412", "sections\\otter.dat", "?"),
        Add("A shim step of nothing", "shims: {step: 0}", "?"),
        Add("A negative kerf", "cutter: {kerf: -0.1 mm}", "?"),
        Add("A stock size of one length", "stock: [{name: B3, material: balsa, thickness: 3, size: 100 mm}]", "?"),
        Add("A stock size with nothing behind the x", "stock: [{name: B3, material: balsa, thickness: 3, size: 100 x}]", "?"),
        Add("A stock size of nothing", "stock: [{name: B3, material: balsa, thickness: 3, size: 100 x 0 mm}]", "?"),
        Add("A bare number beside an expression in a size", "stock: [{name: B3, material: balsa, thickness: 3, size: 100 x 2 * 500 mm}]", "?"),
        Add("A bare number beside feet and inches in a size", "stock: [{name: B3, material: balsa, thickness: 3, size: 4 x 3' 6\"}]", "?"),
        Edit("A name that is a path", "name: Sound", "name: ../Sound", "?"),
        Edit("A name that begins with a dot", "name: Sound", "name: .Sound", "?"),
        Edit("A name of 61 letters", "name: Sound", "name: " + new string('a', 61), "?"),
        Edit("A line end in a text", "name: Sound", "name: Sound\nowner: \"One\\nTwo\"", "?"));

    [Theory]
    [MemberData(nameof(Texts))]
    public void Values_are_refused_with_their_reason(BrokenDescription description) => Assert.Equal(description.Expected, description.Findings());
}
