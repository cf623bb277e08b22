using PlanForge.Folders;

namespace PlanForge.Tests;

/// <summary>Runs the command inside the test and keeps what it says.</summary>
internal sealed record TestTerminal(ExitCode Code, string Results, string Messages)
{
    public static TestTerminal Run(params string[] words) => Run(new Disk(), words);

    public static TestTerminal Run(IDisk disk, params string[] words) => Run(disk, hasColour: false, isLive: false, words);

    public static TestTerminal RunLive(bool hasColour, params string[] words) => Run(new Disk(), hasColour, isLive: true, words);

    private static TestTerminal Run(IDisk disk, bool hasColour, bool isLive, string[] words)
    {
        using var results = new StringWriter();
        using var messages = new StringWriter();
        var code = Application.Run(words, new(results, messages, hasColour, isLive), disk);
        return new(code, results.ToString(), messages.ToString());
    }
}
