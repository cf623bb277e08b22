using System.Text;
using PlanForge.Designs;
using PlanForge.Reports;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Computes everything and shows the figures.</summary>
internal sealed class CheckCommand(Terminal terminal, bool isQuiet, bool isJson) : DesignCommand(terminal, isQuiet)
{
    private bool _isFirst = true;

    protected override ExitCode Use(string file, Design design, CancellationToken stop)
    {
        if (isJson)
        {
            Messages.ClearProgress();
            Results.Write(Encoding.UTF8.GetString(Report.Of(design)));
        }
        else if (!IsQuiet)
        {
            Messages.ClearProgress();
            Results.Write((_isFirst ? "" : "\n") + Summary.Of(design));
            _isFirst = false;
        }

        return ExitCode.Done;
    }
}
