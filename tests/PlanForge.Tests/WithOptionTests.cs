using System.Text.Json;
using PlanForge.Airframe.Reading;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Tests;

public sealed class WithOptionTests : IDisposable
{
    private static readonly string Text = SmallDesign.Text
        .Replace("units: mm", "units: mm\nparameters: {wide: {value: 60 mm, from: 50 mm, to: 70 mm}}", StringComparison.Ordinal)
        .Replace("half_breadth: 30", "half_breadth: wide / 2", StringComparison.Ordinal);

    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_is_drawn_with_another_value_says_so_in_the_report_and_on_the_sheets()
    {
        var file = _folder.Write("a.yaml", Text);
        var run = TestTerminal.Run("draw", "-q", file, "--to", _folder.Root, "--with", "wide=64mm");
        Assert.Equal(new(ExitCode.Done, "", ""), run);
        var design = Path.Combine(_folder.Root, SmallDesign.FolderName);
        using var report = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(design, "report.json")));
        Assert.Equal("64 mm", report.RootElement.GetProperty("with").GetProperty("wide").GetString());

        // The notes at the foot of every sheet; SVG holds them as strokes.
        var read = AirframeReader.Read("a.yaml", Text, _ => null, new("--with", ["wide=64mm"]));
        Assert.Equal("Drawn with wide = 64 mm, not as the file says.", Assert.Single(PlanOptions.Of(read.Airframe!, "").Notes));
    }

    [Fact]
    public void Without_it_nothing_is_said()
    {
        Assert.Equal(ExitCode.Done, TestTerminal.Run("draw", "-q", _folder.Write("a.yaml", Text), "--to", _folder.Root).Code);
        Assert.DoesNotContain("\"with\"", File.ReadAllText(Path.Combine(_folder.Root, SmallDesign.FolderName, "report.json")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("draw")]
    public void What_is_wrong_with_it_is_underlined_in_the_argument(string command)
    {
        var run = TestTerminal.Run(command, _folder.Write("a.yaml", Text), "--with", "wide=64xm");
        Assert.Equal((ExitCode.DescriptionFault, ""), (run.Code, run.Results));
        Assert.Matches("^--with:1:15: error: `xm` is not a unit.*\n--with wide=64xm\n              \\^\\^\n$", run.Messages);
    }

    [Fact]
    public void Bench_takes_it_too()
    {
        var run = TestTerminal.Run("bench", _folder.Write("a.yaml", Text), _folder.Write("m.yaml", ""), "--with", "wide=90mm");
        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.StartsWith("--with:1:13: error: `wide` is 90 mm; it must be from 50 mm to 70 mm", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_takes_it_for_the_new_description()
    {
        var file = _folder.Write("a.yaml", Text);
        var run = TestTerminal.Run("compare", file, file, "--with", "wide=64mm");
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.Contains("\n    because of wide 60 mm -> 64 mm\n", run.Results, StringComparison.Ordinal);
        Assert.Contains("short by 2 mm", run.Results, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_does_not_take_it_for_a_folder()
    {
        var file = _folder.Write("a.yaml", Text);
        var run = TestTerminal.Run("compare", file, _folder.Root, "--with", "wide=64mm");
        Assert.Equal((ExitCode.CommandLineFault, ""), (run.Code, run.Results));
        Assert.StartsWith("planforge: error: `--with` is for the parameters of a description, and NEW, ", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Current_takes_it_so_that_what_was_drawn_with_it_is_current()
    {
        var file = _folder.Write("a.yaml", Text);
        Assert.Equal(ExitCode.Done, TestTerminal.Run("draw", "-q", file, "--to", _folder.Root, "--with", "wide=64mm").Code);
        using var manifest = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(_folder.Root, SmallDesign.FolderName, "manifest.json")));
        var code = manifest.RootElement.GetProperty("fingerprint").GetString()!;
        Assert.Equal(ExitCode.Done, TestTerminal.Run("current", file, code, "--to", _folder.Root, "--with", "wide=64mm").Code);
        var run = TestTerminal.Run("current", file, code, "--to", _folder.Root);
        Assert.Equal(ExitCode.NotCurrent, run.Code);
        Assert.Contains("30 mm (wide 64 mm -> 60 mm)\n", run.Results, StringComparison.Ordinal);
    }

    [Fact]
    public void Vary_takes_it_for_other_parameters()
    {
        var file = _folder.Write("a.yaml", WithChord);
        var with = Vary(file, "chord=120mm..180mm", "--csv", "--with", "wide=64mm");
        Assert.Equal((ExitCode.Done, ""), (with.Code, with.Messages));
        _folder.Write("b.yaml", WithChord.Replace("value: 60 mm", "value: 64 mm", StringComparison.Ordinal));
        Assert.Equal(Vary(_folder["b.yaml"], "chord=120mm..180mm", "--csv").Results, with.Results);
        Assert.NotEqual(Vary(file, "chord=120mm..180mm", "--csv").Results, with.Results);
    }

    [Theory]
    [InlineData("wide=6xm", "`xm` is not a unit", "\n--with wide=6xm\n             ^^\n")]
    [InlineData("chord=140mm", "`chord` is given twice", "\nvary chord=120mm\n     ^^^^^\n")]
    public void Vary_shows_each_value_as_it_was_given(string with, string message, string shown)
    {
        var run = Vary(_folder.Write("a.yaml", WithChord), "chord=120mm..180mm", "--with", with);
        Assert.Equal((ExitCode.DescriptionFault, ""), (run.Code, run.Results));
        Assert.Contains(message, run.Messages, StringComparison.Ordinal);
        Assert.EndsWith(shown, run.Messages, StringComparison.Ordinal);
    }

    private static string WithChord => Text
        .Replace("parameters: {", "parameters: {chord: 150 mm, ", StringComparison.Ordinal).Replace("chord: 150}", "chord: chord}", StringComparison.Ordinal);

    private static TestTerminal Vary(string file, string range, params string[] options) => TestTerminal.Run(["vary", file, range, "--steps", "3", .. options]);
}
