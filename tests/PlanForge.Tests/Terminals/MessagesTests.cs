using PlanForge.Terminals;

namespace PlanForge.Tests.Terminals;

public sealed class MessagesTests : IDisposable
{
    private const string Escape = "\e";
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // NO_COLOR: any value but an empty one, as https://no-color.org states it (from memory).
    [Theory]
    [InlineData(true, "xterm", null, true, true)]
    [InlineData(true, "xterm", "", true, true)]
    [InlineData(true, "xterm", "1", false, true)]
    [InlineData(true, null, null, true, true)]          // Windows has no TERM
    [InlineData(true, "dumb", null, false, false)]
    [InlineData(false, "xterm", null, false, false)]
    public void Colour_and_progress_are_for_terminals_that_want_them(
        bool isTerminal, string? kind, string? noColour, bool hasColour, bool isLive)
    {
        var terminal = Terminal.For(TextWriter.Null, TextWriter.Null, isTerminal, kind, noColour);

        Assert.Equal((hasColour, isLive), (terminal.HasColour, terminal.IsLive));
    }

    [Fact]
    public void Redirected_messages_hold_no_escapes()
    {
        var run = TestTerminal.Run("check", _folder.Write("a.yaml", SmallDesign.Misspelt));
        Assert.DoesNotContain(Escape, run.Messages + run.Results, StringComparison.Ordinal);
    }

    // SGR 1;31 is bold red, 1;33 bold yellow (ECMA-48, from memory).
    [Fact]
    public void Word_error_is_red_on_a_terminal()
    {
        var run = TestTerminal.RunLive(hasColour: true, "check", _folder.Write("a.yaml", SmallDesign.Misspelt));
        Assert.Contains(":7:30: \e[1;31merror:\e[0m ", run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void Word_warning_is_yellow_on_a_terminal()
    {
        var run = TestTerminal.RunLive(hasColour: true, "check", "-q", _folder.Write("a.yaml", SmallDesign.Doubtful));
        Assert.Contains(": \e[1;33mwarning:\e[0m ", run.Messages, StringComparison.Ordinal);
    }

    // EL 2 clears the line (ECMA-48): after the last of them nothing of the progress is left on the screen.
    [Fact]
    public void Progress_is_taken_away_at_the_end()
    {
        var file = _folder.Write("a.yaml", SmallDesign.Text);
        var run = TestTerminal.RunLive(hasColour: false, "check", file);

        Assert.Equal($"\r\e[2K{file} (1 of 1)\r\e[2K", run.Messages);
        Assert.DoesNotContain(Escape, run.Results, StringComparison.Ordinal);
    }

    [Fact]
    public void Quiet_run_shows_no_progress() =>
        Assert.Equal("", TestTerminal.RunLive(hasColour: true, "check", "-q", _folder.Write("a.yaml", SmallDesign.Text)).Messages);
}
