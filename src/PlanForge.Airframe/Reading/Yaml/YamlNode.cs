using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;

namespace PlanForge.Airframe.Reading.Yaml;

/// <summary>A node of the description's tree.</summary>
/// <param name="At">Where it stands: all of it when it is on one line, else its first key or character.</param>
internal abstract record YamlNode(SourcePosition At)
{
    /// <summary>What to call this kind of node in a message, with its article.</summary>
    public abstract string Noun { get; }
}

/// <summary>A single value: always text, however it reads.</summary>
/// <param name="At">Where it stands, quotes included.</param>
/// <param name="Text">The value without quotes and escapes.</param>
/// <param name="Source">Where its characters come from, or null when the description did not give it.</param>
internal sealed record YamlScalar(SourcePosition At, string Text, ScalarSource? Source) : YamlNode(At)
{
    public override string Noun => "a single value";

    /// <summary>True for a key with nothing behind it.</summary>
    public bool IsEmpty => Text.Length == 0;

    // Set on a part of another scalar.
    private (YamlScalar Whole, int Offset)? Origin { get; init; }

    /// <summary>The position of a stretch of <see cref="Text"/>.</summary>
    public SourcePosition AtPart(int offset, int length) => Origin is var (whole, start)
        ? whole.AtPart(start + offset, length)
        : Source?.AtPart(Text, offset, length) ?? At;

    /// <summary>A stretch of this scalar, without the blanks around it, as a scalar.</summary>
    public YamlScalar Part(int start, int end)
    {
        while (start < end && Characters.IsBlank(Text[start]))
        {
            start++;
        }

        while (start < end && Characters.IsBlank(Text[end - 1]))
        {
            end--;
        }

        return new(AtPart(start, Math.Max(1, end - start)), Text[start..end], null) { Origin = (this, start) };
    }
}

/// <summary>A list.</summary>
internal sealed record YamlList(SourcePosition At, List<YamlNode> Items) : YamlNode(At)
{
    public override string Noun => "a list";
}

/// <summary>A mapping; its keys are different from each other.</summary>
/// <param name="At">Where it stands.</param>
/// <param name="Entries">The keys and their values in the order of the file.</param>
/// <param name="IsIncomplete">True when an entry was refused: then a missing key is no news.</param>
internal sealed record YamlMapping(SourcePosition At, List<YamlEntry> Entries, bool IsIncomplete) : YamlNode(At)
{
    public override string Noun => "a mapping";

    /// <summary>The value of a key, or null.</summary>
    public YamlNode? Find(string key)
    {
        foreach (var entry in Entries)
        {
            if (entry.Key.Text == key)
            {
                return entry.Value;
            }
        }

        return null;
    }
}

/// <summary>A node that was refused and reported.</summary>
internal sealed record YamlRefused(SourcePosition At) : YamlNode(At)
{
    public override string Noun => "nothing";
}

/// <summary>A key with its value.</summary>
internal sealed record YamlEntry(YamlScalar Key, YamlNode Value);
