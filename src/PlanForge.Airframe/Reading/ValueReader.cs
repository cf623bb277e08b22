using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Inputs;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>Walks the description's tree along the table of formats and checks every value by itself.</summary>
/// <param name="quantities">Works out quantities.</param>
/// <param name="parameters">The parameters expressions may use.</param>
/// <param name="diagnostics">Receives what is wrong.</param>
internal sealed class ValueReader(QuantityReader quantities, UsedParameters parameters, DiagnosticList diagnostics)
{
    private readonly SizeReader _sizes = new(quantities, parameters, diagnostics);

    /// <summary>A reader of values.</summary>
    public ValueReader(QuantityReader quantities, IParameters parameters, DiagnosticList diagnostics)
        : this(quantities, new UsedParameters(parameters), diagnostics)
    {
    }

    /// <summary>Reads a whole file.</summary>
    public MappingValues ReadMapping(YamlMapping given, MappingFormat format) => ReadMapping(given, format, Place.Root());

    /// <summary>Reads a node as a format wants it.</summary>
    /// <param name="node">The node.</param>
    /// <param name="format">The format.</param>
    /// <param name="label">What to call the value in messages: the key it stands behind, in back quotes.</param>
    /// <param name="place">Its place in the tree.</param>
    public ReadValue Read(YamlNode node, ValueFormat format, string label, Place place)
    {
        var value = ReadAt(node, format, label, place);
        value.Place = place;
        return value;
    }

    private ReadValue ReadAt(YamlNode node, ValueFormat format, string label, Place place) => (format, node) switch
    {
        (_, YamlRefused) => new FailedValue(node.At),
        (_, YamlScalar { IsEmpty: true }) => Fail(node.At, $"{label} has no value; give it one or leave the key out"),
        (ChoiceFormat choice, _) => ReadChoice(node, choice, label, place),
        (MappingFormat mapping, YamlMapping given) => ReadMapping(given, mapping, place),
        (ParametersFormat, YamlMapping) => new FailedValue(node.At),
        (ListFormat list, YamlList given) => ReadList(given, list, label, place),
        (MappingFormat or ListFormat or ParametersFormat, _) => Fail(node.At, $"{label} must be {NounOf(format)}, not {node.Noun}"),
        (_, YamlScalar scalar) => ReadScalar(scalar, format, label),
        _ => Fail(node.At, $"{label} must be a single value, not {node.Noun}"),
    };

    /// <summary>Reads a mapping: its keys, and what it lacks.</summary>
    public MappingValues ReadMapping(YamlMapping given, MappingFormat format, Place place)
    {
        var meant = UnknownKeys.Report(given, format, format.Keys, diagnostics);
        var values = new ReadValue?[format.Keys.Length];
        for (var i = 0; i < values.Length; i++)
        {
            var key = format.Keys[i];
            if (given.Find(key.Name) is { } node)
            {
                values[i] = Read(node, key.Format, $"`{key.Name}`", place.Of(key));
            }
            else if (key.Presence != Presence.Required)
            {
                values[i] = ReadAbsent(key, given.At, place.Of(key));
            }
            else
            {
                values[i] = new FailedValue(given.At);
                if (!given.IsIncomplete && !meant.Contains(key.Name))
                {
                    diagnostics.Error(given.At, $"{format.Noun} needs the key `{key.Name}`");
                }
            }
        }

        return new(given.At, format, values) { Place = place };
    }

    /// <summary>What an absent key is read as: its default, an empty mapping, or nothing.</summary>
    private ReadValue? ReadAbsent(Key key, SourcePosition at, Place place) => key switch
    {
        { Presence.Default: { } text } => Read(new YamlScalar(at, text, null), key.Format, $"`{key.Name}`", place),
        { Format: MappingFormat mapping } when key.Presence == Presence.AssumedEmpty =>
            ReadMapping(new YamlMapping(at, [], false), mapping, place),
        _ => null,
    };

    private ListValue ReadList(YamlList given, ListFormat format, string label, Place place)
    {
        if (given.Items.Count < format.Least || given.Items.Count > format.Greatest)
        {
            var count = format.Least == format.Greatest ? $"exactly {format.Least}"
                : format.Least == 1 ? "at least one"
                : $"at least {format.Least}";
            Fail(given.At, $"{label} needs {count}, not {given.Items.Count}");
        }

        var items = new List<ReadValue>(given.Items.Count);
        var names = EntryNames.Of(given);
        for (var i = 0; i < given.Items.Count; i++)
        {
            items.Add(Read(given.Items[i], format.Item, $"each of {label}", place.Entry(names[i])));
        }

        return new ListValue(given.At, items);
    }

