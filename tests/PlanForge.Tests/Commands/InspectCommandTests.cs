using System.Text.Json;

namespace PlanForge.Tests.Commands;

public sealed class InspectCommandTests : IDisposable
{
    private const string Gap = "<svg xmlns='http://www.w3.org/2000/svg' width='80mm' height='60mm' viewBox='0 0 80 60'>\n"
        + "<path id='a' stroke='#ff0000' fill='none' d='M10 10H70V50H10V10.3'/>\n</svg>\n";

    private readonly TestFolder _folder = new();

    private static string Sound => Gap.Replace("V10.3", "Z", StringComparison.Ordinal);

    public static TheoryData<string> DesignNames => [.. Repository.Designs.Select(path => Path.GetFileName(path))];

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Fault_is_shown_with_its_place_and_what_the_file_holds()
    {
        var file = _folder.Write("a.svg", Gap);
        var run = TestTerminal.Run("inspect", file);

        Assert.Equal((ExitCode.CutFileFault, ""), (run.Code, run.Messages));
        Assert.Equal(
            $"{file}:2:53: fault: gap: the ends (10.000, 10.000) and (10.000, 10.300) are 0.300 mm apart; let them meet\n"
            + $"{file}: SVG, mm, 1 fault, 0 warnings\n"
            + "  #ff0000 (cut): 1 contour, 0 open paths, 199.7 mm long, 60.000 x 40.000 mm\n  colours: #ff0000\n",
            run.Results);
    }

    [Fact]
    public void Sound_file_is_no_fault_and_quiet_says_nothing() =>
        Assert.Equal(new(ExitCode.Done, "", ""), TestTerminal.Run("inspect", "--quiet", _folder.Write("a.svg", Sound)));

    [Fact]
    public void Every_file_is_inspected_and_the_highest_code_counts()
    {
        var (good, bad) = (_folder.Write("good.svg", Sound), _folder.Write("bad.svg", Gap));
        var run = TestTerminal.Run("inspect", "-q", "nowhere.dxf", good, bad);

        Assert.Equal(ExitCode.CutFileFault, run.Code);
        Assert.Equal("nowhere.dxf: error: there is no such file\n", run.Messages);
        Assert.StartsWith($"{bad}:2:", run.Results, StringComparison.Ordinal);
        Assert.Equal(ExitCode.FileSystemFault, TestTerminal.Run("inspect", "-q", "nowhere.dxf", good).Code);
        Assert.Equal(ExitCode.FileSystemFault, TestTerminal.Run("inspect", _folder.Root).Code);
    }

    [Fact]
    public void Json_holds_findings_and_layers()
    {
        using var json = JsonDocument.Parse(TestTerminal.Run("inspect", "--json", _folder.Write("a.svg", Gap)).Results);
        var finding = Assert.Single(json.RootElement.GetProperty("findings").EnumerateArray());
        var layer = Assert.Single(json.RootElement.GetProperty("layers").EnumerateArray());

        Assert.Equal(("fault", "gap", 2, 53), (
            finding.GetProperty("severity").GetString(), finding.GetProperty("code").GetString(),
            finding.GetProperty("line").GetInt32(), finding.GetProperty("column").GetInt32()));
        Assert.Equal((1, 199.7), (layer.GetProperty("contours").GetInt32(), layer.GetProperty("length_mm").GetDouble()));
    }

    [Theory]
    [InlineData("--thickness", "thin", "--thickness thin: ")]
    [InlineData("--thickness", "0 mm", "--thickness 0 mm: it has to be over 0 mm")]
    [InlineData("--sheet", "600", "--sheet 600: width and height are needed, such as 600x300")]
    [InlineData("--sheet", "600x0", "--sheet 600x0: it has to be over 0 mm")]
    public void Option_at_fault_says_why(string option, string value, string expected)
    {
        var run = TestTerminal.Run("inspect", option, value, _folder.Write("a.svg", Sound));

        Assert.Equal((ExitCode.CommandLineFault, ""), (run.Code, run.Results));
        Assert.StartsWith($"planforge: error: {expected}", run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("100x60", ExitCode.Done)]
    [InlineData("10cm x 6cm", ExitCode.Done)]
    [InlineData("4in x 2in", ExitCode.Done)]
    [InlineData("60x60", ExitCode.CutFileFault)]
    public void Sheet_has_to_hold_the_part(string sheet, object code) =>
        Assert.Equal((ExitCode)code, TestTerminal.Run("inspect", "-q", "--sheet", sheet, _folder.Write("a.svg", Sound)).Code);

    [Fact]
    public void Endless_file_is_refused() => Assert.Contains("too-large", TestTerminal.Run("inspect", "/dev/zero").Results, StringComparison.Ordinal);

    // Steps under 0.05 mm where the curves of a former's two faces meet are ours to clear away yet; all else must be clean.
    [Theory]
    [MemberData(nameof(DesignNames))]
    public void What_draw_writes_for_the_machine_is_sound(string design)
    {
        TestTerminal.Run("draw", "-q", Path.Combine(Repository.Root, "designs", design), "--to", _folder["plans"]);
        var files = Directory.GetFiles(_folder["plans"], "*", SearchOption.AllDirectories)
            .Where(path => Path.GetFileName(Path.GetDirectoryName(path)!) is "parts" or "cut").ToArray();

        Assert.NotEmpty(files);
        var run = TestTerminal.Run(["inspect", "-q", .. files]);
        Assert.Equal(ExitCode.Done, run.Code);
        Assert.DoesNotContain(run.Results.Split('\n'), line => line.Length > 0 && !line.Contains(": warning: tiny-segment: ", StringComparison.Ordinal));
    }
}
