using System.Diagnostics;
using System.Text;

namespace PlanForge.Airframe.Tests.Reading;

/// <summary>Texts made to exhaust the reader are stopped, and what is large and sound is read.</summary>
public class LimitTests
{
    private const int Mebibyte = 1024 * 1024;

    // On a quiet machine the slowest takes half a second; the limit catches what grows with the square of the size.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(20);

    [Fact]
    public void A_description_over_a_mebibyte_is_refused() => Assert.Equal(
        ["complete.yaml: error: the description is larger than 1 MiB"],
        Findings(BrokenDescription.Sound + "#" + new string('é', Mebibyte / 2)));

    [Fact]
    public void A_description_just_under_a_mebibyte_is_read()
    {
        var text = BrokenDescription.Sound + "# ";
        Assert.Empty(Findings(text + new string('x', Mebibyte - Encoding.UTF8.GetByteCount(text))));
    }

    [Fact]
    public void Over_a_hundred_thousand_values_are_refused() => Assert.Equal(
        ["complete.yaml:12:199909: error: the description has more than 100000 values"],
        Findings(BrokenDescription.Sound + "notes: [" + string.Concat(Enumerable.Repeat("a,", 150_000)) + "]"));

    [Fact]
    public void A_chain_of_ten_thousand_parameters_is_worked_out()
    {
        var text = new StringBuilder(BrokenDescription.Sound.Replace("chord: 200", "chord: p0", StringComparison.Ordinal)).Append("parameters:\n");
        for (var i = 0; i < 10_000; i++)
        {
            text.Append("  p").Append(i).Append(": p").Append(i + 1).Append(" + 0.001 mm\n");
        }

        text.Append("  p10000: 90 mm\n");
        Assert.Equal(100, Description.ReadSound(text.ToString()).Wing.Root.Chord, 1e-6);
    }

    [Fact]
    public void A_circle_of_ten_thousand_parameters_is_found()
    {
        var text = new StringBuilder(BrokenDescription.Sound).Append("parameters:\n");
        for (var i = 0; i < 10_000; i++)
        {
            text.Append("  p").Append(i).Append(": p").Append((i + 1) % 10_000).Append('\n');
        }

        var finding = Assert.Single(Findings(text.ToString()));
        Assert.StartsWith("complete.yaml:10012:10: error: these parameters are defined by each other: `p0` → `p1` → ", finding, StringComparison.Ordinal);
        Assert.True(finding.Length < 500, "a long circle is shortened");
    }

    public static TheoryData<string> Exhausting => new(
        "[", "{", "[{", "{[", "- ", "? ", "a: ", "a: [", "\"", "'", "\\", "\"\\", "a: 'x\n", "&a ", "*a ", "!a ", "|\n", "a:\n ", "a,", "{a,", "[a,",
        "%", "# ", "\t", "\r", "a: {b: c, ", "'a': ", "? a\n", "- - ", "a\n", " ", "---\n", "...\n", "<<: *a\n", "a: (", "-", "0");

    [Theory]
    [MemberData(nameof(Exhausting))]
    public void A_mebibyte_of_one_thing_is_answered_in_time(string unit)
    {
        var repeated = string.Concat(Enumerable.Repeat(unit, (Mebibyte - 1000) / unit.Length));
        foreach (var text in new[] { repeated, BrokenDescription.Sound + repeated, BrokenDescription.Sound.Replace("chord: 200", "chord: " + repeated, StringComparison.Ordinal) })
        {
            var start = Stopwatch.GetTimestamp();
            Assert.All(Findings(text), finding => Assert.InRange(finding.Length, 1, 500));
            Assert.True(Stopwatch.GetElapsedTime(start) < Longest, $"{Stopwatch.GetElapsedTime(start)}");
        }
    }

    [Fact]
    public void Many_unknown_names_among_many_known_ones_are_answered_in_time()
    {
        var text = new StringBuilder(BrokenDescription.Sound).Append("parameters:\n");
        for (var i = 0; i < 40_000; i++)
        {
            text.Append("  a").Append(i).Append(": x").Append(i).Append('\n');
        }

        var start = Stopwatch.GetTimestamp();
        Assert.Equal(40_000, Findings(text.ToString()).Count());
        Assert.True(Stopwatch.GetElapsedTime(start) < Longest, $"{Stopwatch.GetElapsedTime(start)}");
    }

    [Fact]
    public void Many_unknown_keys_are_answered_in_time()
    {
        var text = new StringBuilder(BrokenDescription.Sound);
        for (var i = 0; i < 40_000; i++)
        {
            text.Append('k').Append(i).Append(": 1\n");
        }

        var start = Stopwatch.GetTimestamp();
        Assert.Equal(40_000, Findings(text.ToString()).Count());
        Assert.True(Stopwatch.GetElapsedTime(start) < Longest, $"{Stopwatch.GetElapsedTime(start)}");
    }

    // In braces each of these is a key without value that looks like the second half of a function.
    [Theory]
    [InlineData("notes: {", "a), ", "}")]
    [InlineData("sheets: {", "a), ", "}")]
    [InlineData("cutter: {kerf: \"", " ", "1/1\"}")]
    [InlineData("cutter: {kerf: \"          ", "1/1/", "1\"}")]
    [InlineData("cutter: {kerf: \"", "a+", "b\"}")]
    [InlineData("cutter: {kerf: \"", "1 ", "\"}")]
    [InlineData("stock: [{size: \"", "1 x ", "\"}]")]
    public void Values_made_to_take_long_are_answered_in_time(string head, string unit, string tail)
    {
        var text = BrokenDescription.Sound + head + string.Concat(Enumerable.Repeat(unit, (Mebibyte - 1000) / unit.Length)) + tail + "\n";
        var start = Stopwatch.GetTimestamp();
        Assert.All(Findings(text), finding => Assert.InRange(finding.Length, 1, 500));
        Assert.True(Stopwatch.GetElapsedTime(start) < Longest, $"{Stopwatch.GetElapsedTime(start)}");
    }

    [Fact]
    public void Ten_faults_in_one_value_are_enough() => Assert.Equal(
        10, Findings(BrokenDescription.Sound.Replace("chord: 200", "chord: " + string.Join('+', Enumerable.Repeat("a", 50)), StringComparison.Ordinal)).Count());

    private static IEnumerable<string> Findings(string text) => Description.Read(text).Diagnostics.Select(d => d.ToString());
}
