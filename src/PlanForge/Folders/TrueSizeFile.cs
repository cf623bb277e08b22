using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Designs;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Drafting.Tiles;
using PlanForge.Output.Pdf;
using PlanForge.Parts;

namespace PlanForge.Folders;

/// <summary>A PDF of some parts on the design's paper at true size, beside the plan.</summary>
/// <param name="Content">The PDF.</param>
/// <param name="Count">How many pages it has.</param>
internal sealed record TrueSizeFile(byte[] Content, int Count)
{
    /// <summary>The PDF; null when an error was found.</summary>
    /// <param name="description">The design.</param>
    /// <param name="parts">What to draw, at least one.</param>
    /// <param name="title">What it is.</param>
    /// <param name="print">What it is printed with.</param>
    /// <param name="sources">The files that it comes from.</param>
    /// <param name="findings">Takes what the builder should know.</param>
    public static TrueSizeFile? Of(
        AirframeDescription description, ImmutableArray<Part> parts, TrueSizeTitle title, PrintChoice print, IReadOnlyList<SourceFile> sources, ICollection<Diagnostic> findings)
    {
        // The design's revisions have their table on the plan.
        var options = PlanOptions.Of(description, ToolVersion.Producer);
        options = options with { Issue = options.Issue with { Revisions = [] } };
        var plan = PlanSheets.Draw(options, new PartList(parts, [], []));
        foreach (var finding in plan.Findings)
        {
            findings.Add(finding);
        }

        if (plan.Sheets.Sheets.IsEmpty)
        {
            return null;
        }

        var set = plan.Sheets with { Title = $"{plan.Sheets.Title}: {title.Of}" };
        var pages = print.Tiles is { } paper
            ? TilePlan.Of(set, new(paper)).Pages ?? throw new InvalidOperationException("Tiles were checked with the command line.")
            : PageSet.Of(set);
        var info = PlanFiles.InfoOf(description.Issue.Owner, title.Subject, sources);
        return new(PdfWriter.Write(PlanFiles.For(pages, print), info, PackedSheets.Of(set)), pages.Pages.Length);
    }
}

/// <summary>What a PDF beside the plan is.</summary>
/// <param name="Subject">The kind of document.</param>
/// <param name="Of">What it shows, behind the design's name.</param>
internal sealed record TrueSizeTitle(string Subject, string Of);
