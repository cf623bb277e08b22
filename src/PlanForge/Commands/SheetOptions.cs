using PlanForge.CommandLine;

namespace PlanForge.Commands;

/// <summary>Looks through what a command was told about the sheet it can write.</summary>
internal static class SheetOptions
{
    /// <summary>What is wrong, or null.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="to">The option that names the file.</param>
    /// <param name="sheet">What the sheet is called.</param>
    public static string? FaultIn(Arguments arguments, OptionSyntax to, string sheet)
    {
        if (arguments.ValueOf(to) is { } path)
        {
            return path.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase) ? null : $"{to.Name} {path}: {sheet} is a PDF and ends in .pdf";
        }

        foreach (var option in new[] { Syntax.Tiles, Syntax.Printer, Syntax.Force })
        {
            if (arguments.Has(option))
            {
                return $"{option.Name} is for {sheet}: say where it goes with {to.Name} FILE.pdf";
            }
        }

        return null;
    }
}
