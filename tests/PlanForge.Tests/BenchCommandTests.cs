using System.Text.Json;

namespace PlanForge.Tests;

public sealed class BenchCommandTests : IDisposable
{
    private const string Measured =
        """
        design: a.yaml
        rounds:
          - {name: first fit, pins: {front: {port: 112, starboard: 111}, rear: {port: 105, starboard: 104}}}
          - {name: second, pins: {front: {port: 111, starboard: 110.5}, rear: {port: 105.25, starboard: 105}}}

        """;

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Last_round_is_judged_and_all_are_listed()
    {
        var run = Run(Measured);

        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        Assert.StartsWith($"{SmallDesign.Name}, round \"second\": out of tolerance\n", run.Results, StringComparison.Ordinal);
        Assert.Contains("Wood to take off the saddles (mm):\n  from front", run.Results, StringComparison.Ordinal);
        Assert.Matches("\n  first fit  +across -1 mm, ", run.Results);
        Assert.Matches("\n  second  +across -0.5 mm, ", run.Results);
    }

    [Fact]
    public void Json_has_the_same_rounds()
    {
        var run = TestTerminal.Run("bench", "--json", _folder.Write("a.yaml", SmallDesign.Text), _folder.Write("m.yaml", Measured));
        using var json = JsonDocument.Parse(run.Results);
        var rounds = json.RootElement.GetProperty("rounds");

        Assert.Equal(["first fit", "second"], rounds.EnumerateArray().Select(round => round.GetProperty("name").GetString()));
        Assert.Equal(-0.5, rounds[1].GetProperty("errors")[0].GetProperty("value_mm").GetDouble(), 1e-3);
        Assert.Equal(9, rounds[1].GetProperty("take_off_mm").GetArrayLength());
    }

    [Fact]
    public void Measurements_of_another_design_are_refused()
    {
        var run = Run(Measured.Replace("a.yaml", "b.yaml", StringComparison.Ordinal));

        Assert.Equal((ExitCode.DescriptionFault, ""), (run.Code, run.Results));
        Assert.Contains("m.yaml:1:9: error: these were measured on `b.yaml`, not on `a.yaml`\n", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Bad_reading_is_shown_in_its_line()
    {
        var run = Run(Measured.Replace("105.25", "10.525", StringComparison.Ordinal));

        Assert.Equal((ExitCode.DescriptionFault, ""), (run.Code, run.Results));
        Assert.Matches(@"m\.yaml:4:78: error: rear pin, left \(port\), reads 10\.53 mm, about a tenth of the [^\n]*\n[^\n]*second[^\n]*\n +\^{6}\n", run.Messages);
    }

    [Fact]
    public void File_that_is_not_there_is_named() => Assert.Equal(
        new(ExitCode.FileSystemFault, "", "nowhere.yaml: error: there is no such file\n"),
        TestTerminal.Run("bench", _folder.Write("a.yaml", SmallDesign.Text), "nowhere.yaml"));

    private TestTerminal Run(string measured) =>
        TestTerminal.Run("bench", _folder.Write("a.yaml", SmallDesign.Text), _folder.Write("m.yaml", measured));
}
