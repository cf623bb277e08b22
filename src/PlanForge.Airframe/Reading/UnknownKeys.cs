using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Expressions;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>Finds the keys of a mapping that its format does not know.</summary>
internal static class UnknownKeys
{
    /// <summary>Reports them.</summary>
    /// <param name="given">The mapping.</param>
    /// <param name="format">What it is.</param>
    /// <param name="known">The keys to suggest.</param>
    /// <param name="diagnostics">Receives the findings.</param>
    /// <returns>The known keys that were suggested: they are misspelled, not missing.</returns>
    public static HashSet<string> Report(
        YamlMapping given, MappingFormat format, ImmutableArray<Key> known, DiagnosticList diagnostics)
    {
        var meant = new HashSet<string>();
        foreach (var (key, value) in given.Entries)
        {
            if (format.Find(key.Text) is not null)
            {
                continue;
            }

            var written = Quote.Text(key.Text);
            if (value is YamlScalar { IsEmpty: true } && IsTailOfValue(key.Text, given))
            {
                // The head of the value lacks its closing parenthesis and is reported for it, with the same advice.
                continue;
            }

            if (value is YamlScalar { IsEmpty: true } && Characters.BeginsNumber(key.Text, 0))
            {
                diagnostics.Error(key.At, $"{written} is no key: a comma begins a new one here; decimals are written with a point");
                continue;
            }

            var names = new List<string>();
            foreach (var candidate in known)
            {
                if (given.Find(candidate.Name) is null)
                {
                    names.Add(candidate.Name);
                }
            }

            if (Spelling.Near(key.Text, names) is { } near)
            {
                meant.Add(near);
                diagnostics.Error(key.At, $"{format.Noun} has no key {written}; did you mean `{near}`?");
            }
            else
            {
                var all = Quote.List(known.Select(k => k.Name).ToArray());
                diagnostics.Error(key.At, $"{format.Noun} has no key {written}; its keys are {all}");
            }
        }

        return meant;
    }

    /// <summary>True when a comma in a function within braces cut a value in two and this is its second half.</summary>
    private static bool IsTailOfValue(string key, YamlMapping given) => key.Contains(')', StringComparison.Ordinal)
        && given.Entries.Exists(e => e.Value is YamlScalar head && head.Text.Contains('(', StringComparison.Ordinal)
            && !head.Text.Contains(')', StringComparison.Ordinal));
}
