using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Quantities;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>The parameters of a description: worked out in the order they need each other, whatever their order in the file.</summary>
internal sealed class ParameterTable : IParameters
{
    private readonly Dictionary<string, Parameter> _byName = new(StringComparer.Ordinal);
    private readonly List<string> _names = [];
    private readonly QuantityReader _quantities;
    private readonly DiagnosticList _diagnostics;

    private ParameterTable(QuantityReader quantities, DiagnosticList diagnostics)
    {
        _quantities = quantities;
        _diagnostics = diagnostics;
    }

    public IReadOnlyList<string> Names => _names;

    /// <summary>Reads and works out all parameters.</summary>
    /// <param name="node">What stands behind <c>parameters</c>, or null.</param>
    /// <param name="overrides">Values that take the place of the description's.</param>
    /// <param name="quantities">Works out quantities.</param>
    /// <param name="diagnostics">Receives what is wrong, but for a node that is no mapping.</param>
    public static ParameterTable Read(YamlNode? node, ParameterOverrides overrides, QuantityReader quantities, DiagnosticList diagnostics)
    {
        var table = new ParameterTable(quantities, diagnostics);
        var mapping = node as YamlMapping ?? new YamlMapping(default, [], false);

        foreach (var entry in mapping.Entries)
        {
            if (table.IsName(entry.Key))
            {
                table._byName.Add(entry.Key.Text, new(entry.Key));
                table._names.Add(entry.Key.Text);
            }
        }

        var reader = new ValueReader(quantities, table, diagnostics);
        foreach (var entry in mapping.Entries)
        {
            if (table._byName.TryGetValue(entry.Key.Text, out var parameter))
            {
                ReadDefinition(parameter, entry.Value, reader);
            }
        }

        overrides.Apply(table._byName, scalar => new(scalar.At, scalar, quantities.Parse(scalar, table)), diagnostics);
        foreach (var parameter in ParameterOrder.Of(table._names.ConvertAll(name => table._byName[name]), table._byName, diagnostics))
        {
            table.WorkOut(parameter);
        }

        return table;
    }

    public bool IsKnown(string name) => _byName.ContainsKey(name);

    public Quantity? ValueOf(string name)
    {
        var parameter = _byName[name];
        parameter.IsUsed = true;
        return parameter.Value;
    }

    /// <summary>The parameters by name, in the order of their names, so that their order in the file does not matter.</summary>
    public ImmutableArray<NamedParameter> ToNamed()
    {
        var result = ImmutableArray.CreateBuilder<NamedParameter>(_names.Count);
        foreach (var name in _names.Order(StringComparer.Ordinal))
        {
            var parameter = _byName[name];
            if (parameter.Value is { } value && value.Powers.ToDimension() is { } dimension)
            {
                result.Add(new(name, value.Value, dimension, parameter.Key.At));
            }
        }

        return result.ToImmutable();
    }

    /// <summary>The parameters that a parameter's own expression names.</summary>
    public ImmutableArray<string> NeedsOf(string name) => _byName[name].Definition?.Parameters ?? [];

    /// <summary>Some parameters and all that they were computed from, in the order of their names.</summary>
    public ImmutableArray<string> Behind(ImmutableArray<string> names)
    {
        if (names.IsEmpty)
        {
            return [];
        }

        var behind = new SortedSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>(names);
        while (open.TryPop(out var name))
        {
            if (behind.Add(name))
            {
                foreach (var need in NeedsOf(name))
                {
                    open.Push(need);
                }
            }
        }

        return [.. behind];
    }

    /// <summary>The parameters whose values were given from outside, in the order of their names.</summary>
    public ImmutableArray<NamedParameter> Overridden() => [.. ToNamed().Where(parameter => _byName[parameter.Name].Described is not null)];

    /// <summary>Warns of each parameter that no expression names.</summary>
    public void WarnOfUnused()
    {
        foreach (var name in _names)
        {
            if (!_byName[name].IsUsed)
            {
                _diagnostics.Warning(_byName[name].Key.At, $"the parameter {Quote.Text(name)} is never used");
            }
        }
    }

    private bool IsName(YamlScalar key)
    {
        var name = Quote.Text(key.Text);
        if (!Characters.BeginsWord(key.Text[0]) || Characters.AfterWord(key.Text, 0) != key.Text.Length)
        {
            _diagnostics.Error(key.At, $"{name} cannot name a parameter; names are a letter, then letters, digits and _");
            return false;
        }

        if (UnitTable.FromWord(key.Text) is not null || FunctionTable.FromName(key.Text) is not null
            || key.Text == SizeReader.SeparatorWord)
        {
            _diagnostics.Error(key.At, $"{name} cannot name a parameter; in values it means something else");
        }

        return true;
    }

    private static void ReadDefinition(Parameter parameter, YamlNode node, ValueReader reader)
    {
        var place = Place.Root().Of(AirframeFormat.Parameters).Entry(parameter.Key.Text);
        var format = AirframeFormat.Parameters.Format;
        if (node is YamlMapping)
        {
            var detail = (MappingValues)reader.Read(node, format.Detail, Quote.Text(parameter.Key.Text), place);
            parameter.Definition = detail.Parsed(AirframeFormat.ParameterValue);
            parameter.From = detail.Parsed(AirframeFormat.ParameterFrom);
            parameter.To = detail.Parsed(AirframeFormat.ParameterTo);
        }
        else
        {
            parameter.Definition = reader.Read(node, AirframeFormat.ParameterValue.Format, Quote.Text(parameter.Key.Text), place) as ParsedValue;
        }
    }

    private void WorkOut(Parameter parameter)
    {
        if (parameter.Definition is not { Expression: { } expression, Scalar: var scalar })
        {
            return;
        }

        var used = new UsedParameters(this);
        var evaluated = _quantities.Evaluate(scalar, expression, DescribedDimension(parameter), used);
        parameter.Definition.Parameters = used.Take();
        if (evaluated is not { } value)
        {
            return;
        }

        if (value.Powers.ToDimension() is not { } dimension)
        {
            _diagnostics.Error(scalar.At, $"a parameter must be a plain number, a length, an angle or a mass, not {value.Powers.Noun()}");
            return;
        }

        var from = Limit(parameter.From, dimension);
        var to = Limit(parameter.To, dimension);
        var range = new Interval(from ?? double.NegativeInfinity, from is not null, to ?? double.PositiveInfinity, to is not null);
        var name = Quote.Text(parameter.Key.Text);
        if (from > to)
        {
            _diagnostics.Error(parameter.From!.At, $"`from` is {Text(from.Value)}, which is over `to`, {Text(to.Value)}");
        }
        else if (!range.Holds(value.Value))
        {
            _diagnostics.Error(scalar.At, $"{name} is {Text(value.Value)}; it must be {range.Text(Text)}");
        }

        parameter.Value = value;

        string Text(double number) => _quantities.Text(number, dimension);
    }

    // What is given in the place of a definition must be of the same dimension; its faults were reported where it stands.
    private Dimension? DescribedDimension(Parameter parameter) => parameter.Described is { Expression: { } expression, Scalar: var scalar }
        ? _quantities.Silent().Evaluate(scalar, expression, null, this)?.Powers.ToDimension()
        : null;

    private double? Limit(ParsedValue? limit, Dimension dimension) => limit?.Expression is { } expression
        ? _quantities.Evaluate(limit.Scalar, expression, dimension, this)?.Value
        : null;
}
