namespace PlanForge.Terminals;

/// <summary>Where the command writes to: results on one stream, messages on the other.</summary>
/// <param name="Results">Takes results: stdout.</param>
/// <param name="Messages">Takes errors, warnings and progress: stderr.</param>
/// <param name="HasColour">Messages may be coloured: they go to a terminal and NO_COLOR is unset or empty.</param>
/// <param name="IsLive">Messages go to a terminal on which a line can be written over.</param>
internal sealed record Terminal(TextWriter Results, TextWriter Messages, bool HasColour, bool IsLive)
{
    /// <summary>The streams of this process.</summary>
    public static Terminal OfProcess()
    {
        var isLive = !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") != "dumb";
        var hasColour = isLive && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new(Console.Out, Console.Error, hasColour, isLive);
    }
}
