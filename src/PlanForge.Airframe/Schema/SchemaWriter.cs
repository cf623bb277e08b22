using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Quantities;

namespace PlanForge.Airframe.Schema;

/// <summary>Writes formats as JSON Schema draft-07; mappings, choices and quantities become definitions.</summary>
internal sealed class SchemaWriter(Utf8JsonWriter json)
{
    private const string Draft07 = "http://json-schema.org/draft-07/schema#";
    private readonly Queue<ValueFormat> _pending = [];
    private readonly HashSet<string> _defined = [];

    /// <summary>Writes the whole schema with its definitions.</summary>
    public void WriteRoot(string title, MappingFormat root)
    {
        json.WriteStartObject();
        json.WriteString("$schema", Draft07);
        json.WriteString("title", title);
        WriteMappingBody(root);
        json.WriteStartObject("definitions");
        WriteQuantity("length", Dimension.Length,
            "A length: a number in the description's units, a quantity such as 3 mm, 1/32 in, 2 1/4 in or 5' 6 1/2\", or an expression.");
        WriteQuantity("angle", Dimension.Angle,
            "An angle: a number of degrees, a quantity such as 4.5 deg, 1° 30' or 0.05 rad, or an expression.");
        var formats = new List<ValueFormat>();
        Collect(root, formats);
        if (formats.Exists(format => format is QuantityFormat { Dimension: Dimension.Number }))
        {
            WriteQuantity("proportion", Dimension.Number, "A proportion such as 9 % or 0.09, or an expression.");
        }

        if (formats.Exists(format => format is ParametersFormat))
        {
            WriteAnyQuantity();
        }

        while (_pending.TryDequeue(out var format))
        {
            json.WriteStartObject(IdOf(format));
            if (format is MappingFormat mapping)
            {
                WriteMappingBody(mapping);
            }
            else
            {
                WriteAlternatives(((ChoiceFormat)format).Alternatives);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void WriteMappingBody(MappingFormat mapping)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (var key in mapping.Keys)
        {
            json.WriteStartObject(key.Name);
            json.WriteString("description", Description(key));
            WriteBody(key.Format, isBesideDescription: true);
            WriteDefault(key.Presence.Default);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("required");
        foreach (var key in mapping.Keys)
        {
            if (key.Presence == Presence.Required)
            {
                json.WriteStringValue(key.Name);
            }
        }

        json.WriteEndArray();
        json.WriteBoolean("additionalProperties", false);
    }

    private void WriteBody(ValueFormat format, bool isBesideDescription)
    {
        switch (format)
        {
            case VersionFormat:
                json.WriteNumber("const", int.Parse(VersionFormat.Current, CultureInfo.InvariantCulture));
                break;
            case TextFormat text:
                WriteText(text);
                break;
            case WordFormat words:
                WriteWords(words);
                break;
            case QuantityFormat quantity:
                WriteReference(NameOf(quantity.Dimension), isBesideDescription);
                WriteRange(quantity);
                break;
            case ParameterValueFormat:
                WriteReference("quantity", isBesideDescription);
                break;
            case SizeFormat size:
                WriteSize(size);
                break;
            case PaperFormat paper:
                WritePaper(paper);
                break;
            case SectionNameFormat:
                json.WriteString("type", "string");
                json.WriteString("pattern", Patterns.SectionName);
                break;
            case ListFormat list:
                WriteList(list);
                break;
            case ParametersFormat parameters:
                WriteParameters(parameters);
                break;
            default:
                if (_defined.Add(IdOf(format)))
                {
                    _pending.Enqueue(format);
                }

                WriteReference(IdOf(format), isBesideDescription);
                break;
        }
    }

    /// <summary>A reference; beside other words it is wrapped, since draft-07 ignores what stands beside <c>$ref</c>.</summary>
    private void WriteReference(string name, bool isWrapped)
    {
        if (isWrapped)
        {
            json.WriteStartArray("allOf");
            json.WriteStartObject();
        }

        json.WriteString("$ref", "#/definitions/" + name);
        if (isWrapped)
        {
            json.WriteEndObject();
            json.WriteEndArray();
        }
    }

    private void WriteText(TextFormat text)
    {
        // The reader takes every single value as text; to YAML editors some are numbers or truth values.
        json.WriteStartArray("type");
        json.WriteStringValue("string");
        json.WriteStringValue("number");
        json.WriteStringValue("boolean");
        json.WriteEndArray();
        json.WriteNumber("minLength", 1);
        json.WriteNumber("maxLength", text.Longest);
        if (text.IsFileName)
        {
            json.WriteString("pattern", Patterns.FileName);
        }
    }

    private void WriteWords(WordFormat words) => WriteEnumeration(words.Words);

    private void WriteEnumeration(ImmutableArray<string> words)
    {
        json.WriteStartArray("enum");
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }

    private void WritePaper(PaperFormat paper)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        WriteEnumeration(paper.Names);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("pattern", Patterns.PaperSize);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private void WriteRange(QuantityFormat quantity)
    {
        // Bare numbers only. A limit in millimetres says nothing about a number in inches unless it is zero.
        var range = quantity.Range;
        if (!double.IsInfinity(range.Least) && (quantity.Dimension != Dimension.Length || range.Least == 0))
        {
            json.WriteNumber(range.HasLeast ? "minimum" : "exclusiveMinimum", range.Least);
        }

        if (!double.IsInfinity(range.Greatest) && quantity.Dimension != Dimension.Length)
        {
            json.WriteNumber(range.HasGreatest ? "maximum" : "exclusiveMaximum", range.Greatest);
        }
    }

    private void WriteSize(SizeFormat size)
    {
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("pattern", Patterns.Size);
        json.WriteEndObject();
        if (size.AllowsOne)
        {
            json.WriteStartObject();
            WriteReference("length", isWrapped: true);
            WriteRange(QuantityFormat.PositiveLength);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteList(ListFormat list)
    {
        if (list.IsSingleAllowed)
        {
            json.WriteStartArray("anyOf");
            json.WriteStartObject();
            WriteBody(list.Item, isBesideDescription: true);
            json.WriteEndObject();
            json.WriteStartObject();
            WriteManyOf(list);
            json.WriteEndObject();
            json.WriteEndArray();
        }
        else
        {
            WriteManyOf(list);
        }
    }

    private void WriteManyOf(ListFormat list)
    {
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        WriteBody(list.Item, isBesideDescription: false);
        json.WriteEndObject();
        if (list.Least > 0)
        {
            json.WriteNumber("minItems", list.Least);
        }

        if (list.Greatest < int.MaxValue)
        {
            json.WriteNumber("maxItems", list.Greatest);
        }
    }

    private void WriteParameters(ParametersFormat parameters)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("propertyNames");
        json.WriteString("pattern", Patterns.ParameterName);
        json.WriteEndObject();
        json.WriteStartObject("additionalProperties");
        WriteAlternatives([new ParameterValueFormat(), parameters.Detail]);
        json.WriteEndObject();
    }

    private void WriteAlternatives(IEnumerable<ValueFormat> alternatives)
    {
        json.WriteStartArray("anyOf");
        foreach (var alternative in alternatives)
        {
            json.WriteStartObject();
            WriteBody(alternative, isBesideDescription: alternative is QuantityFormat);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteQuantity(string name, Dimension dimension, string description)
    {
        json.WriteStartObject(name);
        json.WriteString("description", description);
        json.WriteStartArray("anyOf");
        WriteNumberOr(Patterns.Literal(dimension), Patterns.Expression);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WriteAnyQuantity()
    {
        json.WriteStartObject("quantity");
        json.WriteString("description", "A plain number, a length, an angle or a mass, or an expression.");
        json.WriteStartArray("anyOf");
        WriteNumberOr(
            Patterns.Literal(Dimension.Number),
            Patterns.Literal(Dimension.Length),
            Patterns.Literal(Dimension.Angle),
            Patterns.Literal(Dimension.Mass),
            Patterns.Expression);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WriteNumberOr(params ReadOnlySpan<string> patterns)
    {
        json.WriteStartObject();
        json.WriteString("type", "number");
        json.WriteEndObject();
        foreach (var pattern in patterns)
        {
            json.WriteStartObject();
            json.WriteString("type", "string");
            json.WriteString("pattern", pattern);
            json.WriteEndObject();
        }
    }

    private void WriteDefault(string? text)
    {
        if (text is not null && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
        {
            json.WriteNumber("default", number);
        }
        else if (text is not null)
        {
            json.WriteString("default", text);
        }
    }

    /// <summary>All formats below one, each once.</summary>
    private static void Collect(ValueFormat format, List<ValueFormat> formats)
    {
        if (formats.Contains(format))
        {
            return;
        }

        formats.Add(format);
        IEnumerable<ValueFormat> below = format switch
        {
            MappingFormat mapping => mapping.Keys.Select(key => key.Format),
            ChoiceFormat choice => choice.Alternatives,
            ListFormat list => [list.Item],
            ParametersFormat parameters => [parameters.Detail],
            _ => [],
        };
        foreach (var each in below)
        {
            Collect(each, formats);
        }
    }

    private static string Description(Key key)
    {
        var text = key.Summary;
        if (key.Format is QuantityFormat { Range: var range, Dimension: var dimension } && range != Interval.Any)
        {
            var unit = dimension == Dimension.Angle ? " deg" : "";
            text += $" Allowed: {range.Text(limit => QuantityText.Number(limit) + unit)}.";
        }

        return key.Presence.Instead is { } instead ? $"{text} Without it: {instead}." : text;
    }

    private static string NameOf(Dimension dimension) => dimension switch
    {
        Dimension.Length => "length",
        Dimension.Angle => "angle",
        _ => "proportion",
    };

    private static string IdOf(ValueFormat format) => format is MappingFormat mapping ? mapping.Id : ((ChoiceFormat)format).Id;
}
