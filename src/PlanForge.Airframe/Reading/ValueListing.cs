using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Airframe.Described;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Reading;

/// <summary>Lists the values of a description: the same ones that <see cref="ValueHash"/> hashes.</summary>
internal sealed class ValueListing
{
    private const string Given = "given";

    private readonly ImmutableArray<DescribedValue>.Builder _values = ImmutableArray.CreateBuilder<DescribedValue>();
    private readonly ParameterTable _parameters;
    private readonly DisplayUnit _units;

    private ValueListing(ParameterTable parameters, DisplayUnit units) => (_parameters, _units) = (parameters, units);

    /// <summary>The values of a description that was read without errors.</summary>
    public static DescribedValues Of(MappingValues root, SectionFiles files, ParameterTable parameters, DisplayUnit units)
    {
        var listing = new ValueListing(parameters, units);
        listing.AddMapping(root);
        foreach (var (path, text) in files.Texts)
        {
            var hash = ValueHash.OfCoordinates(path, text);
            listing._values.Add(new(path, ValueKind.Coordinates, hash, $"coordinates {new Fingerprint(Convert.FromHexString(hash)).Code}", []));
        }

        return new(listing._values.ToImmutable(), listing.Parameters());
    }

    private ImmutableArray<DescribedValue> Parameters()
    {
        var parameters = ImmutableArray.CreateBuilder<DescribedValue>();
        foreach (var parameter in _parameters.ToNamed())
        {
            parameters.Add(new(
                DescribedValues.ParameterPath(parameter.Name),
                KindOf(parameter.Dimension),
                ValueHash.Canonical(parameter.Value),
                QuantityText.Of(parameter.Value, parameter.Dimension, _units),
                _parameters.Behind(_parameters.NeedsOf(parameter.Name))));
        }

        return parameters.ToImmutable();
    }

    private void Add(ReadValue value)
    {
        switch (value)
        {
            case NumberValue number:
                Add(number, KindOf(number.Dimension), ValueHash.Canonical(number.Number), QuantityText.Of(number.Number, number.Dimension, _units));
                break;
            case TextValue text:
                Add(text, ValueKind.Text, text.Text, text.Text);
                break;
            case WordValue word:
                Add(word, ValueKind.Word, word.Word, word.Word);
                break;
            case SizeValue size:
                Add(size, ValueKind.Size, Canonical(size.First, size.Second), Shown(size.First, size.Second));
                break;
            case PaperValue { Paper: { Width: { } width, Height: { } height } }:
                Add(value, ValueKind.Paper, Canonical(width, height), Shown(width, height));
                break;
            case PaperValue { Paper.Name: var name }:
                Add(value, ValueKind.Paper, name, name);
                break;
            case ListValue list:
                AddList(list);
                break;
            case MappingValues mapping:
                AddMapping(mapping);
                break;
        }
    }

    // As in the hash, parameters are not among the values: they stand here as a value that failed.
    private void AddMapping(MappingValues mapping)
    {
        for (var i = 0; i < mapping.Values.Length; i++)
        {
            if (mapping.Values[i] is not { } value || value is FailedValue)
            {
                continue;
            }

            var key = mapping.Format.Keys[i];
            if (value is MappingValues && key.Format is MappingFormat && key.Presence == Presence.Optional)
            {
                _values.Add(new(value.Place!.Path + Place.Presence, ValueKind.Presence, Given, Given, []));
            }

            Add(value);
        }
    }

    private void AddList(ListValue list)
    {
        var path = list.Place!.Path;
        var names = string.Join(", ", list.Items.Select(item => item.Place!.Path[(path.Length + 1)..^1]));
        var isNamed = list.Items.Any(item => item is MappingValues mapping && mapping.Format.Find("name") is not null);
        var shown = isNamed ? names : list.Items.Count.ToString(CultureInfo.InvariantCulture);
        _values.Add(new(path + Place.Members, ValueKind.Members, shown, shown, []));
        list.Items.ForEach(Add);
    }

    private void Add(ReadValue value, ValueKind kind, string canonical, string shown) =>
        _values.Add(new(value.Place!.Path, kind, canonical, shown, _parameters.Behind(value.Parameters)));

    private static string Canonical(double first, double second) => $"{ValueHash.Canonical(first)} x {ValueHash.Canonical(second)}";

    private string Shown(double first, double second)
    {
        var unit = UnitTable.OfBareNumber(Dimension.Length, _units);
        return $"{QuantityText.Number(first / unit.ToBase(1))} x {QuantityText.Of(second, Dimension.Length, _units)}";
    }

    private static ValueKind KindOf(Dimension dimension) => dimension switch
    {
        Dimension.Length => ValueKind.Length,
        Dimension.Angle => ValueKind.Angle,
        Dimension.Mass => ValueKind.Mass,
        _ => ValueKind.Number,
    };
}
