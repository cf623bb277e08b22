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
        List<string>? missing = null;
        foreach (var (key, value) in given.Entries)
        {
            if (format.Find(key.Text) is not null)
            {
                continue;
            }

            var written = Quote.Text(key.Text);
            if (value is YamlScalar { IsEmpty: true } && SplitByComma(key.Text) is { } advice)
            {
                diagnostics.Error(key.At, $"{written} is no key: a comma begins a new one here; {advice}");
                continue;
            }

            missing ??= Missing(given, known);
            if (Spelling.Near(key.Text, missing) is { } near)
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

    /// <summary>The known keys that are not given: one that is cannot have been misspelled.</summary>
    private static List<string> Missing(YamlMapping given, ImmutableArray<Key> known)
    {
        var missing = new List<string>();
        foreach (var key in known)
        {
            if (given.Find(key.Name) is null)
            {
                missing.Add(key.Name);
            }
        }

        return missing;
    }

    /// <summary>What to say when a comma in a value within braces was taken for the end of the value; null when it was not.</summary>
    private static string? SplitByComma(string key) =>
        key.Contains(')', StringComparison.Ordinal) ? "put a value with a comma in quotes"
        : Characters.BeginsNumber(key, 0) ? "decimals are written with a point"
        : null;
}
