using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Measuring;

namespace PlanForge.Airframe.Schema;

/// <summary>The JSON Schema of the description, for editors that complete and check YAML by one.</summary>
/// <remarks>
/// Draft-07, which those editors read. It is written from the same table of formats the reader walks, so that it offers every
/// key the reader knows and no other. What a schema cannot say, such as dimensions inside expressions and limits that depend on
/// other values, only the reader checks: the schema never refuses what the reader accepts, but for <c>planforge: "1"</c> in quotes.
/// </remarks>
public static class DescriptionSchema
{
    /// <summary>The schema as indented JSON with LF line ends, the same on every run.</summary>
    public static string ToJson() => JsonSchemaText.Of("PlanForge airframe description", AirframeFormat.Root);
}

/// <summary>The JSON Schema of files of measurements, by the same rules: see <see cref="DescriptionSchema"/>.</summary>
public static class MeasurementSchema
{
    /// <summary>The schema as indented JSON with LF line ends, the same on every run.</summary>
    public static string ToJson() => JsonSchemaText.Of("PlanForge bench measurements", MeasuringFormat.Root);
}

/// <summary>The text of a schema.</summary>
internal static class JsonSchemaText
{
    public static string Of(string title, MappingFormat root)
    {
        using var stream = new MemoryStream();

        // The relaxed encoder keeps degree signs and quotes readable; the text goes into no web page.
        var encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        using (var json = new Utf8JsonWriter(stream, new() { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = encoder }))
        {
            new SchemaWriter(json).WriteRoot(title, root);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }
}
