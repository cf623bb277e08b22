using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Inputs;

namespace PlanForge.Parts.Shapes;

/// <summary>Curves through some neighbouring stations.</summary>
/// <param name="First">Index of the first of them.</param>
/// <param name="Last">Index of the last of them.</param>
/// <param name="Curves">The curves; each knows what it was made from.</param>
internal sealed record FuselageRun(int First, int Last, FuselageCurves Curves);

/// <summary>
/// The curves of a body, bay by bay, made of no more stations than they depend on: a straight bay of its own two, a fair one of all
/// stations of its spline and of the straight bays beside it, whose slopes it takes.
/// </summary>
internal sealed class FuselageRuns
{
    private FuselageRun? _before;
    private readonly ImmutableArray<FuselageStation> _stations;
    private readonly InputLog _log;

    public FuselageRuns(ImmutableArray<FuselageStation> stations, InputLog log) => (_stations, _log) = (stations, log);

    /// <summary>The curves of a bay.</summary>
    public FuselageRun Of(int bay)
    {
        var stretch = _log.Record(() => Stretch(bay));
        var (first, last) = stretch.Unnoted;

        // All bays of a run read the same of it.
        if (_before is { } before && before.First == first && before.Last == last)
        {
            return before;
        }

        return _before = new(first, last, FuselageCurves.Through(_stations[first..(last + 1)], stretch.Inputs, _log));
    }

    private Range Stretch(int bay)
    {
        if (!IsFair(bay))
        {
            return new(bay, bay + 1);
        }

        int first = bay, last = bay + 1;
        while (first > 0 && IsFair(first - 1))
        {
            first--;
        }

        while (last < _stations.Length - 1 && IsFair(last))
        {
            last++;
        }

        return new(Math.Max(0, first - 1), Math.Min(_stations.Length - 1, last + 1));
    }

    private sealed record Range(int First, int Last);

    private bool IsFair(int bay) => _stations[bay].RunAft == Run.Fair;
}
