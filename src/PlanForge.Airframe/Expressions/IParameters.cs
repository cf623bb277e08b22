using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Expressions;

/// <summary>The parameters an expression may name.</summary>
internal interface IParameters
{
    /// <summary>The names in the order of the description.</summary>
    IReadOnlyList<string> Names { get; }

    /// <summary>True when there is a parameter of that name, whether its value is sound or not.</summary>
    bool IsKnown(string name);

    /// <summary>The parameter's value and the note that it is used; null when it failed and was reported.</summary>
    Quantity? ValueOf(string name);
}
