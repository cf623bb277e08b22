using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>Works out the quantities of a description and checks their dimensions and ranges.</summary>
/// <param name="units">The description's unit.</param>
/// <param name="diagnostics">Receives what is wrong.</param>
internal sealed class QuantityReader(DisplayUnit units, DiagnosticList diagnostics)
{
    // A hundred metres. Curves are solved to 1e-6 mm, which doubles hold up to some 1e9 mm; a model has no such parts, a
    // forgotten unit has.
    private const double GreatestLength = 1e5;

    /// <summary>The same, but it says nothing of what is wrong.</summary>
    public QuantityReader Silent() => new(units, new DiagnosticList(""));

    /// <summary>Parses a scalar; null, with the fault reported, when it is no expression.</summary>
    public Expression? Parse(YamlScalar scalar, IParameters parameters)
    {
        if (ExpressionParser.Parse(scalar.Text, parameters.IsKnown, out var fault) is { } expression)
        {
            return expression;
        }

        Report(scalar, fault!);
        return null;
    }

    /// <summary>A scalar's value in mm, rad, g or plain; NaN, with the fault reported, when it is not what the format wants.</summary>
    /// <param name="scalar">The scalar.</param>
    /// <param name="format">The dimension and range.</param>
    /// <param name="label">What to call it in messages.</param>
    /// <param name="parameters">The parameters it may use.</param>
    public double Read(YamlScalar scalar, QuantityFormat format, string label, IParameters parameters) =>
        Parse(scalar, parameters) is { } expression && Evaluate(scalar, expression, format.Dimension, parameters) is { } value
            && IsAllowed(value.Value, format, label, scalar.At)
            ? value.Value
            : double.NaN;

    /// <summary>An expression's value; null, with the faults reported, when it has none or not the expected dimension.</summary>
    /// <param name="scalar">Where it stands.</param>
    /// <param name="expression">The expression.</param>
    /// <param name="expected">The dimension it must have, also that of a bare number; null when any will do.</param>
    /// <param name="parameters">The parameters it may use.</param>
    public Quantity? Evaluate(YamlScalar scalar, Expression expression, Dimension? expected, IParameters parameters)
    {
        var faults = new List<ExpressionFault>();
        var value = new Evaluator(scalar.Text, units, parameters, faults).Value(expression);
        if (expected is { } dimension && expression.BareNumber is not null && value is { } number)
        {
            value = new(UnitTable.OfBareNumber(dimension, units).ToBase(number.Value), Powers.Of(dimension));
        }

        foreach (var fault in faults)
        {
            Report(scalar, fault);
        }

        if (value is not { } result)
        {
            return null;
        }

        if (expected is { } wanted && result.Powers != Powers.Of(wanted))
        {
            diagnostics.Error(scalar.At, Mismatch(scalar.Text, expression, wanted, result.Powers));
            return null;
        }

        if (!double.IsFinite(result.Value))
        {
            diagnostics.Error(scalar.At, $"{Quote.Text(scalar.Text)} is too large to be computed");
            return null;
        }

        if (result.Powers == Powers.Length && Math.Abs(result.Value) > GreatestLength)
        {
            var (length, greatest) = (Text(result.Value, Dimension.Length), Text(GreatestLength, Dimension.Length));
            diagnostics.Error(scalar.At, $"{Quote.Text(scalar.Text)} is {length}; no length may be over {greatest}");
            return null;
        }

        return result;
    }

    /// <summary>Reports a value outside its range; true when it is inside.</summary>
    public bool IsAllowed(double value, QuantityFormat format, string label, SourcePosition at)
    {
        var shown = format.Dimension == Dimension.Angle ? value / Unit.Degree.ToBase(1) : value;
        if (format.Range.Holds(shown))
        {
            return true;
        }

        var allowed = format.Range.Text(limit =>
            Text(format.Dimension == Dimension.Angle ? Unit.Degree.ToBase(limit) : limit, format.Dimension));
        diagnostics.Error(at, $"{label} is {Text(value, format.Dimension)}; it must be {allowed}");
        return false;
    }

    /// <summary>A value for a message, in the units of the description.</summary>
    public string Text(double value, Dimension dimension) => QuantityText.Of(value, dimension, units);

    private void Report(YamlScalar scalar, ExpressionFault fault) =>
        diagnostics.Error(scalar.AtPart(fault.Offset, fault.Length), fault.Message);

    private string Mismatch(string text, Expression expression, Dimension wanted, Powers found)
    {
        var needed = $"{Powers.Of(wanted).Noun()} is needed here, and {Quote.Text(text)} is {found.Noun()}";
        if (expression is Product { Operands: [{ Value: Literal above }, { IsInverse: true, Value: Literal below }] }
            && double.IsInteger(above.Number) && double.IsInteger(below.Number) && found == Powers.Number - Powers.Of(wanted))
        {
            var fraction = $"{Part(text, above)}/{Part(text, below)}";
            return $"{needed}; a fraction is written without blanks, {Quote.Text(fraction)}";
        }

        return found == Powers.Number && wanted != Dimension.Number
            ? $"{needed}; give it a unit such as `{UnitTable.OfBareNumber(wanted, units).Symbol()}`"
            : needed;
    }

    private static string Part(string text, Expression part) => text.Substring(part.Offset, part.Length);
}
