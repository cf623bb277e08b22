using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Output.Pdf;

/// <summary>
/// Writes pages as a PDF 1.7 of true size: layers that can be switched, lettering that is text, every sheet behind windows once.
/// </summary>
public static class PdfWriter
{
    /// <summary>Longest edge of a page, mm: 14,400 points (ISO 32000-1, Annex C).</summary>
    public const double LongestEdge = 5080;

    /// <summary>Shortest edge of a page, mm: 3 points (ISO 32000-1, Annex C).</summary>
    public const double ShortestEdge = 3 * 25.4 / 72;

    /// <summary>The whole file, a page a sheet. The same sheets give the same bytes.</summary>
    /// <param name="set">At least one sheet, every edge from <see cref="ShortestEdge"/> to <see cref="LongestEdge"/>.</param>
    /// <param name="info">What the file says about its making.</param>
    /// <exception cref="ArgumentException">No sheet, a page too long or too short, or a coordinate that is not finite.</exception>
    public static byte[] Write(SheetSet set, PdfInfo info) => Write(PageSet.Of(set), info);

    /// <summary>The whole file. The same pages give the same bytes.</summary>
    /// <param name="set">At least one page, every edge from <see cref="ShortestEdge"/> to <see cref="LongestEdge"/>.</param>
    /// <param name="info">What the file says about its making.</param>
    /// <exception cref="ArgumentException">No page, one too long or too short, or a coordinate that is not finite.</exception>
    public static byte[] Write(PageSet set, PdfInfo info)
    {
        ArgumentNullException.ThrowIfNull(set);
        return Write(set, info, PackedSheets.Of(set));
    }

    /// <summary>The whole file, its sheets packed before. The same pages give the same bytes.</summary>
    /// <param name="set">At least one page, every edge from <see cref="ShortestEdge"/> to <see cref="LongestEdge"/>.</param>
    /// <param name="info">What the file says about its making.</param>
    /// <param name="packed">At least the sheets that the pages show.</param>
    /// <exception cref="ArgumentException">No page, one too long or too short, or a coordinate that is not finite.</exception>
    public static byte[] Write(PageSet set, PdfInfo info, PackedSheets packed)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(info);
        ArgumentNullException.ThrowIfNull(packed);
        CheckSizes(set);
        var file = new PdfFile();
        var catalog = file.Reserve();
        var pages = file.Reserve();
        var document = file.Reserve();
        var metadata = file.Reserve();
        var trueSize = file.Reserve();
        var forms = new SheetForms(file, set, packed);
        var own = set.Pages.Select(page => packed.Kept.NeedsOf(page.Drawing)).ToList();
        var shown = forms.Sheets.Concat(set.Pages.Select(page => page.WholeSheet).OfType<Sheet>()).Select(sheet => packed.Kept.NeedsOf(sheet.Drawing));
        var layers = new LayerGroups(file, own.Concat(shown));
        var signs = new Repertoire("Marks"u8, own);
        var letters = new Letters(packed, new(file, packed.Signs), signs, new(file, signs));
        var attachments = new Attachments(file, info);
        var numbers = new int[set.Pages.Length];
        for (var i = 0; i < numbers.Length; i++)
        {
            numbers[i] = file.Reserve();
        }

