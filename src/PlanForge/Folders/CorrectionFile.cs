using PlanForge.Airframe.Diagnostics;
using PlanForge.Designs;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Output.Pdf;
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
    public static CorrectionPages? Of(
        RiggedAirframe airframe, BenchResult result, PrintChoice print, IReadOnlyList<SourceFile> sources, ICollection<Diagnostic> findings)
    {
        // The design's revisions have their table on the plan.
        var options = PlanOptions.Of(airframe.Description, ToolVersion.Producer);
        options = options with { Issue = options.Issue with { Revisions = [] } };
        var plan = PlanSheets.Draw(options, new PartList(CorrectionParts.Of(airframe, result), [], []));
        foreach (var finding in plan.Findings)
        {
            findings.Add(finding);
        }

        if (plan.Sheets.Sheets.IsEmpty)
        {
            return null;
        }

        var set = plan.Sheets with { Title = $"{plan.Sheets.Title}: correction after {result.Last.Name}" };
        var pages = print.Tiles is { } paper
            ? TilePlan.Of(set, new(paper)).Pages ?? throw new InvalidOperationException("Tiles were checked with the command line.")
            : PageSet.Of(set);
        var info = PlanFiles.InfoOf(airframe.Description.Issue.Owner, "Correction sheet", sources);
        return new(PdfWriter.Write(PlanFiles.For(pages, print), info, PackedSheets.Of(set)), pages.Pages.Length);
    }
}

/// <summary>A correction sheet.</summary>
/// <param name="Content">The PDF.</param>
/// <param name="Count">How many pages it has.</param>
internal sealed record CorrectionPages(byte[] Content, int Count);
