using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>
/// Reads a small YAML file that lists things by name, each with the same few keys: <c>list: {name: {key: value}}</c>. The same
/// YAML is allowed as in descriptions.
/// </summary>
public static class NamedEntries
{
    /// <summary>The entries in the order of the file; what is wrong goes to the findings. An empty text has none.</summary>
    /// <param name="file">The file's name, for the findings.</param>
    /// <param name="text">Its text.</param>
    /// <param name="list">The key of the list, the only one of the file.</param>
    /// <param name="keys">The keys of an entry; all are needed.</param>
    public static NamedEntriesResult Read(string file, string text, string list, ImmutableArray<string> keys)
    {
        ArgumentNullException.ThrowIfNull(text);
        var diagnostics = new DiagnosticList(file);
        var entries = ImmutableArray.CreateBuilder<NamedEntry>();
        if (!string.IsNullOrWhiteSpace(text) && YamlLoader.Load(new(file, text), diagnostics) is { } root)
        {
            foreach (var (key, value) in root.Entries)
            {
                if (key.Text != list)
                {
                    ReportUnknown(key, [list], "this file", diagnostics);
                }
                else if (value is YamlMapping all)
                {
                    AddEntries(all, keys, entries, diagnostics);
                }
                else if (value is not YamlScalar { IsEmpty: true })
                {
                    diagnostics.Error(value.At, $"{Quote.Text(list)} takes a mapping of names, not {value.Noun}");
                }
            }
        }

        return new(entries.ToImmutable(), diagnostics.ToSorted());
    }

    private static void AddEntries(
        YamlMapping all, ImmutableArray<string> keys, ImmutableArray<NamedEntry>.Builder entries, DiagnosticList diagnostics)
    {
        foreach (var (name, value) in all.Entries)
        {
            if (value is YamlMapping entry)
            {
                entries.Add(new(name.Text, name.At, ValuesOf(name, entry, keys, diagnostics)));
            }
            else
            {
                diagnostics.Error(value.At, $"{Quote.Text(name.Text)} takes a mapping with {Quote.List(keys)}, not {value.Noun}");
            }
        }
    }

    private static ImmutableDictionary<string, EntryValue> ValuesOf(
        YamlScalar name, YamlMapping entry, ImmutableArray<string> keys, DiagnosticList diagnostics)
    {
        var values = ImmutableDictionary.CreateBuilder<string, EntryValue>(StringComparer.Ordinal);
        foreach (var (key, value) in entry.Entries)
        {
            if (!keys.Contains(key.Text))
            {
                ReportUnknown(key, keys, Quote.Text(name.Text), diagnostics);
            }
            else if (value is YamlScalar { IsEmpty: false } scalar)
            {
                values.Add(key.Text, new(scalar.Text, scalar.At));
            }
            else
            {
                diagnostics.Error(value.At, $"{Quote.Text(key.Text)} takes a single value, not {(value is YamlScalar ? "nothing" : value.Noun)}");
            }
        }

        foreach (var key in keys)
        {
            if (entry.Find(key) is null && !diagnostics.HasErrors)
            {
                diagnostics.Error(name.At, $"{Quote.Text(name.Text)} lacks the key {Quote.Text(key)}");
            }
        }

        return values.ToImmutable();
    }

    private static void ReportUnknown(YamlScalar key, ImmutableArray<string> known, string owner, DiagnosticList diagnostics) =>
        diagnostics.Error(key.At, Spelling.Near(key.Text, known) is { } near
            ? $"{owner} has no key {Quote.Text(key.Text)}; did you mean `{near}`?"
            : $"{owner} has no key {Quote.Text(key.Text)}; its keys are {Quote.List(known)}");
}

/// <summary>What a file of named entries holds.</summary>
/// <param name="Entries">The entries; to be used only when there are no findings.</param>
/// <param name="Findings">What is wrong.</param>
public sealed record NamedEntriesResult(ImmutableArray<NamedEntry> Entries, ImmutableArray<Diagnostic> Findings);

/// <summary>A named entry.</summary>
/// <param name="Name">Its name.</param>
/// <param name="At">Where the name stands.</param>
/// <param name="Values">Its values by key.</param>
public sealed record NamedEntry(string Name, SourcePosition At, ImmutableDictionary<string, EntryValue> Values);

/// <summary>A value as it was written.</summary>
/// <param name="Text">The text without quotes.</param>
/// <param name="At">Where it stands.</param>
public sealed record EntryValue(string Text, SourcePosition At);
