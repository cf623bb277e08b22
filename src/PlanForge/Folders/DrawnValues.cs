using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using PlanForge.Airframe.Described;

namespace PlanForge.Folders;

/// <summary>
/// A description's values as the manifest and the history hold them: a line of JSON each. Runs that only pass them on compare lines;
/// whoever wants to know what they say reads them.
/// </summary>
/// <param name="Values">A line for each value, in the description's order.</param>
/// <param name="Parameters">A line for each parameter.</param>
internal sealed record DrawnValues(ImmutableArray<string> Values, ImmutableArray<string> Parameters)
{
    private const string ValuesName = "values";
    private const string ParametersName = "parameters";

    // In the order of ValueKind.
    private static readonly ImmutableArray<string> Kinds =
        ["number", "length", "angle", "mass", "text", "word", "size", "paper", "coordinates", "members", "presence"];

    /// <summary>The lines of a description's values.</summary>
    public static DrawnValues Of(DescribedValues values)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(buffer, JsonText.Compact);
        return new(LinesOf(values.Values), LinesOf(values.Parameters));

        ImmutableArray<string> LinesOf(ImmutableArray<DescribedValue> list)
        {
            var lines = ImmutableArray.CreateBuilder<string>(list.Length);
            foreach (var value in list)
            {
                buffer.ResetWrittenCount();
                json.Reset();
                Write(json, value);
                json.Flush();
                lines.Add(Encoding.UTF8.GetString(buffer.WrittenSpan));
            }

            return lines.MoveToImmutable();
        }
    }

    /// <summary>The lines in a manifest; null where it has none.</summary>
    public static DrawnValues? Read(JsonElement json) => LinesIn(json, ValuesName) is { } values && LinesIn(json, ParametersName) is { } parameters
        ? new(values, parameters)
        : null;

    /// <summary>An entry as a line, however it was set.</summary>
    public static string LineOf(JsonElement json)
    {
        var text = json.GetRawText();
        return text.AsSpan().ContainsAny('\n', '\r') ? Encoding.UTF8.GetString(JsonText.Line(json.WriteTo)) : text;
    }

    /// <summary>True when every line is the same.</summary>
    public bool IsSameAs(DrawnValues other) => Values.SequenceEqual(other.Values) && Parameters.SequenceEqual(other.Parameters);

    /// <summary>Writes the lines as members of an open object.</summary>
    public void Write(Utf8JsonWriter json)
    {
        WriteLines(ValuesName, Values);
        WriteLines(ParametersName, Parameters);

        // A line in the file for each, so that a change of one shows as one.
        void WriteLines(string name, ImmutableArray<string> lines)
        {
            json.WritePropertyName(name);
            json.WriteRawValue(lines.IsEmpty ? "[]" : $"[\n    {string.Join(",\n    ", lines)}\n  ]", skipInputValidation: true);
        }
    }

    /// <summary>What the lines say; null when one of them is none of ours.</summary>
    public DescribedValues? ToDescribed()
    {
        try
        {
            var read = new DescribedValues([.. Values.Select(ValueOf)], [.. Parameters.Select(ValueOf)]);
            return HaveOwnPaths(read.Values) && HaveOwnPaths(read.Parameters) ? read : null;
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return null;
        }
    }

    private static bool HaveOwnPaths(ImmutableArray<DescribedValue> values) => values.DistinctBy(value => value.Path, StringComparer.Ordinal).Count() == values.Length;

    private static ImmutableArray<string>? LinesIn(JsonElement json, string name)
    {
        if (!json.TryGetProperty(name, out var list) || list.ValueKind != JsonValueKind.Array)
        {
            return null;
        }

        var lines = ImmutableArray.CreateBuilder<string>(list.GetArrayLength());
        foreach (var item in list.EnumerateArray())
        {
            if (item.ValueKind != JsonValueKind.Object)
            {
                return null;
            }

            lines.Add(LineOf(item));
        }

        return lines.MoveToImmutable();
    }

    private static void Write(Utf8JsonWriter json, DescribedValue value)
    {
        json.WriteStartObject();
        json.WriteString("path", value.Path);
        json.WriteString("kind", Kinds[(int)value.Kind]);
        json.WriteString("value", value.Value);
        if (value.Shown != value.Value)
        {
            json.WriteString("shown", value.Shown);
        }

        if (!value.Parameters.IsEmpty)
        {
            json.WriteTexts(ParametersName, value.Parameters);
        }

        json.WriteEndObject();
    }

    private static DescribedValue ValueOf(string line)
    {
        using var document = JsonDocument.Parse(line);
        var json = document.RootElement;
        var kind = Kinds.IndexOf(Text(json.GetProperty("kind")));
        var value = Text(json.GetProperty("value"));
        return new(
            Text(json.GetProperty("path")),
            kind >= 0 ? (ValueKind)kind : throw new JsonException($"There is no such kind of value: {line}"),
            value,
            json.TryGetProperty("shown", out var shown) ? Text(shown) : value,
            json.TryGetProperty(ParametersName, out var parameters) ? [.. parameters.EnumerateArray().Select(Text)] : []);
    }

    private static string Text(JsonElement json) => json.GetString() ?? throw new JsonException("A text is null.");
}
