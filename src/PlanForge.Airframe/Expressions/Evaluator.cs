using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Expressions;

/// <summary>Works out a parsed value and checks its dimensions on the way.</summary>
/// <remarks>
/// Sums, min and max need values of one dimension; products and quotients make new ones; sqrt halves them; sin, cos and tan
/// take an angle and give a number. A number without unit is a plain number, never silently a length.
/// </remarks>
/// <param name="text">The value's text, to quote from.</param>
/// <param name="units">The description's unit, for suggestions.</param>
/// <param name="parameters">The parameters.</param>
/// <param name="faults">Receives what is wrong; several unknown names are several faults.</param>
internal sealed class Evaluator(string text, DisplayUnit units, IParameters parameters, List<ExpressionFault> faults)
{
    // At 90 degrees rounding leaves a cosine of 6e-17; no airframe needs a tangent over 1e12.
    private const double LeastCosine = 1e-12;

    // Messages stay one line: longer lists of parameters are not spelled out.
    private const int LongestList = 8;

    // More names than any description has. Without a limit, many unknown names among many known ones would take hours.
    private const int GreatestSearch = 100;

    // Whoever has this many faults in one value reads no further.
    private const int GreatestFaultCount = 10;

    /// <summary>The value, or null when something is wrong with it or with a parameter it uses.</summary>
    public Quantity? Value(Expression expression)
    {
        var result = expression switch
        {
            Literal literal => new(literal.Unit.ToBase(literal.Number), literal.Unit.PowersOf()),
            Reference reference => OfParameter(reference),
            Grouping grouping => Value(grouping.Inner),
            Negation negation => Value(negation.Operand) is { } value ? new(-value.Value, value.Powers) : null,
            Sum sum => OfSum(sum),
            Product product => OfProduct(product),
            Call { Arguments: [var only] } call => OfFunction(call, only),
            Call call => OfExtreme(call),
            _ => (Quantity?)null,
        };
        return result is { } computed && !double.IsFinite(computed.Value)
            ? Fail(expression, $"{Quoted(expression)} is too large to be computed")
            : result;
    }

    private Quantity? OfParameter(Reference reference)
    {
        if (parameters.IsKnown(reference.Name))
        {
            return parameters.ValueOf(reference.Name);
        }

        if (faults.Count >= GreatestFaultCount)
        {
            return null;
        }

        var name = Quote.Text(reference.Name);
        var near = Spelling.Near(reference.Name, parameters.Names.Take(GreatestSearch));
        return Fail(reference, near is not null ? $"there is no parameter {name}; did you mean `{near}`?"
            : UnitTable.FromWord(reference.Name) is { } unit ? $"{name} is a unit and needs a number before it, such as `3 {unit.Symbol()}`"
            : FunctionTable.FromName(reference.Name) is not null ? $"the function {name} needs its values in parentheses"
            : parameters.Names.Count is > 0 and <= LongestList ? $"there is no parameter {name}, only {Quote.List(parameters.Names)}"
            : $"there is no parameter {name}");
    }

    private Quantity? OfSum(Sum sum)
    {
        var (total, powers, isSound) = (0.0, Powers.Number, true);
        Expression? measure = null;
        foreach (var (isMinus, operand) in sum.Operands)
        {
            if (Value(operand) is not { } value)
            {
                isSound = false;
                continue;
            }

            if (measure is null)
            {
                (measure, powers) = (operand, value.Powers);
            }

            isSound &= AreAlike(measure, powers, operand, value.Powers, isMinus ? "taken from" : "added to");
            total += isMinus ? -value.Value : value.Value;
        }

        return isSound ? new(total, powers) : null;
    }

    private Quantity? OfProduct(Product product)
    {
        Quantity? result = new(1, Powers.Number);
        foreach (var (isDivision, operand) in product.Operands)
        {
            if (Value(operand) is not { } value)
            {
                result = null;
            }
            else if (isDivision && value.Value == 0)
            {
                result = Fail(operand, $"this divides by {Quoted(operand)}, which is 0");
            }
            else if (result is { } soFar)
            {
                result = isDivision
                    ? new(soFar.Value / value.Value, soFar.Powers - value.Powers)
                    : new(soFar.Value * value.Value, soFar.Powers + value.Powers);
            }
        }

        return result;
    }

