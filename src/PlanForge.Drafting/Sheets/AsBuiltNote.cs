using PlanForge.Airframe;
using PlanForge.Airframe.Building;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Sheets;

/// <summary>The foot note that says which measured wood the drawings follow.</summary>
internal static class AsBuiltNote
{
    // About three lines beside the title block; the rest is in the report.
    private const int Greatest = 6;

    /// <summary>The note, or none when nothing was measured otherwise than designed.</summary>
    public static IEnumerable<string> Of(AirframeDescription airframe)
    {
        var text = new MeasureText(airframe.DisplayUnit);
        var moved = airframe.AsBuilt?.Measurements.Where(measurement => measurement.IsOff).ToList() ?? [];
        if (moved.Count == 0)
        {
            yield break;
        }

        var more = moved.Count > Greatest ? FormattableString.Invariant($"; and {moved.Count - Greatest} more, in the report") : "";
        yield return $"As built: {string.Join("; ", moved.Take(Greatest).Select(measurement => Entry(measurement, text)))}{more}.";
    }

    private static string Entry(Measurement measurement, MeasureText text) =>
        $"{measurement.Thing.Label(text.CoarseWithUnit)} {text.FineWithUnit(measurement.Built)} (designed {text.Fine(measurement.Designed)})";
}
