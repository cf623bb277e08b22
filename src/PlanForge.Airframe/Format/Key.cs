namespace PlanForge.Airframe.Format;

/// <summary>A key of a mapping.</summary>
/// <param name="name">The key as written.</param>
/// <param name="summary">One sentence on what it means, shown by editors.</param>
internal abstract class Key(string name, string summary)
{
    public string Name => name;

    public string Summary => summary;

    /// <summary>What may stand behind it.</summary>
    public abstract ValueFormat Format { get; }

    /// <summary>True when the mapping must have it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>The value that is read when the key is absent, written as in a description; null when there is none.</summary>
    public string? Default { get; init; }

    /// <summary>True when an absent mapping is read as an empty one, so that its keys take their defaults.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>In words, what holds when the key is absent and nothing can be written in its place; null when nothing does.</summary>
    public string? Otherwise { get; init; }
}

/// <summary>A key whose kind of value the compiler knows.</summary>
internal sealed class Key<TFormat>(string name, TFormat format, string summary) : Key(name, summary)
    where TFormat : ValueFormat
{
    public override TFormat Format => format;
}
