using PlanForge.Airframe.Described;

namespace PlanForge.Comparing;

/// <summary>Says which values caused a change; values behind which a parameter changed go by the parameter.</summary>
internal static class CauseText
{
    private const int Most = 6;

    /// <summary>The causes in a line, such as <c>body_width 92 mm -> 94 mm, formers[F2].station 120 mm -> 125 mm</c>; empty without any.</summary>
    public static string Of(IEnumerable<ValueChange> values)
    {
        var all = Named(values).Distinct(StringComparer.Ordinal).ToList();
        return string.Join(", ", all.Take(Most)) + (all.Count > Most ? $" and {Reports.Counts.Of(all.Count - Most, "other value")}" : "");
    }

    /// <summary>Each cause by itself.</summary>
    private static IEnumerable<string> Named(IEnumerable<ValueChange> values)
    {
        foreach (var value in values)
        {
            if (value.Parameters.IsEmpty)
            {
                yield return $"{value.Path} {value.Shown}";
            }

            foreach (var parameter in value.Parameters)
            {
                yield return $"{parameter.Path["parameters[".Length..^1]} {parameter.Shown}";
            }
        }
    }
}
