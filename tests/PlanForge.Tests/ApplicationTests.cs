using System.Xml.Linq;

namespace PlanForge.Tests;

public sealed class ApplicationTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Version_is_the_one_of_the_build()
    {
        var properties = XDocument.Load(Path.Combine(Repository.Root, "Directory.Build.props"));
        var version = properties.Descendants("Version").Single().Value;

        Assert.Equal(new(ExitCode.Done, $"planforge {version}\n", ""), TestTerminal.Run("--version"));
    }

    [Fact]
    public void Schema_is_a_result() => Assert.StartsWith("{\n", TestTerminal.Run("schema").Results, StringComparison.Ordinal);

    [Fact]
    public void Command_line_at_fault_says_so_and_where_help_is()
    {
        var run = TestTerminal.Run("drw", "a.yaml");

        Assert.Equal((ExitCode.CommandLineFault, ""), (run.Code, run.Results));
        Assert.Equal("planforge: error: unknown command `drw`; did you mean `draw`?\n`planforge --help` shows examples and everything there is.\n", run.Messages);
    }

    [Fact]
    public void Check_shows_figures_and_writes_nothing()
    {
        var run = TestTerminal.Run("check", _folder.Write("a.yaml", SmallDesign.Text));

        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        Assert.StartsWith($"{SmallDesign.Name}: ", run.Results, StringComparison.Ordinal);
        Assert.Equal(["a.yaml"], _folder.Everything());
    }

    [Fact]
    public void Error_is_shown_with_its_place_its_line_and_carets()
    {
        var file = _folder.Write("a.yaml", SmallDesign.Misspelt);
        var run = TestTerminal.Run("check", file);

        Assert.Equal((ExitCode.DescriptionFault, ""), (run.Code, run.Results));
        Assert.Matches(
            $$"""
            ^{{file}}:7:30: error: .*`chrod`.*`chord`.*
              root: {section: naca 2412, chrod: 150}
                                         \^\^\^\^\^
            $
            """.ReplaceLineEndings("\n"),
            run.Messages);
    }

    [Fact]
    public void Warning_is_a_message_and_not_a_fault()
    {
        var file = _folder.Write("a.yaml", SmallDesign.Doubtful);
        var run = TestTerminal.Run("check", "--quiet", file);

        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Results));
        Assert.Contains($"{file}:15:", run.Messages, StringComparison.Ordinal);
        Assert.Contains(": warning: ", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Description_that_is_not_there_is_a_fault_of_the_file_system() => Assert.Equal(
        new(ExitCode.FileSystemFault, "", "nowhere.yaml: error: there is no such file\n"), TestTerminal.Run("check", "nowhere.yaml"));

    [Fact]
    public void Folder_is_no_description()
    {
        var run = TestTerminal.Run("check", _folder.Root);

        Assert.Equal(new(ExitCode.FileSystemFault, "", $"{_folder.Root}: error: this is a folder, not a description\n"), run);
    }

    [Fact]
    public void Text_that_is_not_Utf8_is_shown_where_it_stands()
    {
        var file = _folder["a.yaml"];
        File.WriteAllBytes(file, [.. "name: M"u8, 0xF6, .. "we\n"u8]);     // an ö in Latin-1

        var run = TestTerminal.Run("check", file);

        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.Equal($"{file}:1:8: error: this character is not UTF-8; save the file in that encoding\nname: M\uFFFDwe\n       ^\n", run.Messages);
    }

    [Fact]
    public void Endless_file_is_refused()
    {
        var run = TestTerminal.Run("check", "/dev/zero");
        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.Contains("larger than 1 MiB", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_section_file_is_a_fault_of_the_description()
    {
        var text = SmallDesign.Text.Replace("naca 2412", "owl.dat", StringComparison.Ordinal);
        var run = TestTerminal.Run("check", _folder.Write("a.yaml", text));

        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.Contains("owl.dat", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_description_is_worked_out_and_the_highest_code_counts()
    {
        var good = _folder.Write("good.yaml", SmallDesign.Text);
        var bad = _folder.Write("bad.yaml", SmallDesign.Misspelt);
        var run = TestTerminal.Run("check", "nowhere.yaml", bad, good);

        Assert.Equal(ExitCode.FileSystemFault, run.Code);
        Assert.StartsWith("nowhere.yaml: error: ", run.Messages, StringComparison.Ordinal);
        Assert.Contains($"{bad}:7:30: error: ", run.Messages, StringComparison.Ordinal);
        Assert.StartsWith($"{SmallDesign.Name}: ", run.Results, StringComparison.Ordinal);
        Assert.Equal(ExitCode.DescriptionFault, TestTerminal.Run("check", good, bad).Code);
    }

    [Fact]
    public void Draw_writes_the_folder_and_says_so()
    {
        var file = _folder.Write("a.yaml", SmallDesign.Text);
        var run = TestTerminal.Run("draw", file, "--to", _folder["plans"]);

        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Messages));
        Assert.StartsWith($"{_folder["plans"]}/{SmallDesign.FolderName}: ", run.Results, StringComparison.Ordinal);
        string[] cut = ["cradle-foot", "cradle-front", "cradle-rear", "former-F1", "level-rest-wing-root", "level-rest-wing-tip"];
        Assert.Equal(
            ["description/", "description/a.yaml", "manifest.json", "parts/", .. cut.SelectMany(part => new[] { $"parts/{part}.dxf", $"parts/{part}.svg" }), "plan-a4.pdf", "plan.pdf", "report.json", "sheets/"],
            _folder.Everything($"plans/{SmallDesign.FolderName}").Where(path => !path.StartsWith("sheets/s", StringComparison.Ordinal)));
    }

    [Fact]
    public void Description_at_fault_leaves_the_last_output_as_it_was()
    {
        var file = _folder.Write("a.yaml", SmallDesign.Text);
        TestTerminal.Run("draw", file, "--to", _folder["plans"]);
        var before = _folder.Read($"plans/{SmallDesign.FolderName}/manifest.json");
        _folder.Write("a.yaml", SmallDesign.Misspelt);

        Assert.Equal(ExitCode.DescriptionFault, TestTerminal.Run("draw", file, "--to", _folder["plans"]).Code);
        Assert.Equal(before, _folder.Read($"plans/{SmallDesign.FolderName}/manifest.json"));
    }

    [Fact]
    public void Folder_that_is_not_ours_is_a_fault_of_the_file_system()
    {
        _folder.Write($"plans/{SmallDesign.FolderName}/mine.txt", "mine");
        var run = TestTerminal.Run("draw", _folder.Write("a.yaml", SmallDesign.Text), "--to", _folder["plans"]);

        Assert.Equal((ExitCode.FileSystemFault, ""), (run.Code, run.Results));
        Assert.StartsWith($"{_folder["plans"]}/{SmallDesign.FolderName}: error: the folder holds files", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_designs_of_one_name_do_not_overwrite_each_other()
    {
        var first = _folder.Write("a.yaml", SmallDesign.Text);
        var second = _folder.Write("b.yaml", SmallDesign.Text.Replace(SmallDesign.Name, "test-piece 1", StringComparison.Ordinal));
        var run = TestTerminal.Run("draw", first, second, "--to", _folder["plans"]);

        Assert.Equal(ExitCode.DescriptionFault, run.Code);
        Assert.StartsWith($"{second}: error: the folder {SmallDesign.FolderName} belongs to {first}", run.Messages, StringComparison.Ordinal);
        Assert.Contains(SmallDesign.Name, _folder.Read($"plans/{SmallDesign.FolderName}/manifest.json"), StringComparison.Ordinal);
    }

    [Fact]
    public void Quiet_prints_no_results()
    {
        var file = _folder.Write("a.yaml", SmallDesign.Text);

        Assert.Equal(new(ExitCode.Done, "", ""), TestTerminal.Run("draw", "-q", file, "--to", _folder["plans"]));
        Assert.Equal(new(ExitCode.Done, "", ""), TestTerminal.Run("check", "-q", file));
    }
}
