namespace PlanForge.Airframe.Inputs;

/// <summary>What of a place was read.</summary>
internal enum InputKind
{
    /// <summary>What stands there, with everything in it.</summary>
    Content,

    /// <summary>Which entries a list has, in which order, and nothing in them.</summary>
    Members,

    /// <summary>Whether a mapping is there at all.</summary>
    Presence,
}
