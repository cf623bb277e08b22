using PlanForge.CommandLine;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Folders;
using PlanForge.Printers;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>What draw was told about printing.</summary>
internal static class PrintOptions
{
    /// <summary>The choice; null, and why said, when it cannot be had.</summary>
    /// <exception cref="IOException">The profiles cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The profiles may not be read.</exception>
    public static PrintChoice? Read(Arguments arguments, Messages messages, out ExitCode code)
    {
        code = ExitCode.CommandLineFault;
        Paper? paper = null;
        if (arguments.ValueOf(Syntax.Tiles) is { } name)
        {
            paper = Paper.Find(name);
            if ((paper is null ? PaperNames.Unknown(name) : new TileOptions(paper).Fault()) is { } fault)
            {
                messages.Error(Syntax.Program, fault);
                return null;
            }
        }

        PrinterScale? scale = null;
        if (arguments.ValueOf(Syntax.Printer) is { } printer)
        {
            var store = new ProfileStore(arguments.ValueOf(Syntax.Profiles) ?? ProfileFile.DefaultPath, messages);
            if (store.Find(printer, out code) is not { } profile)
            {
                return null;
            }

            scale = profile.Scale;
        }

        return new(paper, scale);
    }
}
