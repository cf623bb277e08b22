using System.Text;
using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Computes everything and shows the figures.</summary>
internal sealed class CheckCommand(Terminal terminal, ParameterOverrides overrides, bool isQuiet, bool isJson)
    : DesignCommand<string>(terminal, overrides, isQuiet)
{
    private bool _isFirst = true;

    protected override string WorkOut(Design design, KeptWork kept, CancellationToken stop) =>
        isJson ? Encoding.UTF8.GetString(Report.Of(design)) : IsQuiet ? "" : Summary.Of(design);

    protected override ExitCode Use(string file, Design design, string result, CancellationToken stop)
    {
        // A blank line parts summaries; JSON needs none, and with nothing to print there is nothing to part.
        Results.Write(_isFirst || isJson || IsQuiet ? result : "\n" + result);
        _isFirst = false;
        return ExitCode.Done;
    }
}
