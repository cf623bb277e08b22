using PlanForge.Airframe.Reading;

namespace PlanForge.Parts.Formers;

/// <summary>
/// Formers kept from one run to the next. A former depends on its own values and on everything else in the description but the other
/// formers; one that was made with a finding is made anew, since its place in the file may have moved.
/// </summary>
internal sealed class KeptFormers
{
    private readonly Dictionary<string, (int Index, Part Part)> _made = new(StringComparer.Ordinal);
    private ReadValues? _values;
    private Dictionary<string, (int Index, Part Part)> _earlier = [];
    private ReadValues? _earlierValues;
    private bool _isSame;

    /// <summary>Begins a run with these values; null where they are not known: then nothing is kept.</summary>
    public void Begin(ReadValues? values)
    {
        _made.Clear();
        _values = values;
        _isSame = values is not null && _earlierValues is not null && values.IsSameButFormers(_earlierValues);
    }

    /// <summary>The part that was made of the same values, or null.</summary>
    /// <param name="index">Which former.</param>
    /// <param name="name">Its name.</param>
    public Part? Find(int index, string name)
    {
        if (!_isSame || !_earlier.TryGetValue(name, out var known) || !_values!.IsSameFormer(index, _earlierValues!, known.Index))
        {
            return null;
        }

        Keep(index, name, known.Part);
        return known.Part;
    }

    /// <summary>Keeps a part for the next run.</summary>
    public void Keep(int index, string name, Part part) => _made[name] = (index, part);

    /// <summary>Ends a run that came to its end.</summary>
    public void EndRun()
    {
        _earlier = new(_made, StringComparer.Ordinal);
        _earlierValues = _values;
    }
}
