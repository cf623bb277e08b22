using System.Collections.Immutable;

namespace PlanForge.Parts;

/// <summary>
/// Parts kept from one run to the next: a part with the same content as before is the very same object, so that what was made of it can
/// be known again. Empty at first; for one run at a time.
/// </summary>
public sealed class KeptParts
{
    private Dictionary<string, Part> _earlier = [];
    private ImmutableArray<Part> _made = [];

    /// <summary>The parts, each in place of its like.</summary>
    internal ImmutableArray<Part> Known(ImmutableArray<Part> parts)
    {
        _made = [.. parts.Select(part => _earlier.TryGetValue(part.Id, out var known) && PartContent.IsSame(known, part) ? known : part)];
        return _made;
    }

    /// <summary>Ends a run that came to its end; what it did not make is let go.</summary>
    public void EndRun()
    {
        _earlier = new(StringComparer.Ordinal);
        foreach (var part in _made)
        {
            _earlier[part.Id] = part;
        }
    }
}
