using System.Runtime.InteropServices;

namespace PlanForge.Terminals;

/// <summary>
/// Turns the first Ctrl-C or SIGTERM into a request to stop, so that a run can clear up; the second ends the process as usual.
/// </summary>
internal sealed class StopSignals : IDisposable
{
    private readonly CancellationTokenSource _source = new();
    private readonly PosixSignalRegistration _interrupt;
    private readonly PosixSignalRegistration _terminate;

    public StopSignals()
    {
        _interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, context => Request(context, ExitCode.Interrupted));
        _terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, context => Request(context, ExitCode.Terminated));
    }

    /// <summary>Set by the first signal.</summary>
    public CancellationToken Token => _source.Token;

    /// <summary>The exit code that names the signal.</summary>
    public ExitCode ExitCode { get; private set; } = ExitCode.Interrupted;

    public void Dispose()
    {
        _interrupt.Dispose();
        _terminate.Dispose();
        _source.Dispose();
    }

    private void Request(PosixSignalContext context, ExitCode code)
    {
        if (_source.IsCancellationRequested)
        {
            return;
        }

        context.Cancel = true;
        ExitCode = code;
        _source.Cancel();
    }
}
