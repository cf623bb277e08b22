using PlanForge.Airframe.Described;
using PlanForge.Airframe.Reading;

namespace PlanForge.Airframe.Tests.Reading;

public class ListedValuesTests
{
    private const string TwoFormers = "formers:\n  - {name: F1, station: 10, thickness: 3 mm}\n  - {name: F2, station: 60, thickness: 3 mm}\n";

    private static readonly string Sound = BrokenDescription.Sound;

    [Fact]
    public void Every_value_of_a_complete_description_has_a_path_of_its_own()
    {
        var values = Description.Read(Description.Complete).ListValues().Values;
        Assert.Equal(values.Length, values.Select(value => value.Path).Distinct().Count());
        Assert.All(values, value => Assert.NotEqual("", value.Shown));
        Assert.Contains(values, value => value.Kind == ValueKind.Coordinates && value.Path == "otter.dat");
    }

    // The fingerprint is a hash of the same values, made by other code: both must tell the same descriptions apart.
    [Theory]
    [InlineData("units: mm", "# a remark\nunits: mm # another")]
    [InlineData("chord: 200", "chord: 20 cm")]
    [InlineData("chord: 200", "chord: 7.874015748031496 in")]
    [InlineData("chord: 200", "chord: 2 * 100 mm")]
    [InlineData("chord: 200", "chord: 200.001")]
    [InlineData("units: mm", "units: mm\nsheets: {paper: A3}")]
    [InlineData("units: mm", "units: mm\nsheets: {paper: A2}")]
    [InlineData("units: mm", "units: mm\nsheets: {paper: 300 x 420 mm}")]
    [InlineData("units: mm", "units: mm\nnotes: [mind the grain]")]
    [InlineData("units: mm", "units: mm\nformers: []")]
    [InlineData("units: mm", "units: mm\n" + TwoFormers)]
    [InlineData("units: mm", "units: mm\nretention: {dowels: {diameter: 6 mm, spacing: 40 mm, above_chord: 0 mm, protrusion: 12 mm}}")]
    public void Lists_are_equal_when_fingerprints_are(string from, string to)
    {
        var (before, after) = (Read(Sound), Read(Sound.Replace(from, to, StringComparison.Ordinal)));
        var isSame = before.Airframe!.Issue.Fingerprint == after.Airframe!.Issue.Fingerprint;
        Assert.Equal(isSame, after.ListValues().Since(before.ListValues()).IsEmpty);
    }

    [Fact]
    public void A_former_more_is_its_own_values_and_the_list_of_formers()
    {
        var before = Read(Sound.Replace("units: mm", "units: mm\n" + TwoFormers, StringComparison.Ordinal)).ListValues();
        var more = TwoFormers.Replace("formers:\n", "formers:\n  - {name: F0, station: 5, thickness: 3 mm}\n", StringComparison.Ordinal);
        var changes = Read(Sound.Replace("units: mm", "units: mm\n" + more, StringComparison.Ordinal)).ListValues().Since(before);
        Assert.Equal("F1, F2 -> F0, F1, F2", changes.Single(change => change.Path == "formers[]").Shown);
        Assert.All(changes, change => Assert.True(change.Path == "formers[]" || change is { Before: null } && change.Path.StartsWith("formers[F0].", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_change_names_the_parameters_behind_it()
    {
        DescribedValues With(string root) => Read(Sound
            .Replace("units: mm", $"units: mm\nparameters: {{wide: {root}, chord: wide * 2, other: 3 mm}}", StringComparison.Ordinal)
            .Replace("chord: 200", "chord: chord + other", StringComparison.Ordinal)).ListValues();
        var change = Assert.Single(With("95 mm").Since(With("92 mm")));
        Assert.Equal("wing.root.chord", change.Path);
        Assert.Equal("187 mm -> 193 mm", change.Shown);
        Assert.Equal(["chord", "other", "wide"], change.After!.Parameters);
        Assert.Equal(["parameters[chord]: 184 mm -> 190 mm", "parameters[wide]: 92 mm -> 95 mm"], change.Parameters.Select(behind => $"{behind.Path}: {behind.Shown}"));
    }

    private static ReadResult Read(string text)
    {
        var read = Description.Read(text);
        Assert.True(read.Airframe is not null, string.Join('\n', read.Diagnostics));
        return read;
    }
}