        var outline = new Outline(file, set, numbers);
        var text = file.Begin(catalog).Append("<< /Type /Catalog /Pages "u8).AppendReference(pages)
            .Append(" /Metadata "u8).AppendReference(metadata).Append(" /Lang "u8).AppendString(set.Language)
            .Append("\n/ViewerPreferences << /PrintScaling /None /PickTrayByPDFSize true /DisplayDocTitle true >>\n"u8);
        layers.AppendCatalogEntry(text);
        outline.AppendCatalogEntries(text.Append("\n"u8));
        attachments.AppendCatalogEntries(text);
        text.Append(" >>"u8);
        file.End();
        file.Begin(pages).Append("<< /Type /Pages /Count "u8).Append(numbers.Length)
            .Append(" /Kids "u8).AppendReferences(numbers).Append(" >>"u8);
        file.End();
        Metadata.WriteInformation(file, document, set, info);
        Metadata.WritePacket(file, metadata, set, info);
        PageMeasures.WriteTrueSize(file, trueSize, new(set.Pages[0], set.Correction));
        layers.Write(file);
        outline.Write();
        forms.Write(file, layers, letters.OfSheets);
        for (var i = 0; i < numbers.Length; i++)
        {
            var page = set.Pages[i];
            WritePage(file, (numbers[i], pages, trueSize), page, new(page, set.Correction), layers, letters, forms);
        }

        letters.OfSheets.Write(file, packed.Kept);
        letters.OfPages.Write(file, packed.Kept);
        attachments.Write(file, packed.Kept);
        return file.Finish(catalog, document);
    }

    private static void CheckSizes(PageSet set)
    {
        if (set.Pages.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A PDF needs at least one page.", nameof(set));
        }

        foreach (var page in set.Pages)
        {
            if (!(Math.Min(page.Width, page.Height) >= ShortestEdge && Math.Max(page.Width, page.Height) <= LongestEdge))
            {
                throw new ArgumentException(
                    FormattableString.Invariant(
                        $"Page {page.Label} measures {page.Width} x {page.Height} mm; edges of a page are 1.06 to 5080 mm long."),
                    nameof(set));
            }
        }
    }

    private static void WritePage(
        PdfFile file, (int Own, int Parent, int TrueSize) numbers, Page page, PageFrame frame, LayerGroups layers, Letters letters, SheetForms forms)
    {
        int[] contents;
        if (page.WholeSheet is { } sheet)
        {
            contents = [file.Reserve(), file.Reserve(), file.Reserve()];
            file.WriteStream(contents[0], PageContent.BeforeSheet(frame));
            file.WriteStream(contents[1], letters.Packed.StreamOf(sheet));
            file.WriteStream(contents[2], PageContent.AfterSheet(page.Drawing, letters.Signs));
        }
        else
        {
            contents = [file.Reserve()];
            var key = (new Itself<Page>(page), frame, forms.NamesOn(page), letters.Signs.All);
            file.WriteStream(contents[0], letters.Packed.Kept.Pages.Of(key, () => letters.Packed.Kept.Packed(PageContent.OfPage(page, frame, forms, letters.Signs))));
        }

        var text = file.Begin(numbers.Own);
        text.Append("<< /Type /Page /Parent "u8).AppendReference(numbers.Parent).Append(" /Contents "u8);
        _ = contents is [var only] ? text.AppendReference(only) : text.AppendReferences(contents);
        text.Append("\n/MediaBox "u8).AppendBox(page.Width, page.Height);
        text.Append(" /CropBox "u8).AppendBox(page.Width, page.Height);
        text.Append(" /TrimBox "u8).AppendBox(page.Width, page.Height);
        text.Append("\n/Resources << "u8);
        var needs = letters.Packed.Kept.NeedsOf(page.Drawing);
        layers.AppendProperties(text, page.WholeSheet is { } shown ? [needs, letters.Packed.Kept.NeedsOf(shown.Drawing)] : [needs]);
        text.Append(" /Font <<"u8);
        letters.OfPages.AppendEntries(text);
        if (page.WholeSheet is not null)
        {
            letters.OfSheets.AppendEntries(text);
        }

        forms.AppendResources(text.Append(" >>"u8), page);
        text.Append(" >>\n"u8);
        PageMeasures.Append(text, page, frame, numbers.TrueSize);
        text.Append(" >>"u8);
        file.End();
    }

    /// <summary>The fonts of a document: those of its sheets and those of what its pages say themselves.</summary>
    private sealed record Letters(PackedSheets Packed, StrokeFonts OfSheets, Repertoire Signs, StrokeFonts OfPages);
}
