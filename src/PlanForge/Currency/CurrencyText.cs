using System.Collections.Immutable;
using System.Text;
using PlanForge.CommandLine;
using PlanForge.Comparing;
using PlanForge.Folders;
using PlanForge.Reports;

namespace PlanForge.Currency;

/// <summary>Says whether paper or wood is current, for a person.</summary>
internal static class CurrencyText
{
    /// <summary>What to say; every line ends with LF.</summary>
    /// <param name="check">What was found.</param>
    /// <param name="now">What is drawn now.</param>
    /// <param name="since">What changed since; null for what is current or unknown.</param>
    public static string Of(CurrencyCheck check, DrawnState now, ChangesSince? since)
    {
        var text = new StringBuilder();
        foreach (var thing in check.Things)
        {
            text.Append(check.Code).Append(" is ").Append(thing.Title);
            text.Append(check.Past is { } past ? $" as drawn earlier{RevisionOf(past)}: not current.\n" : ": current.\n");
            if (since is not null)
            {
                AddParts(text, thing, now);
                AddChanges(text, thing, since);
            }
        }

        if (check.Things.IsEmpty)
        {
            text.Append(check.Code).Append(" is on nothing that this design draws or drew into its folder.\n");
            text.Append(check.Near is { } near ? $"  One sign off is {near.Fingerprint}, {near.Title}: read it once more.\n" : "");
        }

        return text.ToString();
    }

    private static void AddParts(StringBuilder text, MarkedThing thing, DrawnState now)
    {
        AddLine("still as it was", thing.Parts.Where(part => now.PresentOf(part)?.Fingerprint == part.Fingerprint));
        AddLine("changed", thing.Parts.Where(part => now.PresentOf(part) is { } present && present.Fingerprint != part.Fingerprint));
        AddLine("no longer part of the design", thing.Parts.Where(part => now.PresentOf(part) is null));
        if (thing.Kind == MarkedKind.Sheet && !thing.Parts.IsEmpty)
        {
            var parts = thing.Parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
            var sheets = string.Join(", ", now.Sheets.Where(sheet => sheet.Parts.Any(parts.Contains)).Select(sheet => $"{sheet.Number} ({sheet.Fingerprint})"));
            text.Append(sheets.Length > 0 ? $"  they are now on sheet {sheets}\n" : "");
        }

        void AddLine(string what, IEnumerable<DrawnPart> parts)
        {
            ImmutableArray<DrawnPart> all = [.. parts];
            if (!all.IsEmpty)
            {
                text.Append("  ").Append(what).Append(": ");
                text.AppendJoin(", ", all.Select(part => now.PresentOf(part) is { } present && present.Fingerprint != part.Fingerprint
                    ? $"{part.Title} (now {present.Fingerprint})"
                    : part.Title)).Append('\n');
            }
        }
    }

    private static void AddChanges(StringBuilder text, MarkedThing thing, ChangesSince since)
    {
        if (since.Values is not { } values)
        {
            text.Append($"  what changed since is not known: {Syntax.Program} {since.Past.Version}, which drew it, kept no values\n");
        }
        else if (values.IsEmpty)
        {
            text.Append("  no value of the description changed since").Append(since.Past.Version == since.Now.Version
                ? "\n"
                : $": {Syntax.Program} {since.Past.Version} drew it, this is {since.Now.Version}\n");
        }
        else if (thing.Kind == MarkedKind.Description)
        {
            text.Append("  changed since:\n");
            foreach (var value in values)
            {
                text.Append("    ").Append(CauseText.WithParameters(value)).Append('\n');
            }
        }
        else
        {
            AddCauses(text, CauseText.Each(since.CausesOf(thing)), CauseText.Each(values));
        }
    }

    private static void AddCauses(StringBuilder text, IReadOnlyList<string> causes, IReadOnlyList<string> all)
    {
        if (causes.Count == 0)
        {
            text.Append("  changed since in the description: ").Append(CauseText.Joined(all)).Append('\n');
            return;
        }

        text.Append("  because of ").Append(CauseText.Joined(causes)).Append('\n');
        var others = all.Except(causes, StringComparer.Ordinal).Count();
        text.Append(others > 0 ? $"  changed since too, without a part in it: {Counts.Of(others, "value")}\n" : "");
    }

    private static string RevisionOf(DrawnState past) =>
        (past.Revision.Length > 0 ? $" at revision {past.Revision}" : "") + $" (description {past.Fingerprint})";
}
