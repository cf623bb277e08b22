using PlanForge.Airframe.Reading;
using PlanForge.CommandLine;
using PlanForge.Designs;
using PlanForge.Drafting.Nests;
using PlanForge.Folders;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>
/// What draw and check have in common: descriptions are worked out side by side, shown and written one after the other in the
/// order given; the highest exit code counts.
/// </summary>
/// <typeparam name="T">What is worked out from a design.</typeparam>
internal abstract class DesignCommand<T>(Terminal terminal, ParameterOverrides overrides, bool isQuiet)
{
    /// <summary>Where results go.</summary>
    protected TextWriter Results => terminal.Results;

    /// <summary>Where messages go.</summary>
    protected Messages Messages { get; } = new(terminal, isQuiet);

    /// <summary>How many arrangements of each stock's parts are tried.</summary>
    protected virtual int Effort => NestOptions.UsualEffort;

    /// <summary>What is kept from earlier runs on the same description; nothing, where there are several descriptions.</summary>
    protected virtual KeptWork Kept => new();

    /// <summary>True when only warnings and errors are wanted.</summary>
    protected bool IsQuiet => isQuiet;

    /// <summary>What was read and planned last; null when a description could not be read.</summary>
    public PlanningResult? Planning { get; private set; }

    /// <summary>Runs the command on each description, whatever becomes of the others, until Ctrl-C.</summary>
    public ExitCode Run(IReadOnlyList<string> files)
    {
        using var signals = new StopSignals();
        try
        {
            return Run(files, signals.Token);
        }
        catch (OperationCanceledException)
        {
            Messages.Error(Syntax.Program, "stopped");
            return signals.ExitCode;
        }
    }

    /// <summary>Runs the command on each description, whatever becomes of the others.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public ExitCode Run(IReadOnlyList<string> files, CancellationToken stop)
    {
        var started = new Queue<Task<Worked>>();
        var worst = ExitCode.Done;
        try
        {
            for (var i = 0; i < files.Count; i++)
            {
                while (started.Count < Environment.ProcessorCount && i + started.Count < files.Count)
                {
                    var next = files[i + started.Count];
                    started.Enqueue(Task.Run(() => Work(next, stop), stop));
                }

                Messages.Progress(FormattableString.Invariant($"{files[i]} ({i + 1} of {files.Count})"));
                var code = Finish(files[i], started.Dequeue(), stop);
                worst = code > worst ? code : worst;
            }

            return worst;
        }
        finally
        {
            Messages.ClearProgress();
        }
    }

    /// <summary>Begins to work out what of a design is to be shown or written; called on any thread, for several designs at a time.</summary>
    protected abstract IDesignWork<T> Begin(KeptWork kept, CancellationToken stop);

    /// <summary>Shows or writes it.</summary>
    protected abstract ExitCode Use(string file, Design design, T result, CancellationToken stop);

    private Worked Work(string file, CancellationToken stop)
    {
        var kept = Kept;
        var work = Begin(kept, stop);
        var planning = Planner.Plan(file, overrides, Effort, kept, stop, work.CutsKnown);
        return new(planning, planning.Design is { } design ? work.Finish(design) : default);
    }

    private ExitCode Finish(string file, Task<Worked> task, CancellationToken stop)
    {
        try
        {
            // Stopping does not wait for what is being worked out: nothing is written before this.
            Planning = null;
            var worked = task.WaitAsync(stop).GetAwaiter().GetResult();
            Planning = worked.Planning;
            Messages.ClearProgress();
            foreach (var finding in worked.Planning.Findings)
            {
                Messages.Finding(finding, worked.Planning.Texts.GetValueOrDefault(finding.At.File, ""));
            }

            return worked.Planning.Design is { } design ? Use(file, design, worked.Result!, stop) : ExitCode.DescriptionFault;
        }
        catch (FolderFault fault)
        {
            Messages.Error(fault.Path, fault.Message);
            return ExitCode.FileSystemFault;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            Messages.Error(file, ReadFault.ReasonOf(file, fault, "a description"));
            return ExitCode.FileSystemFault;
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            // One description that shows up a mistake of ours must not keep the others from being drawn.
            Messages.Error(file, $"internal error, please report it with the description\n{fault}");
            return ExitCode.InternalFault;
        }
    }

    private sealed record Worked(PlanningResult Planning, T? Result);
}
