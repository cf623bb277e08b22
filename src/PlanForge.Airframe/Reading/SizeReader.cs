using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;
using PlanForge.Airframe.Reading.Yaml;
using static PlanForge.Airframe.Expressions.Characters;

namespace PlanForge.Airframe.Reading;

/// <summary>Reads sizes such as <c>100 x 1000 mm</c>.</summary>
/// <remarks>
/// The unit of the last number serves both, so <c>1/4 x 1/2 in</c> is a quarter by half an inch; with no unit at all both have
/// the description's. <c>×</c> is as good as <c>x</c>. Each side may be an expression; a bare number then needs its own unit.
/// </remarks>
internal sealed class SizeReader(QuantityReader quantities, IParameters parameters, DiagnosticList diagnostics)
{
    /// <summary>The word between the sides, which can therefore name no parameter.</summary>
    public const string SeparatorWord = "x";

    /// <summary>Reads a size; its parts are NaN, and the fault is reported, when it is none.</summary>
    public SizeValue Read(YamlScalar scalar, SizeFormat format, string label)
    {
        if (Separator(scalar.Text) is not { } separator)
        {
            if (!format.AllowsOne)
            {
                diagnostics.Error(scalar.At, $"{label} needs two lengths, such as `100 x 1000 mm`");
                return new(scalar.At, double.NaN, double.NaN);
            }

            var side = quantities.Read(scalar, QuantityFormat.PositiveLength, label, parameters);
            return new(scalar.At, side, side);
        }

        var first = scalar.Part(0, separator);
        var second = scalar.Part(separator + 1, scalar.Text.Length);
        var firstExpression = quantities.Parse(first, parameters);
        var secondExpression = quantities.Parse(second, parameters);
        if (firstExpression is Literal { Unit: Unit.None } bare && secondExpression is { BareNumber: null })
        {
            firstExpression = WithUnitOf(secondExpression, bare, first);
        }

        return new(scalar.At, Length(first, firstExpression, label), Length(second, secondExpression, label));
    }

    private Literal? WithUnitOf(Expression second, Literal bare, YamlScalar place)
    {
        if (second is Literal { IsCompound: false, Unit: var unit })
        {
            return bare with { Unit = unit };
        }

        var neighbour = second is Literal ? "feet and inches" : "an expression";
        diagnostics.Error(place.At, $"{Quote.Text(place.Text)} needs a unit of its own beside {neighbour}");
        return null;
    }

    private double Length(YamlScalar side, Expression? expression, string label) =>
        expression is not null && quantities.Evaluate(side, expression, Dimension.Length, parameters) is { } length
            && quantities.IsAllowed(length.Value, QuantityFormat.PositiveLength, label, side.At)
            ? length.Value
            : double.NaN;

    /// <summary>The offset of the <c>x</c> between the sides, or null: a letter x by itself, or between digits.</summary>
    private static int? Separator(string text)
    {
        for (var i = 0; i < text.Length;)
        {
            if (BeginsWord(text[i]))
            {
                var end = AfterWord(text, i);
                if (text[i] == 'x' && (end == i + 1 || IsDigit(text[i + 1])))
                {
                    return i;
                }

                i = end;
            }
            else if (text[i] == '×')
            {
                return i;
            }
            else
            {
                i++;
            }
        }

        return null;
    }
}
