using System.Text.Encodings.Web;
using System.Text.Json;

namespace PlanForge;

/// <summary>Writes JSON the same way everywhere: indented by two, LF line ends, one at the end, UTF-8 without a mark.</summary>
internal static class JsonText
{
    public static byte[] Write(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new()
        {
            Indented = true,
            IndentSize = 2,
            NewLine = "\n",
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        }))
        {
            write(json);
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }
}
