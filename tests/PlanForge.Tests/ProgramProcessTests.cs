namespace PlanForge.Tests;

public sealed class ProgramProcessTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Results_go_to_stdout_and_messages_to_stderr()
    {
        _folder.Write("a.yaml", SmallDesign.Doubtful);
        var run = ProgramProcess.Run(_folder.Root, "draw", "a.yaml");

        Assert.Equal(0, run.ExitCode);
        Assert.StartsWith($"output/{SmallDesign.FolderName}: ", run.Results, StringComparison.Ordinal);
        Assert.StartsWith("a.yaml:15:", run.Messages, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "check bad.yaml")]
    [InlineData(2, "chekc a.yaml")]
    [InlineData(2, "")]
    [InlineData(3, "check nowhere.yaml")]
    [InlineData(3, "draw a.yaml --to a.yaml")]
    public void Exit_code_tells_what_is_at_fault(int expected, string line)
    {
        _folder.Write("a.yaml", SmallDesign.Text);
        _folder.Write("bad.yaml", SmallDesign.Misspelt);

        Assert.Equal(expected, ProgramProcess.Run(_folder.Root, line.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ExitCode);
    }
}
