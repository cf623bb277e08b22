using System.Collections.Immutable;

namespace PlanForge.CommandLine;

/// <summary>A command line that is in order.</summary>
/// <param name="Command">The command; <see cref="Syntax.HelpCommand"/> when <c>--help</c> stands anywhere.</param>
/// <param name="Operands">Its operands in the order given.</param>
/// <param name="Options">Its options in the order given.</param>
internal sealed record Arguments(CommandSyntax Command, ImmutableArray<string> Operands, ImmutableArray<GivenOption> Options)
{
    public bool Has(OptionSyntax option) => ValueOf(option) is not null;

    /// <summary>All values of an option that may be given several times, in the order given.</summary>
    public ImmutableArray<string> ValuesOf(OptionSyntax option)
    {
        var values = ImmutableArray.CreateBuilder<string>();
        foreach (var given in Options)
        {
            if (given.Syntax == option)
            {
                values.Add(given.Value);
            }
        }

        return values.ToImmutable();
    }

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
internal readonly record struct GivenOption(OptionSyntax Syntax, string Value);
