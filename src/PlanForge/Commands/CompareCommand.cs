using System.Text;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.CommandLine;
using PlanForge.Comparing;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Says what a change of a design leaves to print, cut or sand: in words, as JSON, as sheets at true size.</summary>
internal sealed class CompareCommand(Terminal terminal, Arguments arguments)
{
    private readonly Messages _messages = new(terminal, arguments.Has(Syntax.Quiet));
    private string _path = Syntax.Program;

    /// <summary>Runs the command.</summary>
    public ExitCode Run()
    {
        try
        {
            if (SheetOptions.FaultIn(arguments, Syntax.ToChanges, "the sheet of changes") is { } fault)
            {
                _messages.Error(Syntax.Program, fault);
                return ExitCode.CommandLineFault;
            }

            if (arguments.Has(Syntax.WithForNew) && Directory.Exists(arguments.Operands[1]))
            {
                _messages.Error(Syntax.Program, $"`{Syntax.With.Name}` is for the parameters of a description, and NEW, `{arguments.Operands[1]}`, is a folder with what was drawn; name the description");
                return ExitCode.CommandLineFault;
            }

            _path = arguments.ValueOf(Syntax.Profiles) ?? Syntax.Program;
            return PrintOptions.Read(arguments, _messages, out var code) is { } print ? Run(print) : code;
        }
        catch (FolderFault fault)
        {
            _messages.Error(fault.Path, fault.Message);
            return ExitCode.FileSystemFault;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            _messages.Error(_path, ReadFault.ReasonOf(_path, failed, "a description"));
            return ExitCode.FileSystemFault;
        }
    }

    private ExitCode Run(PrintChoice print)
    {
        _path = arguments.Operands[0];
        var old = DesignSource.Of(_path, ParameterOverrides.None);
        var oldPlanning = Task.Run(() => Plan(old));
        _path = arguments.Operands[1];
        var now = DesignSource.Of(_path, arguments.Overrides);
        var newPlan = Plan(now);
        _path = arguments.Operands[0];
        var oldPlan = oldPlanning.GetAwaiter().GetResult();

        // What the old design is warned of was said when it was drawn.
        Tell(oldPlan.Findings.Where(finding => finding.Severity == Severity.Error), oldPlan);
        Tell(newPlan.Findings, newPlan);
        return oldPlan.Design is { } oldDesign && newPlan.Design is { } newDesign
            ? Show(DesignComparison.Of(oldDesign, old.Drawn, newDesign), newPlan, print)
            : ExitCode.DescriptionFault;
    }

    private static PlanningResult Plan(DesignSource source) => Planner.Plan(source.Description, source.Overrides);

    private ExitCode Show(DesignComparison comparison, PlanningResult planning, PrintChoice print)
    {
        var said = "";
        if (arguments.ValueOf(Syntax.ToChanges) is { } path)
        {
            _path = path;
            if (!ChangesFile.HasDrawings(comparison))
            {
                said = $"\n{path}: not written, for no part's lines differ\n";
            }
            else if (Write(path, comparison, planning, print, out var code) is { } sheet)
            {
                said = $"\n{path}: {Counts.Of(sheet.Count, "page")}, print at 100 %\n";
            }
            else
            {
                return code;
            }
        }

        if (arguments.Has(Syntax.Json))
        {
            terminal.Results.Write(Encoding.UTF8.GetString(ComparisonReport.Of(comparison)));
        }
        else if (!arguments.Has(Syntax.Quiet))
        {
            terminal.Results.Write(ComparisonSummary.Of(comparison) + said);
        }

        return ExitCode.Done;
    }

    private TrueSizeFile? Write(string path, DesignComparison comparison, PlanningResult planning, PrintChoice print, out ExitCode code)
    {
        var findings = new List<Diagnostic>();
        var sheet = ChangesFile.Of(comparison, print, findings);
        Tell(findings, planning);
        code = ExitCode.DescriptionFault;
        if (sheet is not null && !SingleFile.TryWrite(path, sheet.Content, mayReplace: arguments.Has(Syntax.Force)))
        {
            _messages.Error(path, SingleFile.AnotherStands);
            code = ExitCode.FileSystemFault;
            return null;
        }

        return sheet;
    }

    private void Tell(IEnumerable<Diagnostic> findings, PlanningResult planning)
    {
        foreach (var finding in findings)
        {
            _messages.Finding(finding, planning.Texts.GetValueOrDefault(finding.At.File, ""));
        }
    }
}
