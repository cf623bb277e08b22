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

    [Fact]
    public void Sheet_is_written_as_a_pdf_with_both_files_inside()
    {
        var run = RunSheet();

        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        Assert.Matches(@"\n\n[^\n]*sheet\.pdf: [1-9] pages?, print at 100 %\n$", run.Results);
        var pdf = File.ReadAllText(_folder["sheet.pdf"], System.Text.Encoding.Latin1);
        Assert.StartsWith("%PDF-", pdf, StringComparison.Ordinal);
        Assert.Contains("(a.yaml)", pdf, StringComparison.Ordinal);
        Assert.Contains("(m.yaml)", pdf, StringComparison.Ordinal);
        Assert.DoesNotContain(_folder.Everything(), file => file.Contains("planforge-new", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheet_is_the_same_on_every_run_and_another_file_is_left_alone()
    {
        RunSheet();
        var first = File.ReadAllBytes(_folder["sheet.pdf"]);
        Assert.Equal(ExitCode.Done, RunSheet().Code);
        Assert.Equal(first, File.ReadAllBytes(_folder["sheet.pdf"]));

        _folder.Write("sheet.pdf", "mine");
        var refused = RunSheet();
        Assert.Equal((ExitCode.FileSystemFault, "", "mine"), (refused.Code, refused.Results, _folder.Read("sheet.pdf")));
        Assert.Contains("there is another file of this name", refused.Messages, StringComparison.Ordinal);

        Assert.Equal(ExitCode.Done, RunSheet("--force").Code);
        Assert.Equal(first, File.ReadAllBytes(_folder["sheet.pdf"]));
    }

    [Fact]
    public void Sheet_in_tiles_has_more_pages() => Assert.Matches(@"sheet\.pdf: ([4-9]|\d\d) pages", RunSheet("--tiles", "A4").Results);

    [Fact]
    public void Nothing_is_written_for_bad_readings()
    {
        var run = TestTerminal.Run("bench", _folder.Write("a.yaml", SmallDesign.Text), _folder.Write("m.yaml", Measured.Replace("105.25", "10.525", StringComparison.Ordinal)), "--to", _folder["sheet.pdf"]);

        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.False(File.Exists(_folder["sheet.pdf"]));
    }

    [Theory]
    [InlineData("--to", "sheet.png", "--to sheet.png: the correction sheet is a PDF and ends in .pdf")]
    [InlineData("--tiles", "A4", "--tiles is for the correction sheet: say where it goes with --to FILE.pdf")]
    [InlineData("--printer", "attic", "--printer is for the correction sheet: say where it goes with --to FILE.pdf")]
    public void Options_of_the_sheet_go_with_a_pdf(string option, string value, string expected)
    {
        var run = TestTerminal.Run("bench", "a.yaml", "m.yaml", option, value);

        Assert.Equal((ExitCode.CommandLineFault, ""), (run.Code, run.Results));
        Assert.Contains(expected, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Printer_that_is_not_known_is_an_error()
    {
        var run = RunSheet("--printer", "attic", "--profiles", _folder["none.yaml"]);

        Assert.NotEqual(ExitCode.Done, run.Code);
        Assert.False(File.Exists(_folder["sheet.pdf"]));
    }

    [Fact]
    public void Demo_goes_round_by_round_to_within_tolerance()
    {
        var run = TestTerminal.Run("bench", "--json", Path.Combine(Repository.Root, "designs", "oxbow-1420.yaml"), Demo);
        using var json = JsonDocument.Parse(run.Results);
        var rounds = json.RootElement.GetProperty("rounds").EnumerateArray().ToArray();

        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        Assert.Equal([false, false, true], rounds.Select(round => round.GetProperty("within_tolerance").GetBoolean()));
        double[] Sizes(string error) =>
            [.. rounds.Select(round => Math.Abs(round.GetProperty("errors").EnumerateArray().Single(it => it.GetProperty("error").GetString() == error).GetProperty("value_mm").GetDouble()))];
        foreach (var error in new[] { "right (starboard) pins over left (port)", "rise of front over rear pins, against the drawn" })
        {
            Assert.Equal(Sizes(error).OrderDescending(), Sizes(error));
        }

        Assert.True(rounds[1].GetProperty("tailplane").GetProperty("decalage").GetProperty("plus_minus_deg").GetDouble() > 0);
        Assert.Equal(4, rounds[1].GetProperty("thrust").GetProperty("washers_mm").GetArrayLength());
    }

    [Fact]
    public void Schema_beside_the_demos_is_what_the_program_prints() => Assert.Equal(
        File.ReadAllText(Path.Combine(Repository.Root, "designs", "measurements.schema.json")), TestTerminal.Run("schema", "measurements").Results);

    [Theory]
    [InlineData("check")]
    [InlineData("draw")]
    public void Measurements_are_no_description(string command)
    {
        var run = TestTerminal.Run(command, Demo);

        Assert.Equal((ExitCode.DescriptionFault, ""), (run.Code, run.Results));
        Assert.Contains("error: this is a file of measurements, not a description of an airframe: use `planforge bench DESIGN ", run.Messages, StringComparison.Ordinal);
    }

    private static string Demo => Path.Combine(Repository.Root, "designs", "bench", "oxbow-1420-measured.yaml");

    private TestTerminal RunSheet(params string[] more) =>
        TestTerminal.Run(["bench", _folder.Write("a.yaml", SmallDesign.Text), _folder.Write("m.yaml", Measured), "--to", _folder["sheet.pdf"], .. more]);

    private TestTerminal Run(string measured) =>
        TestTerminal.Run("bench", _folder.Write("a.yaml", SmallDesign.Text), _folder.Write("m.yaml", measured));
}
