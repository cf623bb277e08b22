using PlanForge.Airframe.Reading;

namespace PlanForge.Tests.Printers;

public sealed class CalibrateTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Page_is_written_once_and_another_file_is_never_written_over()
    {
        var page = _folder["page.pdf"];
        Assert.Equal(ExitCode.Done, TestTerminal.Run("calibrate", "--to", page).Code);
        var first = File.ReadAllBytes(page);
        Assert.Equal(ExitCode.Done, TestTerminal.Run("calibrate", "--to", page).Code);
        Assert.Equal(first, File.ReadAllBytes(page));

        var other = _folder.Write("other.pdf", "mine");
        var run = TestTerminal.Run("calibrate", "--to", other);
        Assert.Equal(ExitCode.FileSystemFault, run.Code);
        Assert.Contains("--force", run.Messages, StringComparison.Ordinal);
        Assert.Equal("mine", _folder.Read("other.pdf"));
        Assert.Equal(ExitCode.Done, TestTerminal.Run("calibrate", "--to", other, "--force").Code);
        Assert.Equal(first, File.ReadAllBytes(other));
        Assert.Equal(["other.pdf", "page.pdf"], _folder.Everything());
    }

    // 180 / 179.6 = 1.00223, 260 / 258.7625 (10 3/16 in) = 1.00478: true over printed length.
    [Fact]
    public void What_was_measured_is_kept_and_others_stay_in_their_order()
    {
        Keep("zoe's", "180", "260");
        var run = Keep("attic", "179.6 mm", "10 3/16 in");
        Assert.Equal($"{_folder["p.yaml"]}: attic, across × 1.0022, up × 1.0048\n", run.Results);
        Keep("zoe's", "180.9", "260");

        var lines = _folder.Read("p.yaml").Split('\n');
        Assert.Equal(["  \"zoe's\":", "  attic:"], lines.Where(line => line.StartsWith("  ", StringComparison.Ordinal) && line[2] != ' '));
        Assert.Contains("    measured_across: 180.9 mm", lines);
        Assert.Contains("    measured_up: 258.7625 mm", lines);
        Assert.Equal(["p.yaml"], _folder.Everything());
    }

    [Theory]
    [InlineData("178.2", "260", ExitCode.Done, "")]
    [InlineData("178.1", "260", ExitCode.Done, "more than 1 %")]
    [InlineData("180", "252.5", ExitCode.Done, "likely A4 shrunk into margins of 3 mm, 97.1 %")]
    [InlineData("180", "252.1", ExitCode.CommandLineFault, "more than 3 %")]
    [InlineData("186", "260", ExitCode.CommandLineFault, "more than 3 %")]
    [InlineData("169.3", "244.6", ExitCode.CommandLineFault, "likely A4 fitted on Letter, 94.1 %")]
    [InlineData("179,6", "260", ExitCode.CommandLineFault, "`179.6`, not `179,6`")]
    [InlineData("0", "260", ExitCode.CommandLineFault, "longer than 0 mm")]
    [InlineData("3 deg", "260", ExitCode.CommandLineFault, "a length is needed")]
    public void Doubtful_measures_are_warned_of_and_impossible_ones_refused(string across, string up, object code, string message)
    {
        var run = Keep("attic", across, up);
        Assert.Equal(code, run.Code);
        Assert.Contains(message, run.Messages, StringComparison.Ordinal);
        Assert.Equal(message.Length == 0, run.Messages.Length == 0);
        Assert.Equal(run.Code == ExitCode.Done, File.Exists(_folder["p.yaml"]));
    }

    [Theory]
    [InlineData("calibrate", "--paper", "A9")]
    [InlineData("calibrate", "--across", "180")]
    [InlineData("calibrate", "--printer", "attic", "--across", "180")]
    [InlineData("draw", "x.yaml", "--tiles", "A9")]
    public void Command_line_that_says_too_little_is_refused(params string[] words) =>
        Assert.Equal(ExitCode.CommandLineFault, TestTerminal.Run([.. words, "--profiles", _folder["p.yaml"]]).Code);

    [Fact]
    public void Plan_for_a_printer_is_stretched_and_says_so()
    {
        Keep("attic", "179.6", "259.1");
        var file = _folder.Write("a.yaml", SmallDesign.Text);
        Assert.Equal(ExitCode.Done, TestTerminal.Run("draw", file, "--to", _folder["plain"], "--tiles", "letter").Code);
        Assert.Equal(ExitCode.Done, Draw(file, "attic").Code);
        Assert.NotEqual(
            File.ReadAllBytes(_folder[$"plain/{SmallDesign.FolderName}/plan.pdf"]), File.ReadAllBytes(_folder[$"out/{SmallDesign.FolderName}/plan.pdf"]));
        Assert.True(File.Exists(_folder[$"plain/{SmallDesign.FolderName}/plan-letter.pdf"]));
        Assert.True(File.Exists(_folder[$"out/{SmallDesign.FolderName}/plan-a4.pdf"]));
    }

    [Fact]
    public void Unknown_printer_is_told_from_the_nearest_known_one()
    {
        Keep("attic", "179.6", "259.1");
        var run = Draw(_folder.Write("a.yaml", SmallDesign.Text), "atic");
        Assert.Equal((ExitCode.CommandLineFault, $"{_folder["p.yaml"]}: error: there is no printer `atic`; did you mean `attic`?\n"), (run.Code, run.Messages));
    }

    [Theory]
    [InlineData("printers:\n  attic: {paper: A4, drawn_across: 180, measured_across: 17x}\n", 2, 3)]
    [InlineData("printers:\n  attic: 3\n", 2, 10)]
    [InlineData("printer:\n  attic: {}\n", 1, 1)]
    [InlineData("printers:\n  attic: {paper: A9, drawn_across: 180, measured_across: 180, drawn_up: 260, measured_up: 260}\n", 2, 18)]
    [InlineData("printers:\n  attic: {paper: A4, drawn_across: 180, measured_across: 1x, drawn_up: 260, measured_up: 260}\n", 2, 58)]
    [InlineData("printers:\n  attic: {paper: A4, drawn_across: 180, measured_across: 150, drawn_up: -2, measured_up: 260}\n", 2, 73)]
    [InlineData("printers: [\n", 1, 11)]
    public void Broken_file_of_printers_is_shown_where_it_is_broken(string text, int line, int column)
    {
        var profiles = _folder.Write("p.yaml", text);
        var run = Draw(_folder.Write("a.yaml", SmallDesign.Text), "attic");
        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.StartsWith($"{profiles}:{line}:{column}: error: ", run.Messages, StringComparison.Ordinal);
        Assert.Equal(ExitCode.DescriptionFault, Keep("other", "180", "260").Code);
        Assert.Equal(text, _folder.Read("p.yaml"));
    }

    [Fact]
    public void Edited_profile_that_no_printer_can_have_is_refused()
    {
        _folder.Write("p.yaml", "printers:\n  attic: {paper: A4, drawn_across: 180, measured_across: 150, drawn_up: 260, measured_up: 260}\n");
        var run = Draw(_folder.Write("a.yaml", SmallDesign.Text), "attic");
        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.Contains("more than 3 %", run.Messages, StringComparison.Ordinal);
    }

    // 25.4 mm to the inch.
    [Theory]
    [InlineData("179.6", 179.6)]
    [InlineData("17.96 cm", 179.6)]
    [InlineData("7 1/16 in", 179.3875)]
    [InlineData("7 1/16\"", 179.3875)]
    public void Lengths_of_the_command_line_are_written_as_in_descriptions(string text, double millimetres) =>
        Assert.Equal(millimetres, LengthText.Read(text, out _)!.Value, 1e-9);

    private TestTerminal Keep(string printer, string across, string up) =>
        TestTerminal.Run("calibrate", "--printer", printer, "--across", across, "--up", up, "--profiles", _folder["p.yaml"]);

    private TestTerminal Draw(string file, string printer) =>
        TestTerminal.Run("draw", file, "--to", _folder["out"], "--printer", printer, "--profiles", _folder["p.yaml"]);
}
