using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Output.Pdf;

/// <summary>
/// Packed content streams kept from one run to the next by the sheet or page they show, which must be the very same object as before
/// (<see cref="PlanForge.Drafting.KeptDrawings"/>). Empty at first.
/// </summary>
public sealed class KeptPages
{
    /// <summary>Sheets, by sheet and the signs that its fonts hold.</summary>
    internal Kept<(Itself<Sheet> Sheet, string Signs), PackedStream> Sheets { get; } = new();

    /// <summary>Pages, by page, its place on the paper, the names of the forms it shows, and the signs that its fonts hold.</summary>
    internal Kept<(Itself<Page> Page, PageFrame Frame, string Forms, string Signs), PackedStream> Pages { get; } = new();

    /// <summary>Streams by what they hold: pages that are laid out anew each time mostly come out as they were.</summary>
    private Kept<StreamContent, PackedStream> Streams { get; } = new();

    /// <summary>What drawings need of the document.</summary>
    private Kept<Itself<Drawing>, DrawingNeeds> Needs { get; } = new();

    /// <summary>Glyphs and what draws them, by their signs.</summary>
    internal Kept<string, (Glyph Glyph, PackedStream Procedure)> Glyphs { get; } = new();

    /// <summary>What a drawing needs of the document it stands in.</summary>
    internal DrawingNeeds NeedsOf(Drawing drawing) => Needs.Of(new(drawing), () => DrawingNeeds.Of(drawing));

    /// <summary>A stream as it stands in a file.</summary>
    internal PackedStream Packed(ReadOnlySpan<byte> content)
    {
        var key = new StreamContent(content);
        return Streams.Of(key, () => PackedStream.Of(key.Bytes));
    }

    /// <summary>Ends a run that came to its end; what it did not ask for is let go.</summary>
    public void EndRun()
    {
        Sheets.EndRun();
        Pages.EndRun();
        Streams.EndRun();
        Glyphs.EndRun();
        Needs.EndRun();
    }
}
