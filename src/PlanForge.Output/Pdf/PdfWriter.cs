using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>Writes sheets as a PDF 1.7 of true size: a page a sheet, layers that can be switched, lettering that is text.</summary>
public static class PdfWriter
{
    /// <summary>Longest edge of a page, mm: 14,400 points (ISO 32000-1, Annex C).</summary>
    public const double LongestEdge = 5080;

    /// <summary>Shortest edge of a page, mm: 3 points (ISO 32000-1, Annex C).</summary>
    public const double ShortestEdge = 3 * 25.4 / 72;

    /// <summary>The whole file. The same sheets give the same bytes.</summary>
    /// <param name="set">At least one sheet, every edge from <see cref="ShortestEdge"/> to <see cref="LongestEdge"/>.</param>
    /// <param name="info">What the file says about its making.</param>
    /// <exception cref="ArgumentException">No sheet, a page too long or too short, or a coordinate that is not finite.</exception>
    public static byte[] Write(SheetSet set, PdfInfo info)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(info);
        CheckSizes(set);
        var file = new PdfFile();
        var catalog = file.Reserve();
        var pages = file.Reserve();
        var document = file.Reserve();
        var layers = new LayerGroups(file, set);
        var fonts = new StrokeFonts(file, set);
        var numbers = new int[set.Sheets.Length];
        for (var i = 0; i < numbers.Length; i++)
        {
            numbers[i] = file.Reserve();
        }

        var outline = new Outline(file, set, numbers);
        WriteCatalog(file.Begin(catalog), set, pages, layers, outline);
        file.End();
        file.Begin(pages).Append("<< /Type /Pages /Count "u8).Append(numbers.Length)
            .Append(" /Kids "u8).AppendReferences(numbers).Append(" >>"u8);
        file.End();
        file.Begin(document).Append("<< /Title "u8).AppendString(set.Title)
            .Append(" /Producer "u8).AppendString(info.Producer).Append(" >>"u8);
        file.End();
        layers.Write(file);
        outline.Write();
        for (var i = 0; i < numbers.Length; i++)
        {
            WritePage(file, numbers[i], pages, set.Sheets[i], layers, fonts);
        }

        fonts.Write(file);
        return file.Finish(catalog, document);
    }

    private static void CheckSizes(SheetSet set)
    {
        if (set.Sheets.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A PDF needs at least one sheet.", nameof(set));
        }

        foreach (var sheet in set.Sheets)
        {
            if (!(Math.Min(sheet.Width, sheet.Height) >= ShortestEdge && Math.Max(sheet.Width, sheet.Height) <= LongestEdge))
            {
                throw new ArgumentException(
                    FormattableString.Invariant(
                        $"Sheet {sheet.Number} measures {sheet.Width} x {sheet.Height} mm; edges of a page are 1.06 to 5080 mm long."),
                    nameof(set));
            }
        }
    }

    private static void WriteCatalog(ByteText text, SheetSet set, int pages, LayerGroups layers, Outline outline)
    {
        text.Append("<< /Type /Catalog /Pages "u8).AppendReference(pages).Append(" /Lang "u8).AppendString(set.Language);
        text.Append("\n/ViewerPreferences << /PrintScaling /None /PickTrayByPDFSize true /DisplayDocTitle true >>\n"u8);
        layers.AppendCatalogEntry(text);
        text.Append("\n"u8);
        outline.AppendCatalogEntries(text);
        text.Append(" >>"u8);
    }

    private static void WritePage(PdfFile file, int number, int pages, Sheet sheet, LayerGroups layers, StrokeFonts fonts)
    {
        var content = file.Reserve();
        file.WriteStream(content, PageContent.Of(sheet.Drawing, fonts));
        var text = file.Begin(number);
        text.Append("<< /Type /Page /Parent "u8).AppendReference(pages).Append(" /Contents "u8).AppendReference(content);
        text.Append("\n/MediaBox "u8).AppendBox(sheet.Width, sheet.Height);
        text.Append(" /CropBox "u8).AppendBox(sheet.Width, sheet.Height);
        text.Append(" /TrimBox "u8).AppendBox(sheet.Width, sheet.Height);
        text.Append("\n/Resources << "u8);
        layers.AppendProperties(text, sheet.Drawing);
        text.Append(" "u8);
        fonts.AppendResources(text);
        text.Append(" >>\n"u8);
        AppendMeasure(text, sheet);
        text.Append(" >>"u8);
        file.End();
    }

    /// <summary>A viewport over the page by which measuring tools of viewers read millimetres (ISO 32000-1, 12.9).</summary>
    private static void AppendMeasure(ByteText text, Sheet sheet)
    {
        text.Append("/VP [ << /Type /Viewport /Name (True size) /BBox "u8).AppendBox(sheet.Width, sheet.Height);
        text.Append("\n/Measure << /Type /Measure /Subtype /RL /R (1:1 mm) /X [ << /Type /NumberFormat /U (mm) /C "u8)
            .Append(1 / PdfSyntax.PointsPerMillimetre, Decimals.Most)
            .Append(" /D 100 >> ]\n/D [ << /Type /NumberFormat /U (mm) /C 1 /D 100 >> ]"u8)
            .Append(" /A [ << /Type /NumberFormat /U (mm\\262) /C 1 /D 1 >> ] >> >> ]"u8);
    }
}
