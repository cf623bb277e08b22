using System.Diagnostics;
using PlanForge.CommandLine;

namespace PlanForge.Tests.CommandLine;

public sealed class CompletionScriptsTests
{
    // Judged by bash itself: the script is sourced and its function called as bash would on the Tab key.
    [Theory]
    [InlineData("planforge dr", "draw")]
    [InlineData("planforge --v", "--version")]
    [InlineData("planforge draw --", "--to --with --tiles --printer --profiles --dxf --effort --quiet --help")]
    [InlineData("planforge completion z", "zsh")]
    [InlineData("planforge check Ox", "Oxbow 1.yaml")]
    [InlineData("planforge draw --to pl", "plans")]
    [InlineData("planforge inspect F", "F1.dxf")]
    public void Bash_completes_by_the_script(string line, string expected)
    {
        using var folder = new TestFolder();
        folder.Write("Oxbow 1.yaml", "");
        folder.Write("Oxbow.txt", "");
        folder.Write("plans/x", "");
        folder.Write("F1.dxf", "");
        var script = folder.Write("script", CompletionScripts.Of("bash"));
        var words = line.Split(' ');
        var array = string.Join(' ', words.Select(word => $"'{word}'"));
        var call = $"source {script}; COMP_WORDS=({array}); COMP_CWORD={words.Length - 1}; _planforge; echo \"${{COMPREPLY[*]}}\"";

        Assert.Equal(expected, Output("bash", ["--norc", "-c", call], folder.Root).TrimEnd());
    }

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void Script_knows_every_command_and_option(string shell)
    {
        var script = TestTerminal.Run("completion", shell).Results;
        foreach (var command in Syntax.Commands)
        {
            Assert.Contains(command.Name, script, StringComparison.Ordinal);
            Assert.All(command.Options, option => Assert.Contains(option.Name[2..], script, StringComparison.Ordinal));
        }
    }

    private static string Output(string program, string[] arguments, string folder)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardOutput = true })!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
