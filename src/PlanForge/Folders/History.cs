using System.Text;
using System.Text.Json;

namespace PlanForge.Folders;

/// <summary>
/// What earlier runs drew into a folder, in a file of its own, so that the other files depend on the description alone. It holds no
/// times: what was drawn before what is all that matters.
/// </summary>
/// <remarks>
/// Each run that draws something else adds one line, the step back to what the run before drew, in front of the others. These are passed on
/// as they are, without being read: that costs the same whatever they hold, and what is damaged harms nobody but who asks for it.
/// </remarks>
internal static class History
{
    public const string FileName = "history.json";

    /// <summary>The most steps that are kept.</summary>
    public const int Greatest = 1000;

    private const string Tool = "planforge";
    private const string Steps = "steps_back";

    // What versions wrote that kept each state whole.
    private const string WholeStates = "earlier";

    private static ReadOnlySpan<byte> Begin => "  \"steps_back\": [\n"u8;

    private static ReadOnlySpan<byte> End => "\n  ]\n}\n"u8;

    private static ReadOnlySpan<byte> Indent => "    "u8;

    private static ReadOnlySpan<byte> Next => ",\n"u8;

    /// <summary>The file after another run; null while nothing was ever drawn but what is drawn now.</summary>
    /// <param name="before">What the last run drew, or null.</param>
    /// <param name="file">The file as the last run left it; empty for none.</param>
    /// <param name="now">What this run draws.</param>
    public static OutputFile? After(DrawnState? before, ReadOnlyMemory<byte> file, DrawnState now)
    {
        if (before is null)
        {
            return file.IsEmpty ? null : new(FileName, file);
        }

        var lines = LinesOf(file, before);
        return !before.IsSameAs(now) ? Frame(now, StateDifference.Write(now, before), FirstOf(lines, Greatest - 1))
            : lines.IsEmpty ? null
            : Frame(now, [], lines);
    }

    /// <summary>All that was ever drawn into a folder, the latest first; none where nothing was, or where another program wrote it.</summary>
    /// <exception cref="IOException">The folder's files cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder's files may not be read.</exception>
    public static IEnumerable<DrawnState> StatesIn(string folder)
    {
        return Manifest.In(folder)?.State is { } last ? Read(ReadFile(folder), last).Prepend(last) : [];
    }

    /// <summary>The file in a folder; empty where there is none.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static ReadOnlyMemory<byte> ReadFile(string folder)
    {
        var path = Path.Combine(folder, FileName);
        return File.Exists(path) ? File.ReadAllBytes(path) : ReadOnlyMemory<byte>.Empty;
    }

    /// <summary>The states in a file, the latest first, as they are asked for; lines that lead back from no state are passed over.</summary>
    /// <param name="file">The file; empty for none.</param>
    /// <param name="last">What was drawn last, which is not in the file.</param>
    public static IEnumerable<DrawnState> Read(ReadOnlyMemory<byte> file, DrawnState last)
    {
        var lines = LinesOf(file, last);
        var later = last;
        while (!lines.IsEmpty)
        {
            var end = lines.Span.IndexOf((byte)'\n');
            var line = end < 0 ? lines : lines[..end];
            lines = end < 0 ? default : lines[(end + 1)..];
            if (StateDifference.Read(line.Span is [.., (byte)','] ? line[..^1] : line, later) is { } earlier)
            {
                yield return earlier;
                later = earlier;
            }
        }
    }

    /// <summary>The lines of a file with what parts them; none where nothing can be made of it.</summary>
    private static ReadOnlyMemory<byte> LinesOf(ReadOnlyMemory<byte> file, DrawnState last)
    {
        var begin = file.Span.IndexOf(Begin);
        if (begin >= 0)
        {
            // A file that was cut off has no proper end; what is left of its last line is passed over when it is read.
            var lines = file[(begin + Begin.Length)..];
            return lines.Span.EndsWith(End) ? lines[..^End.Length] : lines[..lines.Span.TrimEnd(" \r\n,"u8).Length];
        }

        try
        {
            using var document = file.IsEmpty ? null : JsonDocument.Parse(file);
            return document?.RootElement switch
            {
                null => default,
                { } root when root.TryGetProperty(Steps, out var steps) => Joined(steps.EnumerateArray().Select(step => JsonText.Line(step.WriteTo))),
                { } root when root.TryGetProperty(WholeStates, out var states) => Joined(StepsOf(states, last)),
                _ => default,
            };
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return default;
        }
    }

    private static IEnumerable<byte[]> StepsOf(JsonElement states, DrawnState last)
    {
        var later = last;
        foreach (var entry in states.EnumerateArray())
        {
            if (DrawnState.Read(entry, entry.GetProperty(Tool).GetString() ?? "") is { } state)
            {
                yield return StateDifference.Write(later, state);
                later = state;
            }
        }
    }

    private static byte[] Joined(IEnumerable<byte[]> steps)
    {
        using var lines = new MemoryStream();
        foreach (var step in steps)
        {
            lines.Write(lines.Length > 0 ? Next : []);
            lines.Write(Indent);
            lines.Write(step);
        }

        return lines.ToArray();
    }

    private static ReadOnlyMemory<byte> FirstOf(ReadOnlyMemory<byte> lines, int count)
    {
        var length = 0;
        for (var i = 0; i < count; i++)
        {
            var end = lines.Span[length..].IndexOf((byte)'\n');
            if (end < 0)
            {
                return lines;
            }

            length += end + 1;
        }

        return lines[..(length - Next.Length)];
    }

    private static OutputFile Frame(DrawnState now, byte[] first, ReadOnlyMemory<byte> others)
    {
        using var file = new MemoryStream(first.Length + others.Length + 100);
        file.Write(Encoding.UTF8.GetBytes($"{{\n  \"{Tool}\": \"{JsonEncodedText.Encode(now.Version)}\",\n"));
        file.Write(Begin);
        if (first.Length > 0)
        {
            file.Write(Indent);
            file.Write(first);
            file.Write(others.IsEmpty ? [] : Next);
        }

        file.Write(others.Span);
        file.Write(End);
        return new(FileName, file.GetBuffer().AsMemory(0, (int)file.Length));
    }
}
