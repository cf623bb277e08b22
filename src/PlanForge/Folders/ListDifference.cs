using System.Collections.Immutable;
using System.Text.Json;

namespace PlanForge.Folders;

/// <summary>
/// A list told by what a later one has of it: <c>[first, count]</c> stands for that many entries of the later list from that one on,
/// counted from 0; anything else is an entry that the later list has not.
/// </summary>
internal static class ListDifference
{
    /// <summary>Writes an earlier list as a member of an open object.</summary>
    /// <param name="json">Takes it.</param>
    /// <param name="name">The member's name.</param>
    /// <param name="later">The later list.</param>
    /// <param name="earlier">The earlier list.</param>
    /// <param name="write">Writes an entry; not as an array.</param>
    public static void Write<T>(Utf8JsonWriter json, string name, ImmutableArray<T> later, ImmutableArray<T> earlier, Action<T> write)
        where T : class, IEquatable<T>
    {
        var places = new Dictionary<T, int>(later.Length);
        for (var i = 0; i < later.Length; i++)
        {
            places.TryAdd(later[i], i);
        }

        json.WriteStartArray(name);
        var (first, count) = (0, 0);
        foreach (var entry in earlier)
        {
            if (places.TryGetValue(entry, out var place))
            {
                if (count == 0 || place != first + count)
                {
                    WriteRun();
                    first = place;
                }

                count++;
            }
            else
            {
                WriteRun();
                write(entry);
            }
        }

        WriteRun();
        json.WriteEndArray();

        void WriteRun()
        {
            if (count > 0)
            {
                json.WriteStartArray();
                json.WriteNumberValue(first);
                json.WriteNumberValue(count);
                json.WriteEndArray();
                count = 0;
            }
        }
    }

    /// <summary>Finds the earlier list again.</summary>
    /// <param name="json">What was written.</param>
    /// <param name="later">The later list.</param>
    /// <param name="read">Reads an entry.</param>
    /// <exception cref="FormatException">It asks for entries that the later list has not.</exception>
    /// <exception cref="InvalidOperationException">It is no such list.</exception>
    public static ImmutableArray<T> Read<T>(JsonElement json, ImmutableArray<T> later, Func<JsonElement, T> read)
    {
        var earlier = ImmutableArray.CreateBuilder<T>(later.Length);
        foreach (var step in json.EnumerateArray())
        {
            if (step.ValueKind != JsonValueKind.Array)
            {
                earlier.Add(read(step));
                continue;
            }

            var (first, count) = step.GetArrayLength() == 2 ? (step[0].GetInt32(), step[1].GetInt32()) : (-1, 0);
            if (first < 0 || count < 0 || first > later.Length - count)
            {
                throw new FormatException($"The later list has no entries {step.GetRawText()}.");
            }

            earlier.AddRange(later.AsSpan(first, count));
        }

        return earlier.DrainToImmutable();
    }
}
