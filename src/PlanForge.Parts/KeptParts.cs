using System.Collections.Immutable;
using PlanForge.Airframe.Reading;
using PlanForge.Parts.Formers;

namespace PlanForge.Parts;

/// <summary>
/// Parts kept from one run to the next: a part with the same content as before is the very same object, so that what was made of it can
/// be known again. Empty at first; for one run at a time.
/// </summary>
public sealed class KeptParts
{
    private Dictionary<string, Part> _earlier = [];
    private ImmutableArray<Part> _made = [];

    internal KeptFormers Formers { get; } = new();

    /// <summary>Begins a run with the values of its description; null where they are not known.</summary>
    internal void Begin(ReadValues? values) => Formers.Begin(values);

    /// <summary>The parts, each in place of its like.</summary>
    internal ImmutableArray<Part> Known(ImmutableArray<Part> parts)
    {
        _made = [.. parts.Select(part => _earlier.TryGetValue(part.Id, out var known) && PartContent.IsSame(known, part) ? known : part)];
        return _made;
    }

    /// <summary>Ends a run that came to its end; what it did not make is let go.</summary>
    public void EndRun()
    {
        Formers.EndRun();
        _earlier = new(StringComparer.Ordinal);
        foreach (var part in _made)
        {
            _earlier[part.Id] = part;
        }
    }
}
