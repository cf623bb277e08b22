using PlanForge.Airframe.Reading;
using PlanForge.CommandLine;
using PlanForge.Drafting.Printing;
using PlanForge.Drafting.Sheets;
using PlanForge.Folders;
using PlanForge.Output.Pdf;
using PlanForge.Printers;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Writes the page to measure a printer by, or keeps what was measured.</summary>
internal sealed class CalibrateCommand(Terminal terminal, Arguments arguments)
{
    private const string DefaultPaper = "A4";

    private readonly Messages _messages = new(terminal, arguments.Has(Syntax.Quiet));

    /// <summary>Runs the command.</summary>
    public ExitCode Run()
    {
        var name = arguments.ValueOf(Syntax.OnPaper) ?? DefaultPaper;
        if (Paper.Find(name) is not { } paper)
        {
            return Fail(PaperNames.Unknown(name));
        }

        if (CalibrationPage.Fault(paper) is { } fault)
        {
            return Fail(fault);
        }

        try
        {
            return arguments.ValueOf(Syntax.Printer) is { } printer ? Keep(printer, paper)
                : arguments.Has(Syntax.Across) || arguments.Has(Syntax.Up) ? Fail("measures belong to a printer: give its name with --printer")
                : WritePage(paper);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            _messages.Error(Syntax.Program, failed.Message);
            return ExitCode.FileSystemFault;
        }
    }

    private ExitCode WritePage(Paper paper)
    {
        var path = arguments.ValueOf(Syntax.ToFile) ?? $"calibration-{paper.Name.ToLowerInvariant()}.pdf";
        var page = PdfWriter.Write(CalibrationPage.Draw(paper), new(ToolVersion.Producer));
        if (!SingleFile.TryWrite(path, page, mayReplace: arguments.Has(Syntax.Force)))
        {
            _messages.Error(path, SingleFile.AnotherStands);
            return ExitCode.FileSystemFault;
        }

        Say($"{path}: print it at 100 % and measure\n");
        return ExitCode.Done;
    }

    private ExitCode Keep(string name, Paper paper)
    {
        if (name.Length > PrinterProfile.LongestName || name.Any(char.IsControl))
        {
            return Fail(PrinterProfile.NameFault);
        }

        var (drawnAcross, drawnUp) = CalibrationPage.BarsOn(paper);
        if (Measured(Syntax.Across) is not { } across || Measured(Syntax.Up) is not { } up)
        {
            return ExitCode.CommandLineFault;
        }

        var path = arguments.ValueOf(Syntax.Profiles) ?? ProfileFile.DefaultPath;
        var store = new ProfileStore(path, _messages);
        var profile = new PrinterProfile(name, paper, new(drawnAcross, across), new(drawnUp, up));
        if (!store.IsSound(profile))
        {
            return ExitCode.CommandLineFault;
        }

        if (!store.Keep(profile))
        {
            return ExitCode.DescriptionFault;
        }

        Say(FormattableString.Invariant($"{path}: {name}, across × {profile.Scale.X:F4}, up × {profile.Scale.Y:F4}\n"));
        return ExitCode.Done;
    }

    private double? Measured(OptionSyntax option)
    {
        if (arguments.ValueOf(option) is not { } text)
        {
            Fail($"what does the bar measure? {option.Name} is missing");
            return null;
        }

        if (LengthText.Read(text, out var fault) is not { } length)
        {
            Fail($"{option.Name} {text}: {fault}");
            return null;
        }

        if (length <= 0)
        {
            Fail($"{option.Name} {text}: a bar is longer than 0 mm");
            return null;
        }

        return length;
    }

    private void Say(string result)
    {
        if (!arguments.Has(Syntax.Quiet))
        {
            terminal.Results.Write(result);
        }
    }

    private ExitCode Fail(string message)
    {
        _messages.Error(Syntax.Program, message);
        return ExitCode.CommandLineFault;
    }
}
