using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using static PlanForge.Airframe.Expressions.Characters;

namespace PlanForge.Airframe.Expressions;

/// <summary>Parses a value's text by recursive descent; <see cref="Expression"/> has the grammar.</summary>
internal sealed class ExpressionParser
{
    // Nobody nests this deep by hand; much more could exhaust the stack, since evaluation recurses as deep.
    private const int GreatestDepth = 32;

    private readonly string _text;
    private readonly LiteralScanner _literals;
    private int _at;
    private int _depth;
    private int _calls;
    private ExpressionFault? _fault;

    private ExpressionParser(string text, Func<string, bool> isParameter)
    {
        _text = text;
        _literals = new(text, isParameter);
    }

    /// <summary>Parses a whole text.</summary>
    /// <param name="text">The value's text.</param>
    /// <param name="isParameter">True for the names of parameters; serves messages only.</param>
    /// <param name="fault">The first thing wrong with it, when the result is null.</param>
    /// <returns>The expression, or null.</returns>
    public static Expression? Parse(string text, Func<string, bool> isParameter, out ExpressionFault? fault)
    {
        var parser = new ExpressionParser(text, isParameter);
        var result = parser.ParseSum();
        if (result is not null && parser.Peek() is { } extra)
        {
            result = parser.FailAtExtra(extra);
        }

        fault = parser._fault;
        return result;
    }

    private Expression? ParseSum()
    {
        if (ParseProduct() is not { } first)
        {
            return null;
        }

        ImmutableArray<Operand>.Builder? operands = null;
        while (Peek() is '+' or '-')
        {
            var isMinus = _text[_at++] == '-';
            if (ParseProduct() is not { } next)
            {
                return null;
            }

            operands ??= StartedWith(first);
            operands.Add(new(isMinus, next));
        }

        return operands is null ? first : new Sum(first.Offset, EndOf(operands) - first.Offset, operands.ToImmutable());
    }

    private Expression? ParseProduct()
    {
        if (ParseOperand(false) is not { } first)
        {
            return null;
        }

        ImmutableArray<Operand>.Builder? operands = null;
        while (Peek() is '*' or '/')
        {
            var isDivision = _text[_at++] == '/';
            if (ParseOperand(isDivision) is not { } next)
            {
                return null;
            }

            operands ??= StartedWith(first);
            operands.Add(new(isDivision, next));
        }

        return operands is null ? first : new Product(first.Offset, EndOf(operands) - first.Offset, operands.ToImmutable());
    }

    private Expression? ParseOperand(bool isAfterDivision)
    {
        if (Peek() is not { } next)
        {
            return Fail(_at, 1, "a value is missing at the end");
        }

        var start = _at;
        if (next is '-' or '+')
        {
            _at++;
            if (Peek() is '-' or '+')
            {
                return Fail(_at, 1, "two signs in a row; put the second in parentheses");
            }

            var operand = ParseOperand(isAfterDivision);
            return operand is null || next == '+' ? operand : new Negation(start, operand.Offset + operand.Length - start, operand);
        }

        if (BeginsNumber(_text, _at))
        {
            return ParseLiteral(isAfterDivision);
        }

        if (BeginsWord(next))
        {
            return ParseNameOrCall();
        }

        if (next != '(')
        {
            return Fail(_at, 1, next is '*' or '/' or ')' ? $"a value is missing before `{next}`" : Refusal(_text, _at));
        }

        _at++;
        return ParseNested(start) is not { } inner ? null : new Grouping(start, _at - start, inner);
    }

    private Literal? ParseLiteral(bool isAfterDivision)
    {
        if (_literals.Scan(_at, isAfterDivision, _calls > 0) is not { } literal)
        {
            _fault ??= _literals.Fault;
            return null;
        }

        _at = _literals.End;
        return literal;
    }

    private Expression? ParseNameOrCall()
    {
        var start = _at;
        _at = AfterWord(_text, start);
        var name = _text[start.._at];
        if (Peek() != '(')
        {
            return new Reference(start, name.Length, name);
        }

        if (FunctionTable.FromName(name) is not { } function)
        {
            var near = Spelling.Near(name, FunctionTable.Names);
            return Fail(start, name.Length, $"{Quote.Text(name)} is not a function; "
                + (near is null ? $"there are {Quote.List(FunctionTable.Names)}" : $"did you mean `{near}`?"));
        }

        _at++;
        _calls++;
        var arguments = ParseArguments(start, function);
        _calls--;
        return arguments is not { } found ? null : new Call(start, _at - start, function, found);
    }

    private ImmutableArray<Expression>? ParseArguments(int start, Function function)
    {
        var arguments = ImmutableArray.CreateBuilder<Expression>();
        do
        {
            if (ParseNested(start, closes: false) is not { } argument)
            {
                return null;
            }

            arguments.Add(argument);
        }
        while (TakeComma());

        if (!TakeClosing(start))
        {
            return null;
        }

        if (function.TakesSeveral() ? arguments.Count < 2 : arguments.Count != 1)
        {
            var count = function.TakesSeveral() ? "two values or more" : "one value";
            Fail(start, _at - start, $"`{function.Name()}` takes {count}, not {arguments.Count}");
            return null;
        }

        return arguments.ToImmutable();
    }

    private Expression? ParseNested(int opening, bool closes = true)
    {
        if (++_depth > GreatestDepth)
        {
            return Fail(opening, 1, $"parentheses are nested more than {GreatestDepth} deep");
        }

        var inner = ParseSum();
        _depth--;
        return inner is null || (closes && !TakeClosing(opening)) ? null : inner;
    }

    private bool TakeComma()
    {
        if (Peek() != ',')
        {
            return false;
        }

        _at++;
        return true;
    }

    private bool TakeClosing(int opening)
    {
        switch (Peek())
        {
            case ')':
                _at++;
                return true;
            case null:
                Fail(
                    opening,
                    _text.Length - opening,
                    "the parenthesis is not closed; within { } or [ ] a value with a comma must stand in quotes");
                return false;
            case { } extra:
                FailAtExtra(extra);
                return false;
        }
    }

    private Expression? FailAtExtra(char extra) => Fail(
        _at,
        1,
        BeginsNumber(_text, _at) ? "an operator is missing before this number; a mixed number is written `2 1/4`"
            : BeginsWord(extra) || extra == '(' ? "an operator is missing here; to multiply, write `*`"
            : Refusal(_text, _at));

    /// <summary>The next character that is no blank, or null at the end; stands on it.</summary>
    private char? Peek()
    {
        _at = AfterBlanks(_text, _at);
        return _at < _text.Length ? _text[_at] : null;
    }

    private Expression? Fail(int offset, int length, string message)
    {
        _fault ??= new(offset, length, message);
        return null;
    }

    private static ImmutableArray<Operand>.Builder StartedWith(Expression first)
    {
        var operands = ImmutableArray.CreateBuilder<Operand>();
        operands.Add(new(false, first));
        return operands;
    }

    private static int EndOf(ImmutableArray<Operand>.Builder operands)
    {
        var last = operands[^1].Value;
        return last.Offset + last.Length;
    }
}
