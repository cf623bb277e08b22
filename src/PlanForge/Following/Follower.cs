using System.Diagnostics;
using PlanForge.Designs;

namespace PlanForge.Following;

/// <summary>Runs something once, then again whenever a file it was made from has changed.</summary>
internal sealed class Follower
{
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly SaveDebounce _debounce = new();
    private readonly string _description;
    private readonly Func<FollowedRun> _run;
    private FollowedFiles _files;
    private TimeSpan _nextLook = Look;
    private bool _isRetried;

    /// <summary>Prepares to follow.</summary>
    /// <param name="description">The description, as the user gave it.</param>
    /// <param name="run">Draws; tells what was read.</param>
    public Follower(string description, Func<FollowedRun> run) => (_description, _run, _files) = (description, run, FollowedFiles.Of(description));

    /// <summary>How often to look at the files without being told of a change.</summary>
    public static TimeSpan Look { get; } = TimeSpan.FromSeconds(2);

    /// <summary>Follows until told to stop; ends at once when the description cannot be read at the start.</summary>
    /// <param name="started">Called after the first run.</param>
    /// <param name="stop">Told when to stop.</param>
    public ExitCode Run(Action started, CancellationToken stop)
    {
        using var changed = new AutoResetEvent(false);
        using var notices = new FileNotices(() => changed.Set());
        var code = Redraw(notices);
        if (code is ExitCode.FileSystemFault or ExitCode.InternalFault && !File.Exists(_description))
        {
            return code;
        }

        started();
        WaitHandle[] handles = [stop.WaitHandle, changed];
        while (WaitHandle.WaitAny(handles, UntilNextStep()) is var woken && !stop.IsCancellationRequested)
        {
            Step(notices, isTold: woken == 1);
        }

        return ExitCode.Done;
    }

    private TimeSpan UntilNextStep()
    {
        var wait = (_debounce.Due ?? _nextLook) - _clock.Elapsed;
        return wait > TimeSpan.Zero ? wait : TimeSpan.Zero;
    }

    private void Step(FileNotices notices, bool isTold)
    {
        var now = _clock.Elapsed;
        if (isTold)
        {
            _debounce.Changed(now);
        }
        else if (!_debounce.IsPending && now >= _nextLook)
        {
            _nextLook = now + Look;
            if (!_files.AreCurrent())
            {
                // Nobody told: the folder may be another one by now.
                notices.Watch(_files.Paths);
                _debounce.Changed(now);
            }
        }

        if (_debounce.Due is not { } due || now < due || (!File.Exists(_description) && _debounce.WaitOn(now)))
        {
            return;
        }

        _debounce.Settle();
        if (_isRetried || !_files.AreCurrent())
        {
            Redraw(notices);
        }
    }

    private ExitCode Redraw(FileNotices notices)
    {
        var run = _run();
        _files = run.Planning is { } planning ? _files.After(planning) : _files.AsTheyAre();

        // A full disk or a folder that may not be written is not in the files: saving again tries again.
        _isRetried = run.Code is ExitCode.FileSystemFault;
        notices.Watch(_files.Paths);

        // What changed while it was drawn, before it was watched, nobody tells.
        if (!_isRetried && !_files.AreCurrent())
        {
            _debounce.Changed(_clock.Elapsed);
        }

        _nextLook = _clock.Elapsed + Look;
        return run.Code;
    }
}

/// <summary>What came of a run.</summary>
/// <param name="Code">How it ended.</param>
/// <param name="Planning">What was read and planned; null when the files could not be read.</param>
internal readonly record struct FollowedRun(ExitCode Code, PlanningResult? Planning);
