namespace PlanForge.CommandLine;

/// <summary>An option as the parser, the help and the shell completions know it.</summary>
/// <param name="Name">The long form with its dashes, such as <c>--to</c>.</param>
/// <param name="Value">What its value is called in the help, or null when it takes none.</param>
/// <param name="Summary">One line of help.</param>
/// <param name="Short">The short form, such as <c>-q</c>, or null.</param>
internal sealed record OptionSyntax(string Name, string? Value, string Summary, string? Short = null)
{
    public bool Is(string word) => word == Name || word == Short;
}
