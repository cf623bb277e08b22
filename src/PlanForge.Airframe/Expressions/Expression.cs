using System.Collections.Immutable;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Expressions;

/// <summary>A parsed value: a quantity or an expression of quantities and parameters.</summary>
/// <remarks>
/// The grammar; blanks may stand between any two parts except inside a number, a fraction or a word:
/// <code>
/// sum      = product { ("+" | "-") product }
/// product  = operand { ("*" | "/") operand }
/// operand  = [ "+" | "-" ] ( literal | name | function "(" sum { "," sum } ")" | "(" sum ")" )
/// literal  = number [ unit ] | feet inches | degrees minutes [ seconds ]
/// number   = decimal | fraction | whole blanks fraction
/// decimal  = digits [ "." [ digits ] ] [ exponent ] | "." digits [ exponent ]     exponent = ("e" | "E") [ "+" | "-" ] digits
/// fraction = digits "/" digits                                                    without blanks
/// function = "min" | "max" | "sqrt" | "sin" | "cos" | "tan"
/// </code>
/// What could be read in two ways is decided so:
/// <list type="bullet">
/// <item><c>1/32 in</c> is one literal, a thirty-second of an inch: two whole numbers with a tight slash are a fraction when a
/// unit follows or when nothing else stands in the value. In all other places a slash divides, so <c>width/2/3</c> is a sixth
/// of the width. Directly after a division a fraction needs parentheses: <c>width / (1/32 in)</c>.</item>
/// <item><c>2 1/4 in</c> is a mixed number; its fraction must be less than one.</item>
/// <item><c>1 / 32 in</c> with blanks divides a number by a length, which is no length; the message says how to write it.</item>
/// <item><c>'</c> and <c>"</c> are feet and inches, except after degrees, where they are minutes and seconds of arc.</item>
/// <item>A sign belongs to the whole literal: <c>-2 1/4 in</c> is −2.25 in, <c>-1° 30'</c> is −1.5°.</item>
/// <item><c>1,5</c> is refused everywhere; values in min and max are parted by a comma and a blank.</item>
/// </list>
/// </remarks>
/// <param name="Offset">Where it begins in the scalar's text.</param>
/// <param name="Length">How many characters it spans.</param>
internal abstract record Expression(int Offset, int Length)
{
    /// <summary>The literal when the whole value is a number without unit, signed or not: it takes the unit of its place.</summary>
    public Literal? BareNumber => (this is Negation negation ? negation.Operand : this) is Literal { Unit: Unit.None } literal
        ? literal
        : null;
}

/// <summary>A number with or without unit.</summary>
/// <param name="Offset">Where it begins.</param>
/// <param name="Length">How many characters it spans, unit included.</param>
/// <param name="Number">The number of units; not negative.</param>
/// <param name="Unit">The unit, or none.</param>
/// <param name="IsFraction">True when it was written with a fraction.</param>
/// <param name="IsCompound">True for feet with inches and degrees with minutes.</param>
internal sealed record Literal(int Offset, int Length, double Number, Unit Unit, bool IsFraction, bool IsCompound)
    : Expression(Offset, Length);

/// <summary>A parameter's value.</summary>
internal sealed record Reference(int Offset, int Length, string Name) : Expression(Offset, Length);

/// <summary>The opposite of a value.</summary>
internal sealed record Negation(int Offset, int Length, Expression Operand) : Expression(Offset, Length);

/// <summary>A value in parentheses: what is written in them is no bare number.</summary>
internal sealed record Grouping(int Offset, int Length, Expression Inner) : Expression(Offset, Length);

/// <summary>Values added and subtracted from left to right.</summary>
internal sealed record Sum(int Offset, int Length, ImmutableArray<Operand> Operands) : Expression(Offset, Length);

/// <summary>Values multiplied and divided from left to right.</summary>
internal sealed record Product(int Offset, int Length, ImmutableArray<Operand> Operands) : Expression(Offset, Length);

/// <summary>A function of one or more values.</summary>
internal sealed record Call(int Offset, int Length, Function Function, ImmutableArray<Expression> Arguments)
    : Expression(Offset, Length);

/// <summary>A member of a sum or product.</summary>
/// <param name="IsInverse">True when it is subtracted or divided by.</param>
/// <param name="Value">Its value.</param>
internal sealed record Operand(bool IsInverse, Expression Value);

/// <summary>What is wrong in a value, by its place in the scalar's text.</summary>
internal sealed record ExpressionFault(int Offset, int Length, string Message);
