using PlanForge.Drafting.Model;

namespace PlanForge.Output.Pdf;

/// <summary>Sheets as packed content streams: worked out once for all files that show them. Immutable.</summary>
public sealed class PackedSheets
{
    private readonly Dictionary<Sheet, PackedStream> _streams = new(ReferenceEqualityComparer.Instance);

    private PackedSheets(IReadOnlyList<Sheet> sheets)
    {
        Signs = new("Letters"u8, sheets.Select(sheet => sheet.Drawing));
        foreach (var sheet in sheets)
        {
            _streams[sheet] = PackedStream.Of(PageContent.OfForm(sheet.Drawing, Signs));
        }
    }

    /// <summary>The signs that the sheets are lettered with.</summary>
    internal Repertoire Signs { get; }

    /// <summary>Packs all sheets of a set.</summary>
    /// <exception cref="ArgumentException">A coordinate that is not finite.</exception>
    public static PackedSheets Of(SheetSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new(set.Sheets);
    }

    /// <summary>Packs the sheets that some pages show.</summary>
    internal static PackedSheets Of(PageSet set) =>
        new([.. set.Pages.SelectMany(page => page.Windows).Select(window => window.Sheet).Distinct<Sheet>(ReferenceEqualityComparer.Instance)]);

    /// <summary>The stream of a sheet, which must be one of these.</summary>
    internal PackedStream StreamOf(Sheet sheet) => _streams[sheet];
}
