using System.Collections.Immutable;
using System.Text.Json;
using PlanForge.Designs;
using PlanForge.Parts;

namespace PlanForge.Folders;

/// <summary>What a run drew: by its fingerprints paper or wood in hand is known later, by its values what changed since.</summary>
/// <param name="Design">The design's name.</param>
/// <param name="Revision">Its revision, or empty.</param>
/// <param name="Fingerprint">The short fingerprint of the description's values.</param>
/// <param name="Version">The program's version.</param>
/// <param name="Parts">All parts, in the order of the sheets.</param>
/// <param name="Sheets">All sheets, in order.</param>
/// <param name="Values">The description's values; null where nobody wrote them down or asked for them.</param>
internal sealed record DrawnState(
    string Design,
    string Revision,
    string Fingerprint,
    string Version,
    ImmutableArray<DrawnPart> Parts,
    ImmutableArray<DrawnSheet> Sheets,
    DrawnValues? Values = null)
{
    /// <summary>What a design draws, without the description's values.</summary>
    public static DrawnState Of(Design design) => new(
        design.Airframe.Name,
        design.Airframe.Issue.Revision,
        design.Airframe.Issue.Fingerprint.Code,
        ToolVersion.Text,
        [.. design.Parts.Select(part => new DrawnPart(part.Id, part.Title, part.Making == Making.Cut, part.Fingerprint?.Code ?? ""))],
        [.. design.Sheets.Sheets.Select(sheet => new DrawnSheet(sheet.Number, sheet.Title, sheet.Fingerprint?.Code ?? "", sheet.Parts))]);

    /// <summary>True when nothing differs.</summary>
    public bool IsSameAs(DrawnState other) => Design == other.Design && Fingerprint == other.Fingerprint && Version == other.Version && Revision == other.Revision
        && Parts.SequenceEqual(other.Parts) && Sheets.SequenceEqual(other.Sheets)
        && (Values is null ? other.Values is null : other.Values is not null && Values.IsSameAs(other.Values));

    /// <summary>The part of the same id; null when there is none.</summary>
    public DrawnPart? PresentOf(DrawnPart part) => Parts.FirstOrDefault(present => present.Id == part.Id);

    /// <summary>Writes it as members of an open object.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteString("design", Design);
        json.WriteString("revision", Revision);
        json.WriteString("fingerprint", Fingerprint);
        json.WriteStartArray("parts");
        foreach (var part in Parts)
        {
            part.Write(json);
        }

        json.WriteEndArray();
        json.WriteStartArray("sheets");
        foreach (var sheet in Sheets)
        {
            sheet.Write(json);
        }

        json.WriteEndArray();
        Values?.Write(json);
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
                [.. json.GetProperty("parts").EnumerateArray().Select(DrawnPart.Read)],
                [.. json.GetProperty("sheets").EnumerateArray().Select(DrawnSheet.Read)],
                DrawnValues.Read(json));
        }
        catch (Exception fault) when (fault is KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    /// <summary>The text of a member.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    /// <exception cref="InvalidOperationException">It is no text.</exception>
    /// <exception cref="FormatException">It is null.</exception>
    public static string Text(JsonElement json, string name) =>
        json.GetProperty(name).GetString() ?? throw new FormatException($"{name} is null.");
}

/// <summary>A part that was drawn.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What the builder calls it.</param>
/// <param name="IsCut">True when it is cut from sheet.</param>
/// <param name="Fingerprint">Its short fingerprint.</param>
internal sealed record DrawnPart(string Id, string Title, bool IsCut, string Fingerprint)
{
    /// <summary>Writes it as an object.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("id", Id);
        json.WriteString("title", Title);
        json.WriteBoolean("cut", IsCut);
        json.WriteString("fingerprint", Fingerprint);
        json.WriteEndObject();
    }

    /// <summary>Reads it again; throws what <see cref="DrawnState.Text"/> throws.</summary>
    public static DrawnPart Read(JsonElement json) =>
        new(DrawnState.Text(json, "id"), DrawnState.Text(json, "title"), json.GetProperty("cut").GetBoolean(), DrawnState.Text(json, "fingerprint"));
}

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

    /// <summary>Writes it as an object.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteNumber("number", Number);
        json.WriteString("title", Title);
        json.WriteString("fingerprint", Fingerprint);
        json.WriteTexts("parts", Parts);
        json.WriteEndObject();
    }

    /// <summary>Reads it again; throws what <see cref="DrawnState.Text"/> throws.</summary>
    public static DrawnSheet Read(JsonElement json) => new(
        json.GetProperty("number").GetInt32(),
        DrawnState.Text(json, "title"),
        DrawnState.Text(json, "fingerprint"),
        [.. json.GetProperty("parts").EnumerateArray().Select(part => part.GetString() ?? "")]);
}
