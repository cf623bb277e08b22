using System.Collections.Immutable;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Reading;

/// <summary>Notes which parameters a value is computed from.</summary>
/// <param name="parameters">The parameters.</param>
internal sealed class UsedParameters(IParameters parameters) : IParameters
{
    private readonly List<string> _used = [];

    public IReadOnlyList<string> Names => parameters.Names;

    public bool IsKnown(string name) => parameters.IsKnown(name);

    public Quantity? ValueOf(string name)
    {
        if (!_used.Contains(name))
        {
            _used.Add(name);
        }

        return parameters.ValueOf(name);
    }

    /// <summary>Those named since the last time, in the order of the expression.</summary>
    public ImmutableArray<string> Take()
    {
        if (_used.Count == 0)
        {
            return [];
        }

        ImmutableArray<string> taken = [.. _used];
        _used.Clear();
        return taken;
    }
}
