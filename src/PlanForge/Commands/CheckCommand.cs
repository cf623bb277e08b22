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

    protected override IDesignWork<string> Begin(KeptWork kept, CancellationToken stop) => new Figures(isJson, IsQuiet);

    protected override ExitCode Use(string file, Design design, string result, CancellationToken stop)
    {
        // A blank line parts summaries; JSON needs none, and with nothing to print there is nothing to part.
        Results.Write(_isFirst || isJson || IsQuiet ? result : "\n" + result);
        _isFirst = false;
        return ExitCode.Done;
    }

    private sealed class Figures(bool isJson, bool isQuiet) : IDesignWork<string>
    {
        public void CutsKnown(DesignCuts cuts)
        {
            // All figures are told at once.
        }

        public string Finish(Design design) => isJson ? Encoding.UTF8.GetString(Report.Of(design)) : isQuiet ? "" : Summary.Of(design);
    }
}
