using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Format;
using PlanForge.Airframe.Reading.Yaml;

namespace PlanForge.Airframe.Reading;

/// <summary>Finds out which of several formats was written.</summary>
internal static class Alternative
{
    /// <summary>The format for a single value: the words when it is one of them, else whatever is no list of words.</summary>
    public static ValueFormat? OfScalar(ChoiceFormat choice, string text)
    {
        ValueFormat? scalar = null;
        foreach (var alternative in choice.Alternatives)
        {
            if (alternative is WordFormat words && words.Words.Contains(text))
            {
                return words;
            }

            if (alternative is not MappingFormat && scalar is null or WordFormat)
            {
                scalar = alternative;
            }
        }

        return scalar;
    }

    /// <summary>The format whose deciding keys a mapping has.</summary>
    /// <returns>
    /// The format and the mapping without the keys of other formats, which were reported; a null format when none could be told,
    /// which was reported too; null when the choice has no mappings.
    /// </returns>
    public static (MappingFormat? Format, YamlMapping Given)? Find(YamlMapping given, ChoiceFormat choice, DiagnosticList diagnostics)
    {
        if (choice.Mappings.IsEmpty)
        {
            return null;
        }

        foreach (var mapping in choice.Mappings)
        {
            if (FirstDecidingKey(given, mapping, choice) is { } decider)
            {
                return (mapping, WithoutForeignKeys(given, mapping, choice, decider, diagnostics));
            }
        }

        if (choice.Mappings is [var only])
        {
            return (only, given);
        }

        var union = new MappingFormat(choice.Id, choice.Noun, [.. choice.Mappings.SelectMany(m => m.Keys).DistinctBy(k => k.Name)]);
        if (UnknownKeys.Report(given, union, union.Keys, diagnostics).Count == 0 && !given.IsIncomplete)
        {
            var ways = choice.Mappings.Select(m => Quote.List(RequiredNames(m)));
            diagnostics.Error(given.At, $"{choice.Noun} needs {string.Join(", or ", ways)}");
        }

        return (null, given);
    }

    /// <summary>What a choice allows, for a message.</summary>
    public static string Describe(ChoiceFormat choice)
    {
        var isScalar = choice.Alternatives.Any(a => a is not MappingFormat);
        var isMapping = choice.Alternatives.Any(a => a is MappingFormat);
        return isScalar && isMapping ? "a single value or a mapping of keys" : isScalar ? "a single value" : "a mapping of keys";
    }

    private static YamlMapping WithoutForeignKeys(
        YamlMapping given, MappingFormat chosen, ChoiceFormat choice, string decider, DiagnosticList diagnostics)
    {
        var own = new List<YamlEntry>(given.Entries.Count);
        foreach (var entry in given.Entries)
        {
            if (chosen.Find(entry.Key.Text) is null && IsKeyOfAnother(entry.Key.Text, chosen, choice))
            {
                diagnostics.Error(entry.Key.At, $"{Quote.Text(entry.Key.Text)} does not go with `{decider}`");
            }
            else
            {
                own.Add(entry);
            }
        }

        return given with { Entries = own };
    }

    /// <summary>The first required key, in the order of the format, that the mapping has and no other format knows.</summary>
    private static string? FirstDecidingKey(YamlMapping given, MappingFormat format, ChoiceFormat choice)
    {
        foreach (var key in format.Keys)
        {
            if (key.Presence == Presence.Required && given.Find(key.Name) is not null && !IsKeyOfAnother(key.Name, format, choice))
            {
                return key.Name;
            }
        }

        return null;
    }

    private static bool IsKeyOfAnother(string key, MappingFormat format, ChoiceFormat choice)
    {
        foreach (var other in choice.Mappings)
        {
            if (other != format && other.Find(key) is not null)
            {
                return true;
            }
        }

        return false;
    }

    private static string[] RequiredNames(MappingFormat format) =>
        [.. format.Keys.Where(k => k.Presence == Presence.Required).Select(k => k.Name)];
}
