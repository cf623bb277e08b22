using PlanForge.Airframe.Diagnostics;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Parts.Comparison;
using PlanForge.Parts.Wording;

namespace PlanForge.Comparing;

/// <summary>The sheets of changed parts: new over old at true size, with what to do at its places.</summary>
internal static class ChangesFile
{
    /// <summary>True when a part's change shows as lines: else there is nothing to draw.</summary>
    public static bool HasDrawings(DesignComparison comparison) => comparison.Parts.Parts.Any(ChangeParts.IsDrawn);

    /// <summary>The PDF; null when an error was found.</summary>
    /// <param name="comparison">What changed.</param>
    /// <param name="print">What it is printed with.</param>
    /// <param name="findings">Takes what the builder should know.</param>
    public static TrueSizeFile? Of(DesignComparison comparison, PrintChoice print, ICollection<Diagnostic> findings)
    {
        var airframe = comparison.New.Airframe;
        var text = new MeasureText(airframe.DisplayUnit, airframe.Sheets.HasBothUnits);
        var parts = ChangeParts.Of(comparison.Parts, text, part =>
            CauseText.Because(comparison.CausesOf(part)) is { Length: > 0 } causes ? [$"{char.ToUpperInvariant(causes[0])}{causes[1..]}."] : []);
        var sources = comparison.New.Sources.Concat(comparison.Old.Sources.Select(source => new SourceFile($"old/{source.Name}", source.Content))).ToList();
        return TrueSizeFile.Of(airframe, parts, new("Changed parts, new over old", "changes"), print, sources, findings);
    }
}
