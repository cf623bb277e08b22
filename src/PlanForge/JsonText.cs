using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PlanForge;

/// <summary>Writes JSON the same way everywhere: indented by two, LF line ends, one at the end, UTF-8 without a mark.</summary>
internal static class JsonText
{
    /// <summary>All on one line.</summary>
    public static JsonWriterOptions Compact { get; } = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A file's bytes.</summary>
    public static byte[] Write(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Compact with { Indented = true, IndentSize = 2, NewLine = "\n" }))
        {
            write(json);
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }

    /// <summary>A single line, without its end.</summary>
    public static byte[] Line(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Compact))
        {
            write(json);
        }

        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Writes a member that is a list of objects.</summary>
    /// <param name="json">Takes it.</param>
    /// <param name="name">The member's name.</param>
    /// <param name="items">What is written.</param>
    /// <param name="write">Writes the members of one of them.</param>
    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a member that is a list of texts.</summary>
    /// <param name="json">Takes it.</param>
    /// <param name="name">The member's name.</param>
    /// <param name="texts">What is written.</param>
    public static void WriteTexts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
