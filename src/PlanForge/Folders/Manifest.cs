using System.Collections.Immutable;
using System.Text.Json;

namespace PlanForge.Folders;

/// <summary>What a run drew and which files of a design's folder it wrote: it tells our files from the user's, and old paper from new.</summary>
/// <param name="Paths">The paths of all files but the manifest and the history.</param>
/// <param name="Description">The description as it was drawn; null in a manifest of a version that kept none.</param>
/// <param name="State">What was drawn; null in a manifest of a version that did not say so.</param>
internal sealed record Manifest(ImmutableArray<string> Paths, DrawnDescription? Description, DrawnState? State)
{
    public const string FileName = "manifest.json";

    private const string Tool = "planforge";
    private const string Files = "files";
    private const string Path = "path";
    private const string Copy = "description";
    private const string With = "with";

    /// <summary>The manifest as a file; the same design and files give the same bytes.</summary>
    /// <param name="state">What was drawn.</param>
    /// <param name="description">The description among the files.</param>
    /// <param name="files">All files but the manifest itself.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    public static OutputFile Of(DrawnState state, DrawnDescription description, IEnumerable<OutputFile> files, KeptFiles? kept = null) => new(FileName, JsonText.Write(json =>
    {
        kept ??= new();
        json.WriteStartObject();
        json.WriteString(Tool, state.Version);
        state.Write(json);
        json.WriteString(Copy, description.Path);
        if (!description.With.IsEmpty)
        {
            json.WriteTexts(With, description.With);
        }

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

    /// <summary>The manifest in a folder; null when there is none of ours.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static Manifest? In(string folder)
    {
        var path = System.IO.Path.Combine(folder, FileName);
        return File.Exists(path) ? Read(File.ReadAllBytes(path)) : null;
    }

    /// <summary>Reads a manifest; null when the bytes are none of ours.</summary>
    public static Manifest? Read(ReadOnlyMemory<byte> content)
    {
        try
        {
            using var document = JsonDocument.Parse(content);
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty(Tool, out var tool) || tool.ValueKind != JsonValueKind.String
                || !root.TryGetProperty(Files, out var files) || files.ValueKind != JsonValueKind.Array)
            {
                return null;
            }

            var paths = ImmutableArray.CreateBuilder<string>();
            foreach (var file in files.EnumerateArray())
            {
                if (file.ValueKind != JsonValueKind.Object || !file.TryGetProperty(Path, out var path) || path.ValueKind != JsonValueKind.String)
                {
                    return null;
                }

                paths.Add(path.GetString()!);
            }

            return new(paths.ToImmutable(), DescriptionIn(root), DrawnState.Read(root, tool.GetString()!));
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static DrawnDescription? DescriptionIn(JsonElement root)
    {
        if (!root.TryGetProperty(Copy, out var named) || named.ValueKind != JsonValueKind.String)
        {
            return null;
        }

        var with = root.TryGetProperty(With, out var given) && given.ValueKind == JsonValueKind.Array ? given.EnumerateArray().ToList() : [];
        return with.TrueForAll(value => value.ValueKind == JsonValueKind.String)
            ? new(named.GetString()!, [.. with.Select(value => value.GetString()!)])
            : null;
    }
}

/// <summary>A description as it was drawn.</summary>
/// <param name="Path">Its path in the design's folder.</param>
/// <param name="With">Values for parameters in the place of its own, each <c>NAME=VALUE</c>.</param>
internal sealed record DrawnDescription(string Path, ImmutableArray<string> With);
