namespace PlanForge.Terminals;

/// <summary>Where the command writes to: results on one stream, messages on the other.</summary>
/// <param name="Results">Takes results: stdout.</param>
/// <param name="Messages">Takes errors, warnings and progress: stderr.</param>
/// <param name="HasColour">Messages may be coloured: they go to a terminal and NO_COLOR is unset or empty.</param>
/// <param name="IsLive">Messages go to a terminal on which a line can be written over.</param>
internal sealed record Terminal(TextWriter Results, TextWriter Messages, bool HasColour, bool IsLive)
{
    /// <summary>The streams of this process.</summary>
    public static Terminal OfProcess() => For(
        Console.Out,
        Console.Error,
        !Console.IsErrorRedirected,
        Environment.GetEnvironmentVariable("TERM"),
        Environment.GetEnvironmentVariable("NO_COLOR"));

    /// <summary>Streams with what their surroundings allow.</summary>
    /// <param name="results">Takes results.</param>
    /// <param name="messages">Takes messages.</param>
    /// <param name="isTerminal">Messages go to a terminal.</param>
    /// <param name="kind">The terminal's kind as in TERM, or null.</param>
    /// <param name="noColour">The wish for no colour as in NO_COLOR: any text but an empty one.</param>
    public static Terminal For(TextWriter results, TextWriter messages, bool isTerminal, string? kind, string? noColour)
    {
        var isLive = isTerminal && kind != "dumb";
        return new(results, messages, isLive && string.IsNullOrEmpty(noColour), isLive);
    }
}
