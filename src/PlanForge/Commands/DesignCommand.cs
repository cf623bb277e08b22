using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>What draw and check have in common: every description is planned and its findings shown; the highest exit code counts.</summary>
internal abstract class DesignCommand(Terminal terminal, bool isQuiet)
{
    /// <summary>Where results go.</summary>
    protected TextWriter Results => terminal.Results;

    /// <summary>Where messages go.</summary>
    protected Messages Messages { get; } = new(terminal, isQuiet);

    /// <summary>True when only warnings and errors are wanted.</summary>
    protected bool IsQuiet => isQuiet;

    /// <summary>Runs the command on each description, whatever becomes of the others.</summary>
    public ExitCode Run(IEnumerable<string> files)
    {
        using var signals = new StopSignals();
        try
        {
            var worst = ExitCode.Done;
            foreach (var file in files)
            {
                var code = Run(file, signals.Token);
                worst = code > worst ? code : worst;
            }

            return worst;
        }
        catch (OperationCanceledException)
        {
            Messages.Error(CommandLine.Syntax.Program, "stopped");
            return signals.ExitCode;
        }
        finally
        {
            Messages.ClearProgress();
        }
    }

    /// <summary>Does with a design what the command is for.</summary>
    protected abstract ExitCode Use(string file, Design design, CancellationToken stop);

    private ExitCode Run(string file, CancellationToken stop)
    {
        try
        {
            var result = Planner.Plan(file, doing => Messages.Progress(file, doing), stop);
            foreach (var finding in result.Findings)
            {
                Messages.Finding(finding, result.Texts.GetValueOrDefault(finding.At.File, ""));
            }

            return result.Design is { } design ? Use(file, design, stop) : ExitCode.DescriptionFault;
        }
        catch (FolderFault fault)
        {
            Messages.Error(fault.Path, fault.Message);
            return ExitCode.FileSystemFault;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            Messages.Error(file, ReasonOf(file, fault));
            return ExitCode.FileSystemFault;
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            // One description that shows up a mistake of ours must not keep the others from being drawn.
            Messages.Error(file, $"internal error, please report it with the description\n{fault}");
            return ExitCode.InternalFault;
        }
    }

    private static string ReasonOf(string file, Exception fault) => fault switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        _ when Directory.Exists(file) => "this is a folder, not a description",
        _ => $"cannot be read: {fault.Message}",
    };
}