    private ReadValue ReadChoice(YamlNode node, ChoiceFormat choice, string label, Place place)
    {
        switch (node)
        {
            case YamlMapping mapping when Alternative.Find(mapping, choice, diagnostics) is { } found:
                return found.Format is { } format ? ReadMapping(found.Given, format, place) : new FailedValue(node.At);
            case YamlScalar scalar when Alternative.OfScalar(choice, scalar.Text) is { } single:
                return ReadAt(node, single, label, place);
            default:
                return Fail(node.At, $"{label} must be {Alternative.Describe(choice)}, not {node.Noun}");
        }
    }

    private ReadValue ReadScalar(YamlScalar scalar, ValueFormat format, string label)
    {
        var value = ReadScalarAs(scalar, format, label);
        value.Parameters = parameters.Take();
        return value;
    }

    private ReadValue ReadScalarAs(YamlScalar scalar, ValueFormat format, string label)
    {
        switch (format)
        {
            case QuantityFormat quantity:
                return new NumberValue(scalar.At, quantities.Read(scalar, quantity, label, parameters), quantity.Dimension);
            case ParameterValueFormat:
                return new ParsedValue(scalar.At, scalar, quantities.Parse(scalar, parameters));
            case SizeFormat size:
                return _sizes.Read(scalar, size, label);
            case WordFormat words:
                return ReadWord(scalar, words.Words, label);
            case PaperFormat paper:
                return ReadPaper(scalar, paper, label);
            case VersionFormat:
                return scalar.Text == VersionFormat.Current
                    ? new WordValue(scalar.At, 0, scalar.Text)
                    : Fail(scalar.At, $"this reads version {VersionFormat.Current} of the format, not {Quote.Text(scalar.Text)}");
            default:
                return ReadText(scalar, format, label);
        }
    }

    private ReadValue ReadWord(YamlScalar scalar, ImmutableArray<string> words, string label)
    {
        var index = words.IndexOf(scalar.Text);
        if (index >= 0)
        {
            return new WordValue(scalar.At, index, scalar.Text);
        }

        var near = Spelling.Near(scalar.Text, words);
        return Fail(scalar.At, $"{label} cannot be {Quote.Text(scalar.Text)}; "
            + (near is null ? $"it must be {Quote.Alternatives(words)}" : $"did you mean `{near}`?"));
    }

    private ReadValue ReadPaper(YamlScalar scalar, PaperFormat format, string label)
    {
        if (PaperFormat.IsSize(scalar.Text))
        {
            var size = _sizes.Read(scalar, new SizeFormat(false), label);
            return double.IsNaN(size.First) || double.IsNaN(size.Second)
                ? new FailedValue(scalar.At)
                : new PaperValue(scalar.At, new(scalar.Text, size.First, size.Second));
        }

        return ReadWord(scalar, format.Names, label) is WordValue ? new PaperValue(scalar.At, new(scalar.Text, null, null)) : new FailedValue(scalar.At);
    }

    private ReadValue ReadText(YamlScalar scalar, ValueFormat format, string label)
    {
        var (longest, isFileName) = format is TextFormat text ? (text.Longest, text.IsFileName) : (TextFormat.Line.Longest, false);
        foreach (var character in scalar.Text)
        {
            if (Quote.IsUnprintable(character))
            {
                return Fail(scalar.At, string.Create(
                    CultureInfo.InvariantCulture, $"{label} must be one line without the character U+{(int)character:X4}"));
            }

            if (isFileName && TextFormat.NotInFileNames.Contains(character, StringComparison.Ordinal))
            {
                return Fail(scalar.At, $"{label} cannot hold `{character}`: files are named after it");
            }
        }

        if (scalar.Text.Length > longest)
        {
            return Fail(scalar.At, $"{label} has {scalar.Text.Length} characters; it may have {longest}");
        }

        return isFileName && (scalar.Text[0] is '.' or ' ' || scalar.Text[^1] is '.' or ' ')
            ? Fail(scalar.At, $"{label} cannot begin or end with a dot or a blank: files are named after it")
            : new TextValue(scalar.At, scalar.Text);
    }

    private static string NounOf(ValueFormat format) => format is ListFormat ? "a list" : "a mapping of keys";

    private FailedValue Fail(SourcePosition at, string message)
    {
        diagnostics.Error(at, message);
        return new(at);
    }
}
