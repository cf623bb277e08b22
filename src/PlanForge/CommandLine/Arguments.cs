using System.Collections.Immutable;
using PlanForge.Airframe.Reading;

namespace PlanForge.CommandLine;

/// <summary>A command line that is in order.</summary>
/// <param name="Command">The command; <see cref="Syntax.HelpCommand"/> when <c>--help</c> stands anywhere.</param>
/// <param name="Operands">Its operands in the order given.</param>
/// <param name="Options">Its options in the order given.</param>
internal sealed record Arguments(CommandSyntax Command, ImmutableArray<string> Operands, ImmutableArray<GivenOption> Options)
{
    /// <summary>Values for parameters in the place of the descriptions' own.</summary>
    public ParameterOverrides Overrides => new(
        CommandLine.Syntax.With.Name, [.. Options.Where(given => given.Syntax.Name == CommandLine.Syntax.With.Name).Select(given => given.Value)]);

    public bool Has(OptionSyntax option) => ValueOf(option) is not null;

    /// <summary>The option's last value, empty for one that takes none, or null when it was not given.</summary>
    public string? ValueOf(OptionSyntax option)
    {
        string? value = null;
        foreach (var given in Options)
        {
            value = given.Syntax == option ? given.Value : value;
        }

        return value;
    }
}

/// <summary>An option as it was given.</summary>
/// <param name="Syntax">Which option.</param>
/// <param name="Value">Its value, empty for one that takes none.</param>
internal sealed record GivenOption(OptionSyntax Syntax, string Value);
