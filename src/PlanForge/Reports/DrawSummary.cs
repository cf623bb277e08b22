using System.Globalization;
using System.Text;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Parts;

namespace PlanForge.Reports;

/// <summary>Says what a run drew, and what of the paper and wood of the run before must be made again.</summary>
internal static class DrawSummary
{
    /// <summary>The summary; every line ends with LF.</summary>
    public static string Of(string target, Design design, FolderChanges changes)
    {
        var text = new StringBuilder();
        var cut = design.Parts.Count(part => part.Making == Making.Cut);
        var stock = design.Cuts.Nests.Sheets.IsEmpty ? "" : $" on {Counts.Of(design.Cuts.Nests.Sheets.Length, "sheet")} of stock";
        text.Append(CultureInfo.InvariantCulture, $"{target}: {Counts.Of(design.Sheets.Sheets.Length, "sheet")}, {Counts.Of(cut, "cut part")}{stock}; ");
        text.Append(CultureInfo.InvariantCulture, $"{Counts.Of(changes.Written, "file")} written, {changes.Kept} kept, {changes.Removed} removed\n");
        if (changes.Before is { } before)
        {
            AddSince(text, before, DrawnState.Of(design));
        }

        return text.ToString();
    }

    private static void AddSince(StringBuilder text, DrawnState before, DrawnState now)
    {
        var printed = before.Sheets.Select(sheet => sheet.Fingerprint).ToHashSet(StringComparer.Ordinal);
        var sheets = now.Sheets.Where(sheet => !printed.Contains(sheet.Fingerprint)).Select(sheet => sheet.Number.ToString(CultureInfo.InvariantCulture)).ToList();
        var made = before.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        var recut = now.Parts.Where(part => part.IsCut && made.GetValueOrDefault(part.Id)?.Fingerprint != part.Fingerprint).Select(part => part.Title).ToList();
        var kept = now.Parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        var gone = before.Parts.Where(part => part.IsCut && !kept.Contains(part.Id)).Select(part => part.Title).ToList();
        Add("print again: sheet", sheets);
        Add("cut again:", recut);
        Add("no longer needed:", gone);
        if (sheets.Count + recut.Count + gone.Count == 0)
        {
            text.Append("  nothing to print or cut again\n");
        }

        void Add(string what, List<string> names)
        {
            if (names.Count > 0)
            {
                text.Append("  ").Append(what).Append(' ').AppendJoin(", ", names).Append('\n');
            }
        }
    }
}
