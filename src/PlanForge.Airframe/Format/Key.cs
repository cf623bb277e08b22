namespace PlanForge.Airframe.Format;

/// <summary>A key of a mapping.</summary>
/// <param name="name">The key as written.</param>
/// <param name="summary">One sentence on what it means, shown by editors.</param>
/// <param name="presence">Whether it must be there, and what holds when it is not.</param>
internal abstract class Key(string name, string summary, Presence presence)
{
    public string Name => name;

    public string Summary => summary;

    public Presence Presence => presence;

    /// <summary>What may stand behind it.</summary>
    public abstract ValueFormat Format { get; }
}

/// <summary>A key whose kind of value the compiler knows.</summary>
internal sealed class Key<TFormat>(string name, TFormat format, string summary, Presence? presence = null)
    : Key(name, summary, presence ?? Presence.Optional)
    where TFormat : ValueFormat
{
    public override TFormat Format => format;
}
