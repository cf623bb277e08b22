using System.Globalization;
using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>Bookmarks, one a sheet, and page labels with the sheets' own numbers (ISO 32000-1, 12.3.3 and 12.4.2).</summary>
internal sealed class Outline
{
    private readonly PdfFile _file;
    private readonly SheetSet _set;
    private readonly int[] _pages;
    private readonly int _root;
    private readonly int[] _entries;

    /// <summary>Reserves the bookmarks.</summary>
    /// <param name="file">The file they go to.</param>
    /// <param name="set">The sheets.</param>
    /// <param name="pages">The object numbers of their pages.</param>
    public Outline(PdfFile file, SheetSet set, int[] pages)
    {
        (_file, _set, _pages) = (file, set, pages);
        _root = file.Reserve();
        _entries = new int[pages.Length];
        for (var i = 0; i < pages.Length; i++)
        {
            _entries[i] = file.Reserve();
        }
    }

    /// <summary>Appends the catalog's entries.</summary>
    public void AppendCatalogEntries(ByteText text)
    {
        text.Append("/Outlines "u8).AppendReference(_root).Append(" /PageLabels << /Nums ["u8);
        for (var i = 0; i < _pages.Length; i++)
        {
            if (i == 0 || _set.Sheets[i].Number != _set.Sheets[i - 1].Number + 1)
            {
                text.Append(" "u8).Append(i).Append(" << /S /D /St "u8).Append(_set.Sheets[i].Number).Append(" >>"u8);
            }
        }

        text.Append(" ] >>"u8);
    }

    /// <summary>Writes the bookmarks.</summary>
    public void Write()
    {
        _file.Begin(_root).Append("<< /Type /Outlines /Count "u8).Append(_entries.Length)
            .Append(" /First "u8).AppendReference(_entries[0]).Append(" /Last "u8).AppendReference(_entries[^1]).Append(" >>"u8);
        _file.End();
        for (var i = 0; i < _entries.Length; i++)
        {
            var sheet = _set.Sheets[i];
            var text = _file.Begin(_entries[i]).Append("<< /Title "u8)
                .AppendString(string.Create(CultureInfo.InvariantCulture, $"{sheet.Number}  {sheet.Title}"))
                .Append(" /Parent "u8).AppendReference(_root).Append(" /Dest ["u8).AppendReference(_pages[i]).Append(" /Fit]"u8);
            if (i > 0)
            {
                text.Append(" /Prev "u8).AppendReference(_entries[i - 1]);
            }

            if (i < _entries.Length - 1)
            {
                text.Append(" /Next "u8).AppendReference(_entries[i + 1]);
            }

            text.Append(" >>"u8);
            _file.End();
        }
    }
}
