using System.Globalization;
using PlanForge.CommandLine;
using PlanForge.Drafting.Nests;
using PlanForge.Folders;
using PlanForge.Output.Dxf;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>What draw was told besides its files.</summary>
internal static class DrawOptions
{
    private const int GreatestEffort = 100_000;
    private static readonly string[] Versions = ["r2000", "r12"];

    /// <summary>The choice; null, and why said, when it cannot be had.</summary>
    /// <exception cref="IOException">The profiles of printers cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The profiles of printers may not be read.</exception>
    public static DrawChoice? Read(Arguments arguments, Messages messages, out ExitCode code)
    {
        if (PrintOptions.Read(arguments, messages, out code) is not { } print)
        {
            return null;
        }

        code = ExitCode.CommandLineFault;
        var version = arguments.ValueOf(Syntax.Dxf) ?? Versions[0];
        var isR12 = string.Equals(version, Versions[1], StringComparison.OrdinalIgnoreCase);
        if (!isR12 && !string.Equals(version, Versions[0], StringComparison.OrdinalIgnoreCase))
        {
            messages.Error(Syntax.Program, $"`{Syntax.Dxf.Name}` cannot be `{version}`; it must be `{Versions[0]}` or `{Versions[1]}`");
            return null;
        }

        var effort = NestOptions.UsualEffort;
        if (arguments.ValueOf(Syntax.NestEffort) is { } given
            && !(int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out effort) && effort is >= 1 and <= GreatestEffort))
        {
            messages.Error(Syntax.Program, $"`{Syntax.NestEffort.Name}` cannot be `{given}`; it must be a whole number from 1 to 100000");
            return null;
        }

        return new(print, isR12 ? DxfVersion.R12 : DxfVersion.R2000, effort);
    }
}
