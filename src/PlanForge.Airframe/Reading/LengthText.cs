using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Reading;

/// <summary>Reads a length that stands outside a description, as on a command line.</summary>
public static class LengthText
{
    /// <summary>The length in mm, or null: written as in descriptions (<c>179.6 mm</c>, <c>7 1/16 in</c>), a bare number in mm.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fault">What is wrong, or empty: one sentence without a full stop.</param>
    public static double? Read(string text, out string fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        fault = "";
        if (ExpressionParser.Parse(text, _ => false, out var wrong) is not { } expression)
        {
            fault = wrong!.Message;
            return null;
        }

        if (expression is not Literal literal || (literal.Unit != Unit.None && literal.Unit.PowersOf() != Powers.Length))
        {
            fault = "a length is needed here, such as `179.6 mm`";
            return null;
        }

        return (literal.Unit == Unit.None ? Unit.Millimetre : literal.Unit).ToBase(literal.Number);
    }
}
