using System.Collections.Immutable;
using System.Text.Json;
using PlanForge.Designs;
using PlanForge.Parts;

namespace PlanForge.Folders;

/// <summary>What a run drew, by fingerprints: enough to tell later whether paper or wood in hand is of it.</summary>
/// <param name="Design">The design's name.</param>
/// <param name="Revision">Its revision, or empty.</param>
/// <param name="Fingerprint">The short fingerprint of the description's values.</param>
/// <param name="Version">The program's version.</param>
/// <param name="Parts">All parts, in the order of the sheets.</param>
/// <param name="Sheets">All sheets, in order.</param>
internal sealed record DrawnState(
    string Design, string Revision, string Fingerprint, string Version, ImmutableArray<DrawnPart> Parts, ImmutableArray<DrawnSheet> Sheets)
{
    /// <summary>What a design draws.</summary>
    public static DrawnState Of(Design design) => new(
        design.Airframe.Name,
        design.Airframe.Issue.Revision,
        design.Airframe.Issue.Fingerprint.Code,
        ToolVersion.Text,
        [.. design.Parts.Select(part => new DrawnPart(part.Id, part.Title, part.Making == Making.Cut, part.Fingerprint?.Code ?? ""))],
        [.. design.Sheets.Sheets.Select(sheet => new DrawnSheet(sheet.Number, sheet.Title, sheet.Fingerprint?.Code ?? "", sheet.Parts))]);

    /// <summary>True when the same was drawn, whatever was called otherwise.</summary>
    public bool IsSameAs(DrawnState other) => Fingerprint == other.Fingerprint && Version == other.Version && Revision == other.Revision
        && Parts.SequenceEqual(other.Parts) && Sheets.SequenceEqual(other.Sheets);

    /// <summary>Writes it as members of an open object.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteString("design", Design);
        json.WriteString("revision", Revision);
        json.WriteString("fingerprint", Fingerprint);
        json.WriteStartArray("parts");
        foreach (var part in Parts)
        {
            json.WriteStartObject();
            json.WriteString("id", part.Id);
            json.WriteString("title", part.Title);
            json.WriteBoolean("cut", part.IsCut);
            json.WriteString("fingerprint", part.Fingerprint);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("sheets");
        foreach (var sheet in Sheets)
        {
            json.WriteStartObject();
            json.WriteNumber("number", sheet.Number);
            json.WriteString("title", sheet.Title);
            json.WriteString("fingerprint", sheet.Fingerprint);
            json.WriteStartArray("parts");
            foreach (var part in sheet.Parts)
            {
                json.WriteStringValue(part);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Reads it from an object; null when it is none of ours, or one of a version that did not write it.</summary>
    public static DrawnState? Read(JsonElement json, string version)
    {
        try
        {
            return new(
                Text(json, "design"),
                Text(json, "revision"),
                Text(json, "fingerprint"),
                version,
                [.. json.GetProperty("parts").EnumerateArray().Select(part =>
                    new DrawnPart(Text(part, "id"), Text(part, "title"), part.GetProperty("cut").GetBoolean(), Text(part, "fingerprint")))],
                [.. json.GetProperty("sheets").EnumerateArray().Select(sheet =>
                    new DrawnSheet(
                        sheet.GetProperty("number").GetInt32(),
                        Text(sheet, "title"),
                        Text(sheet, "fingerprint"),
                        [.. sheet.GetProperty("parts").EnumerateArray().Select(part => part.GetString() ?? "")]))]);
        }
        catch (Exception fault) when (fault is KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private static string Text(JsonElement json, string name) =>
        json.GetProperty(name).GetString() ?? throw new FormatException($"{name} is null.");
}

/// <summary>A part that was drawn.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What the builder calls it.</param>
/// <param name="IsCut">True when it is cut from sheet.</param>
/// <param name="Fingerprint">Its short fingerprint.</param>
internal sealed record DrawnPart(string Id, string Title, bool IsCut, string Fingerprint);

/// <summary>A sheet that was drawn.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Fingerprint">Its short fingerprint.</param>
/// <param name="Parts">The ids of the parts on it.</param>
internal sealed record DrawnSheet(int Number, string Title, string Fingerprint, ImmutableArray<string> Parts)
{
    /// <inheritdoc/>
    public bool Equals(DrawnSheet? other) => other is not null && Number == other.Number && Title == other.Title
        && Fingerprint == other.Fingerprint && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Number, Fingerprint);
}
