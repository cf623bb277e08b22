using System.Globalization;
using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>
/// The sheets that pages show through windows, each written once as a form XObject (ISO 32000-1, 8.10) however many windows
/// there are. A form's space is millimetres from the sheet's lower left corner.
/// </summary>
internal sealed class SheetForms
{
    private readonly List<Sheet> _sheets = [];
    private readonly Dictionary<Sheet, int> _places = new(ReferenceEqualityComparer.Instance);
    private readonly PackedSheets _packed;
    private readonly int[] _numbers;

    /// <summary>Reserves a form for each sheet seen through a window; a page that is a whole sheet needs none.</summary>
    public SheetForms(PdfFile file, PageSet set, PackedSheets packed)
    {
        _packed = packed;
        foreach (var page in set.Pages)
        {
            foreach (var window in page.WholeSheet is null ? page.Windows : [])
            {
                if (_places.TryAdd(window.Sheet, _sheets.Count))
                {
                    _sheets.Add(window.Sheet);
                }
            }
        }

        _numbers = new int[_sheets.Count];
        for (var i = 0; i < _numbers.Length; i++)
        {
            _numbers[i] = file.Reserve();
        }
    }

    /// <summary>The sheets, each once.</summary>
    public IReadOnlyList<Sheet> Sheets => _sheets;

    /// <summary>Appends the name by which content streams refer to a sheet's form.</summary>
    public ByteText AppendResourceName(ByteText text, Sheet sheet) => text.Append("/Sheet"u8).Append(_places[sheet]);

    /// <summary>The numbers in the names of the forms that a page shows, in the order of its windows.</summary>
    public string NamesOn(Page page) => page.Windows is [var only]
        ? _places[only.Sheet].ToString(CultureInfo.InvariantCulture)
        : string.Join(' ', page.Windows.Select(window => _places[window.Sheet].ToString(CultureInfo.InvariantCulture)));

    /// <summary>Appends a page's resource entry: the forms it shows.</summary>
    public void AppendResources(ByteText text, Page page)
    {
        if (page.Windows.IsEmpty || page.WholeSheet is not null)
        {
            return;
        }

        text.Append(" /XObject <<"u8);
        foreach (var sheet in page.Windows.Select(window => window.Sheet).Distinct<Sheet>(ReferenceEqualityComparer.Instance))
        {
            AppendResourceName(text.Append(" "u8), sheet).Append(" "u8).AppendReference(_numbers[_places[sheet]]);
        }

        text.Append(" >>"u8);
    }

    /// <summary>Writes the forms, each with the layers and fonts it uses: switching a layer works inside them too.</summary>
    public void Write(PdfFile file, LayerGroups layers, StrokeFonts fonts)
    {
        for (var i = 0; i < _numbers.Length; i++)
        {
            var sheet = _sheets[i];
            var entries = new ByteText(1024).Append("/Type /XObject /Subtype /Form /BBox [0 0 "u8)
                .Append(sheet.Width, PageContent.Decimals).Append(" "u8).Append(sheet.Height, PageContent.Decimals)
                .Append("]\n/Resources << "u8);
            layers.AppendProperties(entries, [_packed.Kept.NeedsOf(sheet.Drawing)]);
            fonts.AppendEntries(entries.Append(" /Font <<"u8));
            entries.Append(" >> >> "u8);
            file.WriteStream(_numbers[i], _packed.StreamOf(sheet), entries.Written);
        }
    }
}