    private Quantity? OfExtreme(Call call)
    {
        var isLeast = call.Function == Function.Min;
        var (extreme, powers, isSound) = (isLeast ? double.PositiveInfinity : double.NegativeInfinity, Powers.Number, true);
        Expression? measure = null;
        foreach (var argument in call.Arguments)
        {
            if (Value(argument) is not { } value)
            {
                isSound = false;
                continue;
            }

            if (measure is null)
            {
                (measure, powers) = (argument, value.Powers);
            }

            isSound &= AreAlike(measure, powers, argument, value.Powers, "compared with");
            extreme = isLeast ? Math.Min(extreme, value.Value) : Math.Max(extreme, value.Value);
        }

        return isSound ? new(extreme, powers) : null;
    }

    private Quantity? OfFunction(Call call, Expression argument)
    {
        if (Value(argument) is not { } value)
        {
            return null;
        }

        if (call.Function == Function.Sqrt)
        {
            return value.Value < 0 ? Fail(argument, $"there is no square root of {Quoted(argument)}, which is negative")
                : value.Powers.Halved() is { } half ? new(Math.Sqrt(value.Value), half)
                : Fail(argument, $"there is no square root of {value.Powers.Noun()}, only of numbers and areas");
        }

        if (value.Powers != Powers.Angle)
        {
            var number = argument is Literal { Unit: Unit.None } ? $", such as {Quote.Text($"{Raw(argument)} deg")}" : "";
            return Fail(argument, $"`{call.Function.Name()}` needs an angle{number}, not {value.Powers.Noun()}");
        }

        if (call.Function == Function.Tan && Math.Abs(Math.Cos(value.Value)) < LeastCosine)
        {
            return Fail(argument, $"the tangent of {Quoted(argument)} is infinite");
        }

        return new(
            call.Function switch
            {
                Function.Sin => Math.Sin(value.Value),
                Function.Cos => Math.Cos(value.Value),
                _ => Math.Tan(value.Value),
            },
            Powers.Number);
    }

    /// <summary>
    /// Reports two dimensions where there must be one. A number without unit is blamed first: there a unit was forgotten.
    /// </summary>
    private bool AreAlike(Expression first, Powers firstPowers, Expression second, Powers secondPowers, string verb)
    {
        if (firstPowers == secondPowers)
        {
            return true;
        }

        if (second is Literal { Unit: Unit.None } bareSecond && firstPowers.ToDimension() is { } ofFirst)
        {
            FailWithoutUnit(bareSecond, first, ofFirst);
        }
        else if (first is Literal { Unit: Unit.None } bareFirst && secondPowers.ToDimension() is { } ofSecond)
        {
            FailWithoutUnit(bareFirst, second, ofSecond);
        }
        else
        {
            Fail(second, $"{secondPowers.Noun()} cannot be {verb} {firstPowers.Noun()}");
        }

        return false;
    }

    private void FailWithoutUnit(Literal bare, Expression neighbour, Dimension dimension)
    {
        var unit = neighbour is Literal literal ? literal.Unit : UnitTable.OfBareNumber(dimension, units);
        var mixed = neighbour is Literal { IsFraction: true } && neighbour.Offset > bare.Offset
            ? $"; a mixed number is written {Quote.Text($"{Raw(bare)} {Raw(neighbour)}")}"
            : "";
        Fail(bare, $"{Quoted(bare)} needs a unit such as {Quote.Text($"{Raw(bare)} {unit.Symbol()}")}{mixed}");
    }

    private Quantity? Fail(Expression place, string message)
    {
        if (faults.Count < GreatestFaultCount)
        {
            faults.Add(new(place.Offset, place.Length, message));
        }

        return null;
    }

    private string Raw(Expression expression) => text.Substring(expression.Offset, expression.Length);

    private string Quoted(Expression expression) => Quote.Text(Raw(expression));
}
