using System.Diagnostics;
using PlanForge.Airframe.Reading;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Following;
using PlanForge.Terminals;

namespace PlanForge.Commands;

/// <summary>Draws a description, and again whenever it, its sections or the cutter's profile are saved, until it is stopped.</summary>
internal sealed class FollowCommand(Terminal terminal, ParameterOverrides overrides, bool isQuiet, string folder, DrawChoice choice, IDisk disk)
{
    private readonly Messages _messages = new(terminal, isQuiet);
    private readonly KeptWork _kept = new();
    private string? _drawnFolder;

    /// <summary>Runs the command: Ctrl-C is how it ends, not a fault.</summary>
    /// <param name="file">The description.</param>
    public ExitCode Run(string file)
    {
        using var signals = new StopSignals();
        var stop = signals.Token;
        try
        {
            var code = new Follower(file, () => Draw(file, stop)).Run(() => Begin(file), stop);
            return stop.IsCancellationRequested ? End(signals) : code;
        }
        catch (OperationCanceledException)
        {
            return End(signals);
        }
    }

    private static ExitCode End(StopSignals signals) => signals.ExitCode == ExitCode.Interrupted ? ExitCode.Done : signals.ExitCode;

    private void Begin(string file)
    {
        if (!isQuiet)
        {
            _messages.Line($"following {file} and what it includes; Ctrl-C ends this");
        }
    }

    private FollowedRun Draw(string file, CancellationToken stop)
    {
        using var draw = new TimedDraw(terminal, overrides, isQuiet, folder, choice, disk, _kept, _drawnFolder);
        var code = draw.Run([file], stop);
        if (code != ExitCode.Done && _drawnFolder is not null)
        {
            _messages.Line("nothing was written; what was drawn last is kept");
        }

        if (code == ExitCode.Done)
        {
            _drawnFolder = draw.Target;
            _kept.EndRun();
        }

        terminal.Results.Flush();

        // Now nobody waits: what this run dropped need not be cleared away in the middle of the next one.
        GC.Collect(1);
        return new(code, draw.Planning);
    }

    /// <summary>A drawing that tells how long it took; what it took is for the terminal alone.</summary>
    private sealed class TimedDraw(
        Terminal terminal, ParameterOverrides overrides, bool isQuiet, string folder, DrawChoice choice, IDisk disk, KeptWork kept, string? drawnFolder)
        : DrawCommand(terminal, overrides, isQuiet, folder, choice, disk), IDisposable
    {
        private readonly Stopwatch _clock = Stopwatch.StartNew();
        private readonly FolderAhead? _ahead = drawnFolder is null ? null : new(drawnFolder, disk, kept.Files.Written);

        /// <summary>The folder that was written; null while none was.</summary>
        public string? Target { get; private set; }

        protected override KeptWork Kept => kept;

        public void Dispose() => _ahead?.Dispose();

        protected override DesignFolder Open(string target, IDisk disk)
        {
            Target = target;
            return _ahead?.Take(target) ?? DesignFolder.Open(target, disk, kept.Files.Written);
        }

        protected override void Show(string summary) =>
            base.Show(FormattableString.Invariant($"{(drawnFolder is null ? "drawn" : "redrawn")} in {_clock.ElapsedMilliseconds} ms: {summary}"));
    }
}
