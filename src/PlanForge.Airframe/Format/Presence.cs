namespace PlanForge.Airframe.Format;

/// <summary>Whether a mapping must have a key, and what holds when it has not.</summary>
internal sealed class Presence
{
    /// <summary>The mapping must have it.</summary>
    public static readonly Presence Required = new();

    /// <summary>Without it there is no such thing.</summary>
    public static readonly Presence Optional = new();

    /// <summary>An absent mapping is read as an empty one, so that its keys take their defaults.</summary>
    public static readonly Presence AssumedEmpty = new();

    private Presence()
    {
    }

    /// <summary>The value that is read when the key is absent, written as in a description; null when there is none.</summary>
    public string? Default { get; private init; }

    /// <summary>In words, what holds when the key is absent and nothing could be written in its place; null when nothing does.</summary>
    public string? Instead { get; private init; }

    /// <summary>An absent key is read as this text.</summary>
    public static Presence DefaultsTo(string text) => new() { Default = text };

    /// <summary>An absent key takes its value from elsewhere, as the words say.</summary>
    public static Presence Otherwise(string words) => new() { Instead = words };
}
