using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PlanForge.CommandLine;
using PlanForge.Drafting.Charts;
using PlanForge.Folders;
using PlanForge.Output.Svg;
using PlanForge.Terminals;
using PlanForge.Varying;

namespace PlanForge.Commands;

/// <summary>Works a design out for several values of one parameter and shows the key figures that vary.</summary>
internal sealed class VaryCommand(Terminal terminal, Arguments arguments)
{
    private const int UsualSteps = 7;
    private const int MostSteps = 200;

    private readonly Messages _messages = new(terminal, arguments.Has(Syntax.Quiet));

    /// <summary>Runs the command.</summary>
    public ExitCode Run()
    {
        var steps = UsualSteps;
        if (arguments.ValueOf(Syntax.Steps) is { } given
            && !(int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out steps) && steps is >= 2 and <= MostSteps))
        {
            return Fail($"`{Syntax.Steps.Name}` cannot be `{given}`; it must be a whole number from 2 to {MostSteps}");
        }

        if (VariationRange.Read(arguments.Operands[1], steps) is not { } range)
        {
            return Fail($"`{arguments.Operands[1]}` is no range; write the parameter, `=` and both ends, such as `body_width=80mm..110mm`");
        }

        if (arguments.Has(Syntax.Csv) && arguments.Has(Syntax.Json))
        {
            return Fail($"`{Syntax.Csv.Name}` and `{Syntax.Json.Name}` cannot both be printed");
        }

        if (arguments.ValueOf(Syntax.Chart) is { } chart && !chart.EndsWith(".svg", StringComparison.OrdinalIgnoreCase))
        {
            return Fail($"`{Syntax.Chart.Name} {chart}`: a chart ends in .svg");
        }

        return Run(arguments.Operands[0], range);
    }

    private ExitCode Run(string path, VariationRange range)
    {
        using var signals = new StopSignals();
        try
        {
            return Show(Variation.Of(path, range, arguments.Overrides, Syntax.Vary.Name, signals.Token));
        }
        catch (OperationCanceledException)
        {
            _messages.Error(Syntax.Program, "stopped");
            return signals.ExitCode;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _messages.Error(path, ReadFault.ReasonOf(path, fault, "a description"));
            return ExitCode.FileSystemFault;
        }
    }

    private ExitCode Show(Variation variation)
    {
        // With no step to show, the first one's faults are those of the description or the range.
        if (variation.Steps.All(step => !step.Faults.IsEmpty))
        {
            foreach (var fault in variation.Steps[0].Faults)
            {
                _messages.Finding(fault, variation.Steps[0].Texts.GetValueOrDefault(fault.At.File, ""));
            }

            return ExitCode.DescriptionFault;
        }

        terminal.Results.Write(
            arguments.Has(Syntax.Json) ? Encoding.UTF8.GetString(VariationData.ToJson(variation))
            : arguments.Has(Syntax.Csv) ? VariationData.ToCsv(variation)
            : arguments.Has(Syntax.Quiet) ? ""
            : VariationTable.Of(variation));
        return arguments.ValueOf(Syntax.Chart) is { } chart ? Write(chart, variation) : ExitCode.Done;
    }

    private ExitCode Write(string path, Variation variation)
    {
        var own = ShownUnit.Of(variation.Dimension, variation.Unit);
        var curves = ImmutableArray.CreateBuilder<ChartCurve>();
        foreach (var figure in variation.Drawn)
        {
            var unit = ShownUnit.Of(figure.Quantity, variation.Unit);
            var steps = variation.Steps.Where(step => step.Value is not null).OrderBy(step => step.Value);
            curves.Add(new(figure.Label, unit.Name, [.. steps.Select(step => (step.Value!.Value * own.Factor, step.ValueOf(figure.Key) * unit.Factor))]));
        }

        if (curves.Count == 0)
        {
            _messages.Warning(path, "no key figure varies: there is nothing to draw");
            return ExitCode.Done;
        }

        var across = own.Name.Length > 0 ? $"{variation.Parameter} ({own.Name})" : variation.Parameter;
        var sheet = CurveChart.Draw($"{variation.Design}: key figures over {across}", across, curves.ToImmutable());
        if (!SingleFile.TryWrite(path, SvgWriter.Write(sheet), arguments.Has(Syntax.Force)))
        {
            _messages.Error(path, $"there is another file of this name; give one of another name, or {Syntax.Force.Name} to write over it");
            return ExitCode.FileSystemFault;
        }

        return ExitCode.Done;
    }

    private ExitCode Fail(string message)
    {
        _messages.Error(Syntax.Program, message);
        return ExitCode.CommandLineFault;
    }
}
