using System.Diagnostics;

namespace PlanForge.Tests.Terminals;

public sealed class StopSignalsTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // The description is a pipe: once it can be opened for writing the program waits for its text, with its signals in place.
    // 130 and 143 are 128 and the numbers of SIGINT and SIGTERM, as POSIX shells report them.
    [Theory]
    [InlineData("INT", 130)]
    [InlineData("TERM", 143)]
    public void Signal_stops_the_run_and_leaves_the_last_output_whole(string signal, int expected)
    {
        _folder.Write("a.yaml", SmallDesign.Text);
        Assert.Equal(0, ProgramProcess.Run(_folder.Root, "draw", "a.yaml").ExitCode);
        var before = _folder.Everything("output");
        Tool("mkfifo", _folder["pipe"]);

        using var process = ProgramProcess.Start(_folder.Root, "draw", "pipe");
        using var pipe = new FileStream(_folder["pipe"], FileMode.Open, FileAccess.Write);
        Tool("kill", $"-{signal}", FormattableString.Invariant($"{process.Id}"));
        var run = ProgramProcess.End(process);

        Assert.Equal(new(expected, "", "planforge: error: stopped\n"), run);
        Assert.Equal(before, _folder.Everything("output"));
    }

    private static void Tool(string name, params string[] arguments)
    {
        using var process = Process.Start(name, arguments);
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
    }
}
