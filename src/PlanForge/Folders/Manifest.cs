using System.Text.Json;

namespace PlanForge.Folders;

/// <summary>The list of what a run wrote into a design's folder: it tells our files from the user's.</summary>
internal static class Manifest
{
    public const string FileName = "manifest.json";

    private const string Tool = "planforge";
    private const string Files = "files";
    private const string Path = "path";

    /// <summary>Writes the list; the same files give the same bytes.</summary>
    /// <param name="design">The design's name.</param>
    /// <param name="files">All files but the list itself.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    public static OutputFile Of(string design, IEnumerable<OutputFile> files, KeptFiles? kept = null) => new(FileName, JsonText.Write(json =>
    {
        kept ??= new();
        json.WriteStartObject();
        json.WriteString(Tool, ToolVersion.Text);
        json.WriteString("design", design);
        json.WriteStartArray(Files);
        foreach (var file in files.OrderBy(file => file.Path, StringComparer.Ordinal))
        {
            json.WriteStartObject();
            json.WriteString(Path, file.Path);
            json.WriteNumber("bytes", file.Content.Length);
            json.WriteString("sha256", kept.HashOf(file));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }));

    /// <summary>The paths a list names and its own; null when the bytes are no list of ours.</summary>
    public static HashSet<string>? PathsIn(ReadOnlyMemory<byte> content)
    {
        try
        {
            using var document = JsonDocument.Parse(content);
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty(Tool, out _)
                || !root.TryGetProperty(Files, out var files) || files.ValueKind != JsonValueKind.Array)
            {
                return null;
            }

            var paths = new HashSet<string>(StringComparer.Ordinal) { FileName };
            foreach (var file in files.EnumerateArray())
            {
                if (file.ValueKind != JsonValueKind.Object || !file.TryGetProperty(Path, out var path) || path.ValueKind != JsonValueKind.String)
                {
                    return null;
                }

                paths.Add(path.GetString()!);
            }

            return paths;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
