using System.Collections.Immutable;
using PlanForge.Designs;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Tiles;
using PlanForge.Output.Pdf;

namespace PlanForge.Folders;

/// <summary>The printable files of a design: the plan, and the plan in tiles for each paper.</summary>
internal static class PlanFiles
{
    /// <summary>All of them; none for a design without sheets.</summary>
    /// <param name="design">The design.</param>
    /// <param name="print">What it is printed with.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    /// <param name="stop">Asked between the files.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static ImmutableArray<OutputFile> Of(Design design, PrintChoice print, KeptWork kept, CancellationToken stop)
    {
        if (design.Sheets.Sheets.IsEmpty)
        {
            return [];
        }

        var info = InfoOf(design.Airframe.Issue.Owner, "Full-size templates", design.Sources);
        List<(string Name, Task<PageSet> Pages)> documents = [("plan.pdf", Task.FromResult(PageSet.Of(design.Sheets)))];
        foreach (var options in TilesOf(design, print))
        {
            documents.Add(($"plan-{FolderName.Of(options.Paper.Name)}.pdf", Task.Run(() => Tiles(design, options, kept), stop)));
        }

        // Sheets are packed while others are cut into tiles, and one document is put together beside another.
        var packed = PackedSheets.Of(design.Sheets, kept.Pages);
        var writing = documents.ConvertAll(document => Task.Run(
            () => Written(document.Name, For(document.Pages.GetAwaiter().GetResult(), print)), stop));
        return [.. writing.Select(file => file.GetAwaiter().GetResult())];

        OutputFile Written(string name, PageSet pages)
        {
            var file = new OutputFile(name, PdfWriter.Write(pages, info, packed));

            // The manifest wants it, and this is the last thing it waits for.
            kept.Files.HashOf(file);
            return file;
        }
    }

    private static PageSet Tiles(Design design, TileOptions options, KeptWork kept) =>
        TilePlan.Of(design.Sheets, options, kept.Drawings).Pages ?? throw new InvalidOperationException(options.Fault());

    /// <summary>The tiled plans that are wanted: those of the description, unless the command line names one.</summary>
    private static ImmutableArray<TileOptions> TilesOf(Design design, PrintChoice print) =>
        print.Tiles is { } paper ? [new(paper)] : [.. design.Airframe.Sheets.Tiles.Select(TileOptions.Of)];

    /// <summary>Pages as they are printed.</summary>
    internal static PageSet For(PageSet pages, PrintChoice print) => print.Printer is { } printer ? pages.CorrectedFor(printer) : pages;

    /// <summary>What a PDF says of itself, with the files it was made from.</summary>
    internal static PdfInfo InfoOf(string owner, string subject, IEnumerable<SourceFile> sources) => new(ToolVersion.Producer)
    {
        Author = owner,
        Subject = subject,
        Attachments = [.. sources.Select(source => new PdfAttachment(source.Name, MediaTypeOf(source.Name), source.Content))],
    };

    // RFC 9512 registers the type of YAML.
    private static string MediaTypeOf(string name) =>
        name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase)
            ? "application/yaml"
            : "text/plain";
}
