using System.Text;
using PlanForge.Airframe.Reading;
using PlanForge.CommandLine;
using PlanForge.Currency;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Says whether a piece of paper or wood, known by the fingerprint on it, is of the design as it is now.</summary>
internal sealed class CurrentCommand(Terminal terminal, ParameterOverrides overrides, bool isQuiet, bool isJson, string folder)
{
    private readonly Messages _messages = new(terminal, isQuiet);

    /// <summary>Runs the command.</summary>
    /// <param name="file">The description.</param>
    /// <param name="text">The fingerprint as it was read off.</param>
    public ExitCode Run(string file, string text)
    {
        if (FingerprintCode.Read(text) is not { } code)
        {
            _messages.Error(Syntax.Program, $"`{text}` is no fingerprint; it is six letters and figures, such as K7F3-2Q, in the title block, beside a part's material, or on the wood");
            return ExitCode.CommandLineFault;
        }

        try
        {
            var planning = Planner.Plan(file, overrides);
            foreach (var finding in planning.Findings)
            {
                _messages.Finding(finding, planning.Texts.GetValueOrDefault(finding.At.File, ""));
            }

            if (planning.Design is not { } design)
            {
                return ExitCode.DescriptionFault;
            }

            var now = DrawnState.Of(design);
            var check = CurrencyCheck.Of(code, now, History.StatesIn(Path.Combine(folder, FolderName.Of(design.Airframe.Name))));
            var since = check.Past is { } past ? ChangesSince.Of(past, now, design) : null;
            terminal.Results.Write(isJson ? Encoding.UTF8.GetString(CurrencyReport.Of(check, now, since)) : isQuiet ? "" : CurrencyText.Of(check, now, since));
            return check.IsCurrent ? ExitCode.Done : ExitCode.NotCurrent;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            _messages.Error(file, ReadFault.ReasonOf(file, fault, "a description"));
            return ExitCode.FileSystemFault;
        }
    }
}
