using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Sections;

namespace PlanForge.Airframe.Tests.Sections;

/// <summary>Faulty files, each with what must be said about it and where. The good file they are made from is invented.</summary>
public sealed class SectionFileFaultTests
{
    private const string Good = """
        Otter 9
        1.0 0.001
        0.7 0.04
        0.4 0.07
        0.2 0.065
        0.05 0.03
        0 0
        0.05 -0.02
        0.2 -0.03
        0.4 -0.025
        0.7 -0.01
        1.0 -0.001
        """;

    private const string GoodLists = """
        Otter 9
        4. 5.

        0 0
        0.1 0.05
        0.5 0.06
        1 0.001

        0 0
        0.05 -0.02
        0.2 -0.03
        0.6 -0.02
        1 -0.001
        """;

    [Fact]
    public void The_files_the_faults_are_made_in_are_good()
    {
        Assert.Empty(SectionFile.Read("otter.dat", Good).Diagnostics);
        Assert.Empty(SectionFile.Read("otter.dat", GoodLists).Diagnostics);
    }

    [Theory]
    [InlineData("0.4 0.07", "0.4 O.07", "otter.dat:4:5: error: 'O.07' is not a number")]
    [InlineData("0.4 0.07", "  0.4\t0.0.7", "otter.dat:4:7: error: '0.0.7' is not a number")]
    [InlineData("0.4 0.07", "0x4 0.07", "otter.dat:4:1: error: '0x4' is not a number")]
    [InlineData("0.4 0.07", "٤ 0.07", "otter.dat:4:1: error: '٤' is not a number")]
    [InlineData("0.4 0.07", "0.4 0.07 0.0", "otter.dat:4:10: error: 3 columns where x and y are expected")]
    [InlineData("0.4 0.07", "0,4 0,07", "otter.dat:4:5: error: 4 columns where x and y are expected; decimals are written with a point, not a comma")]
    [InlineData("0.4 0.07", "0.4", "otter.dat:4:1: error: one number where x and y are expected")]
    [InlineData("0.4 0.07", "END", "otter.dat:4:1: error: 'END' is not a point: x and y are expected")]
    [InlineData("0.4 0.07", "0.4 NaN", "otter.dat:4:5: error: 'NaN' is not a finite number")]
    [InlineData("0.4 0.07", "-inf 0.07", "otter.dat:4:1: error: '-inf' is not a finite number")]
    [InlineData("0.4 0.07", "0.4 Infinity", "otter.dat:4:5: error: 'Infinity' is not a finite number")]
    [InlineData("0.4 0.07", "0.4 ∞", "otter.dat:4:5: error: '∞' is not a finite number")]
    [InlineData("0.4 0.07", "0.4 1e999", "otter.dat:4:5: error: '1e999' is too large for a coordinate: at most 1000000 is read")]
    [InlineData("0.4 0.07", "0.71 0.07", "otter.dat:3:1: error: the upper surface turns back here: x is not aft of the point before it, (0.71, 0.07)")]
    [InlineData("0.4 -0.025", "0.2 -0.025", "otter.dat:10:1: error: the lower surface turns back here: x is not aft of the point before it, (0.2, -0.03)")]
    [InlineData("0.4 0.07", "0.4 -0.07", "otter.dat:4:1: error: the surfaces cross: here the lower one lies above the upper one")]
    [InlineData("0.7 -0.01", "0.7 0.05", "otter.dat:3:1: error: the surfaces cross: here the lower one lies above the upper one")]
    [InlineData("0.05 -0.02", "0 -0.005\n0 -0.01", "otter.dat:7:1: error: the nose is blunt: more than two points share the foremost x; leave out those between the outer two")]
    [InlineData("0.4 -0.025\n0.7 -0.01\n", "", "otter.dat:9:1: error: the lower surface has too few points: 3 with the foremost one, where at least 4 are needed", "0.2 -0.03\n", "")]
    [InlineData("1.0 0.001", "0 0\n1.0 0.001", "otter.dat:2:1: error: a single list starts and ends at the trailing edge: this one does not; two lists need their counts on the first line")]
    [InlineData("0.4 0.07", "0.4 07", "otter.dat:4:1: error: this point lies 7 chords off the chord line: is its decimal point in place?")]
    [InlineData("0.4 0.07", "0.4 0.07\n0.3999 0.03", "otter.dat:4:1: error: the upper surface jumps here: y changes by 0.04 chords over 0.0001 of x from the point before it")]
    [InlineData("Otter 9", "1.0 O.0", "otter.dat:1:5: error: 'O.0' is not a number")]
    [InlineData("Otter 9", "1.0", "otter.dat:1:1: error: one number where x and y are expected")]
    [InlineData("Otter 9", "NaN 0.0", "otter.dat:1:1: error: 'NaN' is not a finite number")]
    [InlineData("Otter 9", "1.0 0.0 0.0", "otter.dat:1:9: error: 3 columns where x and y are expected")]
    public void A_fault_is_named_at_its_place(string from, string to, string expected, string? alsoFrom = null, string? alsoTo = null)
    {
        Assert.Contains(from, Good, StringComparison.Ordinal);
        var text = Good.Replace(from, to, StringComparison.Ordinal);
        text = alsoFrom is null ? text : text.Replace(alsoFrom, alsoTo, StringComparison.Ordinal);
        AssertFault(text, expected);
    }

