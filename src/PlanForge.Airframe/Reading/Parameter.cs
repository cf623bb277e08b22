using PlanForge.Airframe.Quantities;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>A parameter while it is worked out.</summary>
/// <param name="key">Its name in the description.</param>
internal sealed class Parameter(YamlScalar key)
{
    public YamlScalar Key => key;

    public ParsedValue? Definition { get; set; }

    /// <summary>The description's own definition where another was given in its place; else null.</summary>
    public ParsedValue? Described { get; set; }

    public ParsedValue? From { get; set; }

    public ParsedValue? To { get; set; }

    /// <summary>Its value; null until it is worked out, and for good when it failed.</summary>
    public Quantity? Value { get; set; }

    /// <summary>True once an expression named it.</summary>
    public bool IsUsed { get; set; }
}
