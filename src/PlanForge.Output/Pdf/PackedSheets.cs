using PlanForge.Drafting.Model;

namespace PlanForge.Output.Pdf;

/// <summary>Sheets as packed content streams: worked out once for all files that show them. Immutable.</summary>
public sealed class PackedSheets
{
    private readonly Dictionary<Sheet, PackedStream> _streams = new(ReferenceEqualityComparer.Instance);

    private PackedSheets(IReadOnlyList<Sheet> sheets, KeptPages kept)
    {
        Kept = kept;
        Signs = new("Letters"u8, sheets.Select(sheet => kept.NeedsOf(sheet.Drawing)));
        var packing = sheets.Select(sheet => (Sheet: sheet, Stream: Task.Run(() => Packed(sheet)))).ToList();
        foreach (var (sheet, stream) in packing)
        {
            _streams[sheet] = stream.GetAwaiter().GetResult();
        }
    }

    /// <summary>What is kept from earlier runs, for the pages too.</summary>
    internal KeptPages Kept { get; }

    /// <summary>The signs that the sheets are lettered with.</summary>
    internal Repertoire Signs { get; }

    /// <summary>Packs all sheets of a set.</summary>
    /// <param name="set">The sheets.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    /// <exception cref="ArgumentException">A coordinate that is not finite.</exception>
    public static PackedSheets Of(SheetSet set, KeptPages? kept = null)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new(set.Sheets, kept ?? new());
    }

    /// <summary>Packs the sheets that some pages show.</summary>
    internal static PackedSheets Of(PageSet set) =>
        new([.. set.Pages.SelectMany(page => page.Windows).Select(window => window.Sheet).Distinct<Sheet>(ReferenceEqualityComparer.Instance)], new());

    private PackedStream Packed(Sheet sheet) =>
        Kept.Sheets.Of((new(sheet), Signs.All), () => PackedStream.Of(PageContent.OfForm(sheet.Drawing, Signs)));

    /// <summary>The stream of a sheet, which must be one of these.</summary>
    internal PackedStream StreamOf(Sheet sheet) => _streams[sheet];
}
