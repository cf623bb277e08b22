using System.Collections.Immutable;
using System.Text;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Measuring;
using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Parts;
using PlanForge.Parts.Bench.Measuring;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Turns what was measured at the building board into corrections.</summary>
internal sealed class BenchCommand(Terminal terminal, ParameterOverrides overrides, bool isQuiet, bool isJson)
{
    private readonly Messages _messages = new(terminal, isQuiet);
    private readonly Dictionary<string, string> _texts = new(StringComparer.Ordinal);

    /// <summary>Runs the command.</summary>
    /// <param name="design">The description.</param>
    /// <param name="measured">The file of measurements.</param>
    public ExitCode Run(string design, string measured)
    {
        var path = design;
        try
        {
            var read = Planner.Read(design, overrides, _texts, ImmutableArray.CreateBuilder<SourceFile>());
            var findings = new List<Diagnostic>(read.Diagnostics);
            if (read.Airframe is not { } description || RiggedAirframe.Of(description, findings) is not { } airframe)
            {
                return Fail(findings);
            }

            path = measured;
            var text = TextFile.Read(measured, out _, out var fault);
            _texts[measured] = text;
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

            return Show(airframe, BenchResult.Of(airframe, measurements));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            _messages.Error(path, ReadFault.ReasonOf(path, failed, "a file"));
            return ExitCode.FileSystemFault;
        }
    }

    private ExitCode Show(RiggedAirframe airframe, BenchResult result)
    {
        foreach (var finding in result.Findings)
        {
            _messages.Finding(finding, _texts.GetValueOrDefault(finding.At.File, ""));
        }

        if (result.Findings.Any(finding => finding.Severity == Severity.Error))
        {
            return ExitCode.DescriptionFault;
        }

        if (isJson)
        {
            terminal.Results.Write(Encoding.UTF8.GetString(BenchReport.Of(airframe, result)));
        }
        else if (!isQuiet)
        {
            terminal.Results.Write(BenchSummary.Of(airframe, result));
        }

        return ExitCode.Done;
    }

    private ExitCode Fail(IEnumerable<Diagnostic> findings)
    {
        foreach (var finding in findings)
        {
            _messages.Finding(finding, _texts.GetValueOrDefault(finding.At.File, ""));
        }

        return ExitCode.DescriptionFault;
    }
}
