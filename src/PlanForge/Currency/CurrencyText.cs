using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using PlanForge.Folders;

namespace PlanForge.Currency;

/// <summary>Says whether paper or wood is current, for a person or a program.</summary>
internal static class CurrencyText
{
    /// <summary>For a person; every line ends with LF.</summary>
    public static string Of(CurrencyCheck check, DrawnState now)
    {
        var text = new StringBuilder();
        foreach (var thing in check.Things)
        {
            text.Append(check.Code).Append(" is ").Append(thing.Title);
            text.Append(check.Past is { } past ? $" as drawn earlier{RevisionOf(past)}: not current.\n" : ": current.\n");
            if (check.Past is not null)
            {
                AddParts(text, thing, now);
            }
        }

        if (check.Things.IsEmpty)
        {
            text.Append(check.Code).Append(" is on nothing that this design draws or drew into its folder.\n");
            text.Append(check.Near is { } near ? $"  One sign off is {near.Fingerprint}, {near.Title}: read it once more.\n" : "");
        }

        return text.ToString();
    }

    /// <summary>For a program.</summary>
    public static byte[] ToJson(CurrencyCheck check, DrawnState now) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("planforge", ToolVersion.Text);
        json.WriteString("design", now.Design);
        json.WriteString("fingerprint", check.Code);
        json.WriteBoolean("known", !check.Things.IsEmpty);
        json.WriteBoolean("current", check.IsCurrent);
        json.WriteStartArray("things");
        foreach (var thing in check.Things)
        {
            WriteThing(json, thing, now);
        }

        json.WriteEndArray();
        if (check.Past is { } past)
        {
            json.WriteString("drawn_at_revision", past.Revision);
            json.WriteString("drawn_from", past.Fingerprint);
        }

        if (check.Near is { } near)
        {
            json.WriteString("near", near.Fingerprint);
        }

        json.WriteEndObject();
    });

    private static void WriteThing(Utf8JsonWriter json, MarkedThing thing, DrawnState now)
    {
        json.WriteStartObject();
        json.WriteString("kind", thing.Kind switch { MarkedKind.Part => "part", MarkedKind.Sheet => "sheet", _ => "description" });
        json.WriteString("id", thing.Id);
        json.WriteString("title", thing.Title);
        json.WriteStartArray("parts");
        foreach (var part in thing.Parts)
        {
            json.WriteStartObject();
            json.WriteString("id", part.Id);
            json.WriteString("was", part.Fingerprint);
            json.WriteString("is", PresentOf(part, now)?.Fingerprint);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void AddParts(StringBuilder text, MarkedThing thing, DrawnState now)
    {
        AddLine("still as it was", thing.Parts.Where(part => PresentOf(part, now)?.Fingerprint == part.Fingerprint));
        AddLine("changed", thing.Parts.Where(part => PresentOf(part, now) is { } present && present.Fingerprint != part.Fingerprint));
        AddLine("no longer part of the design", thing.Parts.Where(part => PresentOf(part, now) is null));
        if (thing.Kind == MarkedKind.Sheet && !thing.Parts.IsEmpty)
        {
            var parts = thing.Parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
            var sheets = now.Sheets.Where(sheet => sheet.Parts.Any(parts.Contains)).Select(sheet => $"{sheet.Number} ({sheet.Fingerprint})");
            text.Append("  they are now on sheet ").AppendJoin(", ", sheets).Append('\n');
        }

        void AddLine(string what, IEnumerable<DrawnPart> parts)
        {
            ImmutableArray<DrawnPart> all = [.. parts];
            if (!all.IsEmpty)
            {
                text.Append("  ").Append(what).Append(": ");
                text.AppendJoin(", ", all.Select(part => PresentOf(part, now) is { } present && present.Fingerprint != part.Fingerprint
                    ? $"{part.Title} (now {present.Fingerprint})"
                    : part.Title)).Append('\n');
            }
        }
    }

    private static DrawnPart? PresentOf(DrawnPart part, DrawnState now) => now.Parts.FirstOrDefault(present => present.Id == part.Id);

    private static string RevisionOf(DrawnState past) =>
        (past.Revision.Length > 0 ? $" at revision {past.Revision}" : "") + $" (description {past.Fingerprint})";
}
