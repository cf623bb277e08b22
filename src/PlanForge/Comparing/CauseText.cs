using PlanForge.Airframe.Described;

namespace PlanForge.Comparing;

/// <summary>Says which values caused a change; values behind which a parameter changed go by the parameter.</summary>
internal static class CauseText
{
    private const int Most = 6;

    /// <summary>The causes in a line, such as <c>body_width 92 mm -> 94 mm, formers[F2].station 120 mm -> 125 mm</c>; empty without any.</summary>
    public static string Of(IEnumerable<ValueChange> values) => Joined(Each(values));

    /// <summary>The same as the end of a sentence: <c>because of body_width 92 mm -> 94 mm</c>; empty without any.</summary>
    public static string Because(IEnumerable<ValueChange> values) => Of(values) is { Length: > 0 } causes ? $"because of {causes}" : "";

    /// <summary>Some of the causes in a line.</summary>
    public static string Joined(IReadOnlyList<string> causes) =>
        string.Join(", ", causes.Take(Most)) + (causes.Count > Most ? $" and {Reports.Counts.Of(causes.Count - Most, "other value")}" : "");

    /// <summary>Each cause by itself, each once.</summary>
    public static IReadOnlyList<string> Each(IEnumerable<ValueChange> values) => [.. Named(values).Distinct(StringComparer.Ordinal)];

    /// <summary>A value with the parameters behind it: <c>wing.root.chord 187 mm -> 193 mm (wide 92 mm -> 95 mm)</c>.</summary>
    public static string WithParameters(ValueChange value) =>
        $"{value.Path} {value.Shown}" + (value.Parameters.IsEmpty ? "" : $" ({string.Join(", ", value.Parameters.Select(Named))})");

    private static IEnumerable<string> Named(IEnumerable<ValueChange> values) =>
        values.SelectMany(value => value.Parameters.IsEmpty ? [$"{value.Path} {value.Shown}"] : value.Parameters.Select(Named));

    private static string Named(ValueChange parameter) => $"{parameter.Path["parameters[".Length..^1]} {parameter.Shown}";
}
