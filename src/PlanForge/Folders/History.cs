using System.Collections.Immutable;
using System.Text.Json;

namespace PlanForge.Folders;

/// <summary>
/// What earlier runs drew into a folder, the latest first. It stands in a file of its own, so that the other files depend on the
/// description alone. It holds no times: what was drawn before what is all that matters.
/// </summary>
internal static class History
{
    public const string FileName = "history.json";

    // Older paper than that is asked about by nobody; each entry takes a few kilobytes.
    private const int Greatest = 100;

    private const string Tool = "planforge";
    private const string Earlier = "earlier";

    /// <summary>The file after another run; null while nothing was ever drawn but what is drawn now.</summary>
    /// <param name="before">What the last run drew, or null.</param>
    /// <param name="earlier">What was drawn before that.</param>
    /// <param name="now">What this run draws.</param>
    public static OutputFile? Next(DrawnState? before, ImmutableArray<DrawnState> earlier, DrawnState now)
    {
        var states = before is null || before.IsSameAs(now) ? earlier : earlier.Insert(0, before);
        states = [.. states.Where(state => !state.IsSameAs(now)).Take(Greatest)];
        return states.IsEmpty ? null : new(FileName, JsonText.Write(json =>
        {
            json.WriteStartObject();
            json.WriteString(Tool, now.Version);
            json.WriteStartArray(Earlier);
            foreach (var state in states)
            {
                json.WriteStartObject();
                json.WriteString(Tool, state.Version);
                state.Write(json);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }));
    }

    /// <summary>All that was ever drawn into a folder, the latest first; none where nothing was, or where another program wrote it.</summary>
    /// <exception cref="IOException">The folder's files cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder's files may not be read.</exception>
    public static ImmutableArray<DrawnState> StatesIn(string folder)
    {
        var manifest = Path.Combine(folder, Manifest.FileName);
        if (!File.Exists(manifest) || Manifest.Read(File.ReadAllBytes(manifest))?.State is not { } last)
        {
            return [];
        }

        var history = Path.Combine(folder, FileName);
        return [last, .. File.Exists(history) ? Read(File.ReadAllBytes(history)) : []];
    }

    /// <summary>The states in a file's bytes; none when they are none of ours.</summary>
    public static ImmutableArray<DrawnState> Read(ReadOnlyMemory<byte> content)
    {
        try
        {
            using var document = JsonDocument.Parse(content);
            var states = ImmutableArray.CreateBuilder<DrawnState>();
            foreach (var entry in document.RootElement.GetProperty(Earlier).EnumerateArray())
            {
                if (DrawnState.Read(entry, entry.GetProperty(Tool).GetString() ?? "") is { } state)
                {
                    states.Add(state);
                }
            }

            return states.ToImmutable();
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return [];
        }
    }
}