    [Theory]
    [InlineData("4. 5.", "5. 5.", "otter.dat:2:1: error: the counts 5 and 5 ask for 10 points, but 9 follow")]
    [InlineData("4. 5.", "4. 4.", "otter.dat:2:1: error: the counts 4 and 4 ask for 8 points, but 9 follow")]
    [InlineData("1 -0.001", "", "otter.dat:2:1: error: the counts 4 and 5 ask for 9 points, but 8 follow")]
    [InlineData("4. 5.", "5. 4.", "otter.dat:9:1: error: the upper surface turns back here: x is not aft of the point before it, (1, 0.001)")]
    public void Counts_that_disagree_with_the_lists_are_a_fault(string from, string to, string expected) =>
        AssertFault(GoodLists.Replace(from, to, StringComparison.Ordinal), expected);

    [Theory]
    [InlineData("", "otter.dat: error: there are no coordinates in this file")]
    [InlineData("Otter 9\n\n# nothing yet\n", "otter.dat: error: there are no coordinates in this file")]
    [InlineData("Otter 9\n1 0\n0 0\n1 0\n", "otter.dat: error: 3 points are too few for a section: at least 7 are needed")]
    [InlineData("1 0\n1 1\n1 2\n1 3\n1 2\n1 1\n1 0\n", "otter.dat: error: the points have no chord: no leading edge lies ahead of a trailing edge")]
    public void A_file_without_a_section_is_a_fault_as_a_whole(string text, string expected) => AssertFault(text, expected);

    [Fact]
    public void All_faulty_lines_are_named_at_once()
    {
        var result = SectionFile.Read("otter.dat", Good.Replace("0.065", "0.o65", StringComparison.Ordinal).Replace("0.05 ", "x ", StringComparison.Ordinal));
        Assert.Null(result.Section);
        Assert.Equal(
            [
                "otter.dat:5:5: error: '0.o65' is not a number",
                "otter.dat:6:1: error: 'x' is not a number",
                "otter.dat:8:1: error: 'x' is not a number",
            ],
            result.Diagnostics.Select(finding => finding.ToString()));
    }

    [Fact]
    public void After_twenty_faulty_lines_one_message_stands_for_the_rest()
    {
        var result = SectionFile.Read("otter.dat", "0 0\n" + string.Concat(Enumerable.Repeat("a b\n", 50)));
        Assert.Equal(21, result.Diagnostics.Length);
        Assert.Equal("otter.dat:22:1: error: this and the following lines are not read: too many are no pairs of numbers", result.Diagnostics[^1].ToString());
    }

    [Fact]
    public void The_underlined_stretch_is_the_faulty_text()
    {
        var at = Assert.Single(SectionFile.Read("otter.dat", Good.Replace("0.07", "0.0.7", StringComparison.Ordinal)).Diagnostics).At;
        Assert.Equal(new SourcePosition("otter.dat", 4, 5, 5), at);
        at = Assert.Single(SectionFile.Read("otter.dat", Good.Replace("0.4 0.07", " 0.4 0.07 1 22", StringComparison.Ordinal)).Diagnostics).At;
        Assert.Equal(new SourcePosition("otter.dat", 4, 11, 4), at);
    }

    [Fact]
    public void A_file_of_thousands_of_points_is_refused_quickly()
    {
        var text = string.Concat(Enumerable.Range(0, 200000).Select(i => FormattableString.Invariant($"{i} 0\n")));
        Assert.Equal(
            "otter.dat: error: 200000 points are more than a section needs: at most 4000 are read",
            Assert.Single(SectionFile.Read("otter.dat", text).Diagnostics).ToString());
    }

    private static void AssertFault(string text, string expected)
    {
        var result = SectionFile.Read("otter.dat", text);
        Assert.Null(result.Section);
        Assert.Equal(expected, Assert.Single(result.Diagnostics).ToString());
    }
}
