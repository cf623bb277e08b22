using PlanForge.Airframe.Diagnostics;
using PlanForge.Designs;
using PlanForge.Parts;
using PlanForge.Parts.Bench.Measuring;

namespace PlanForge.Folders;

/// <summary>The correction sheet: what was measured at the board and what to do about it, on the design's paper at true size.</summary>
internal static class CorrectionFile
{
    /// <summary>The PDF; null when an error was found.</summary>
    /// <param name="airframe">The airframe as drawn.</param>
    /// <param name="result">What was measured on it.</param>
    /// <param name="print">What it is printed with.</param>
    /// <param name="sources">The files that it comes from.</param>
    /// <param name="findings">Takes what the builder should know.</param>
    public static TrueSizeFile? Of(
        RiggedAirframe airframe, BenchResult result, PrintChoice print, IReadOnlyList<SourceFile> sources, ICollection<Diagnostic> findings) =>
        TrueSizeFile.Of(
            airframe.Description, CorrectionParts.Of(airframe, result), new("Correction sheet", $"correction after {result.Last.Name}"), print, sources, findings);
}
