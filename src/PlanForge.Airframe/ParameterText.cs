using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe;

/// <summary>Writes a parameter's value for people.</summary>
public static class ParameterText
{
    /// <summary>The value such as <c>95 mm</c> or <c>-1.5 deg</c>, in the unit of the description.</summary>
    public static string Of(NamedParameter parameter, DisplayUnit lengths)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        return QuantityText.Of(parameter.Value, parameter.Dimension, lengths);
    }
}
