namespace PlanForge.Following;

/// <summary>
/// Decides when to redraw after a file changed: once it has been left alone for a moment, or after a while when it never is. Time is
/// passed in, counted from any fixed start.
/// </summary>
internal sealed class SaveDebounce
{
    private TimeSpan? _first;
    private TimeSpan? _last;

    /// <summary>How long files must have been left alone: a save often is several steps.</summary>
    public static TimeSpan Pause { get; } = TimeSpan.FromMilliseconds(100);

    /// <summary>How long after the first change to wait at most.</summary>
    public static TimeSpan Longest { get; } = TimeSpan.FromSeconds(1);

    /// <summary>True while a change was noticed and not yet settled.</summary>
    public bool IsPending => _first is not null;

    /// <summary>When to look at the files; null while nothing changed.</summary>
    public TimeSpan? Due => _first is { } first && _last is { } last
        ? TimeSpan.FromTicks(Math.Min((last + Pause).Ticks, (first + Longest).Ticks))
        : null;

    /// <summary>A change was noticed.</summary>
    public void Changed(TimeSpan now)
    {
        _first ??= now;
        _last = now;
    }

    /// <summary>
    /// Waits on for a description that is gone for the moment, as while an editor puts a new file in its place. False when it has been
    /// waited for long enough.
    /// </summary>
    public bool WaitOn(TimeSpan now)
    {
        if (_first is not { } first || now >= first + Longest)
        {
            return false;
        }

        _last = now;
        return true;
    }

    /// <summary>What changed has been seen to.</summary>
    public void Settle() => (_first, _last) = (null, null);
}
