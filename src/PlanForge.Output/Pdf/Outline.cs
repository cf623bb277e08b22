using System.Globalization;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>
/// The bookmarks of a document and the labels of its pages (ISO 32000-1, 12.3.3 and 12.4.2). On the first level stand pages
/// or, for pages that have one, their chapters; below a page its places, below a chapter its pages. All are open.
/// </summary>
internal sealed class Outline
{
    // Room left around a place when a viewer shows it, mm.
    private const double Surroundings = 5;

    private readonly PdfFile _file;
    private readonly PageSet _set;
    private readonly int[] _pages;
    private readonly int _root;
    private readonly List<Entry> _entries = [];

    /// <summary>Reserves the bookmarks.</summary>
    /// <param name="file">The file they go to.</param>
    /// <param name="set">The pages.</param>
    /// <param name="pages">Their object numbers.</param>
    public Outline(PdfFile file, PageSet set, int[] pages)
    {
        (_file, _set, _pages) = (file, set, pages);
        _root = file.Reserve();
        for (var i = 0; i < pages.Length; i++)
        {
            Add(set.Pages[i], i, i > 0 ? set.Pages[i - 1].Chapter : "");
        }
    }

    /// <summary>Appends the catalog's entries.</summary>
    public void AppendCatalogEntries(ByteText text)
    {
        text.Append("/Outlines "u8).AppendReference(_root).Append(" /PageLabels << /Nums ["u8);
        int? before = null;
        for (var i = 0; i < _pages.Length; i++)
        {
            var label = _set.Pages[i].Label;
            int? number = int.TryParse(label, NumberStyles.None, CultureInfo.InvariantCulture, out var parsed) && parsed > 0 ? parsed : null;
            if (number is null)
            {
                text.Append(" "u8).Append(i).Append(" << /P "u8).AppendString(label).Append(" >>"u8);
            }
            else if (number != before + 1)
            {
                text.Append(" "u8).Append(i).Append(" << /S /D /St "u8).Append(parsed).Append(" >>"u8);
            }

            before = number;
        }

        text.Append(" ] >>"u8);
    }

    /// <summary>Writes the bookmarks.</summary>
    public void Write()
    {
        _file.Begin(_root).Append("<< /Type /Outlines /Count "u8).Append(_entries.Sum(entry => 1 + entry.Below.Count))
            .Append(" /First "u8).AppendReference(_entries[0].Number).Append(" /Last "u8).AppendReference(_entries[^1].Number).Append(" >>"u8);
        _file.End();
        Write(_entries, _root);
    }

    private void Add(Page page, int index, string chapterBefore)
    {
        if (page.Chapter.Length == 0)
        {
            var title = page.Label.Length > 0 ? $"{page.Label}  {page.Title}" : page.Title;
            var entry = new Entry(_file.Reserve(), title, index, null, []);
            _entries.Add(entry);
            foreach (var mark in page.Bookmarks)
            {
                entry.Below.Add(new(_file.Reserve(), mark.Title, index, mark.Place.Grown(Surroundings), []));
            }

            return;
        }

        if (page.Chapter != chapterBefore)
        {
            _entries.Add(new(_file.Reserve(), page.Chapter, index, null, []));
        }

        _entries[^1].Below.Add(new(_file.Reserve(), page.Title, index, null, []));
    }

    private void Write(List<Entry> entries, int parent)
    {
        for (var i = 0; i < entries.Count; i++)
        {
            var entry = entries[i];
            var text = _file.Begin(entry.Number).Append("<< /Title "u8).AppendString(entry.Title)
                .Append(" /Parent "u8).AppendReference(parent).Append(" /Dest ["u8).AppendReference(_pages[entry.Page]);
            AppendDestination(text, entry);
            AppendNeighbour(text, " /Prev "u8, entries, i - 1);
            AppendNeighbour(text, " /Next "u8, entries, i + 1);
            if (entry.Below.Count > 0)
            {
                text.Append(" /Count "u8).Append(entry.Below.Count)
                    .Append(" /First "u8).AppendReference(entry.Below[0].Number).Append(" /Last "u8).AppendReference(entry.Below[^1].Number);
            }

            text.Append(" >>"u8);
            _file.End();
            Write(entry.Below, entry.Number);
        }
    }

    private void AppendDestination(ByteText text, Entry entry)
    {
        if (entry.Place is { } place)
        {
            new PageFrame(_set.Pages[entry.Page], _set.Correction).AppendCorners(text.Append(" /FitR "u8), place).Append("]"u8);
        }
        else
        {
            text.Append(" /Fit]"u8);
        }
    }

    private static void AppendNeighbour(ByteText text, ReadOnlySpan<byte> key, List<Entry> entries, int index)
    {
        if (index >= 0 && index < entries.Count)
        {
            text.Append(key).AppendReference(entries[index].Number);
        }
    }

    /// <summary>A bookmark: a whole page, or a place on it.</summary>
    private sealed record Entry(int Number, string Title, int Page, Bounds2? Place, List<Entry> Below);
}
