using System.Collections.Immutable;
using System.Text;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.CommandLine;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Parts;
using PlanForge.Parts.Bench.Measuring;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Turns what was measured at the building board into corrections: in words, as JSON, as a sheet at true size.</summary>
internal sealed class BenchCommand(Terminal terminal, Arguments arguments)
{
    private readonly Messages _messages = new(terminal, arguments.Has(Syntax.Quiet));
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);
    private readonly ImmutableArray<SourceFile>.Builder _sources = ImmutableArray.CreateBuilder<SourceFile>();
    private string _path = Syntax.Program;

    /// <summary>Runs the command.</summary>
    public ExitCode Run()
    {
        try
        {
            if (SheetOptions.FaultIn(arguments, Syntax.ToSheet, "the correction sheet") is { } fault)
            {
                _messages.Error(Syntax.Program, fault);
                return ExitCode.CommandLineFault;
            }

            _path = arguments.ValueOf(Syntax.Profiles) ?? Syntax.Program;
            return PrintOptions.Read(arguments, _messages, out var code) is { } print ? Run(arguments.Operands[0], arguments.Operands[1], print) : code;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            _messages.Error(_path, ReadFault.ReasonOf(_path, failed, "a file"));
            return ExitCode.FileSystemFault;
        }
    }

    private ExitCode Run(string design, string measured, PrintChoice print)
    {
        _path = design;
        var read = Planner.Read(design, _texts, _sources, overrides: arguments.Overrides);
        var findings = new List<Diagnostic>(read.Diagnostics);
        if (read.Airframe is not { } description || RiggedAirframe.Of(description, findings) is not { } airframe)
        {
            return Fail(findings);
        }

        _path = measured;
        var text = TextFile.Read(measured, out var bytes, out var fault);
        _texts[measured] = text;
        _sources.Add(new(Path.GetFileName(measured), bytes));
        if (fault is not null)
        {
            return Fail([fault]);
        }

        var reading = MeasurementReader.Read(measured, text, description.DisplayUnit);
        if (reading.Measurements is not { } measurements)
        {
            return Fail(reading.Findings);
        }

        if (measurements.Design is { } named && Path.GetFileName(named) != Path.GetFileName(design))
        {
            return Fail([Diagnostic.Error(measurements.DesignAt, $"these were measured on `{named}`, not on `{Path.GetFileName(design)}`")]);
        }

        var result = BenchResult.Of(airframe, measurements);
        return result.Findings.Any(finding => finding.Severity == Severity.Error) ? Fail(result.Findings) : Show(airframe, result, print);
    }

    private ExitCode Show(RiggedAirframe airframe, BenchResult result, PrintChoice print)
    {
        var said = "";
        if (arguments.ValueOf(Syntax.ToSheet) is { } path)
        {
            var findings = new List<Diagnostic>(result.Findings);
            if (CorrectionFile.Of(airframe, result, print, _sources.ToImmutable(), findings) is not { } sheet)
            {
                return Fail(findings);
            }

            _path = path;
            if (!SingleFile.TryWrite(path, sheet.Content, mayReplace: arguments.Has(Syntax.Force)))
            {
                _messages.Error(path, SingleFile.AnotherStands);
                return ExitCode.FileSystemFault;
            }

            Tell(findings);
            said = $"\n{path}: {Counts.Of(sheet.Count, "page")}, print at 100 %\n";
        }
        else
        {
            Tell(result.Findings);
        }

        if (arguments.Has(Syntax.Json))
        {
            terminal.Results.Write(Encoding.UTF8.GetString(BenchReport.Of(airframe, result)));
        }
        else if (!arguments.Has(Syntax.Quiet))
        {
            terminal.Results.Write(BenchSummary.Of(airframe, result) + said);
        }

        return ExitCode.Done;
    }

    private ExitCode Fail(IEnumerable<Diagnostic> findings)
    {
        Tell(findings);
        return ExitCode.DescriptionFault;
    }

    private void Tell(IEnumerable<Diagnostic> findings)
    {
        foreach (var finding in findings)
        {
            _messages.Finding(finding, _texts.GetValueOrDefault(finding.At.File, ""));
        }
    }
}
