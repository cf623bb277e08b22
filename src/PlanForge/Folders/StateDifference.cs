using System.Security.Cryptography;
using System.Text.Json;

namespace PlanForge.Folders;

/// <summary>What was drawn once, told by what the next run drew: a step back in the history, one line of JSON.</summary>
internal static class StateDifference
{
    private const string Tool = "planforge";
    private const string Later = "later";
    private const string Parts = "parts";
    private const string Sheets = "sheets";
    private const string Values = "values";
    private const string Parameters = "parameters";

    // Of the later state's hash: enough to tell that a line belongs elsewhere.
    private const int HashBytes = 8;

    /// <summary>The line.</summary>
    /// <param name="later">What the next run drew.</param>
    /// <param name="earlier">What was drawn.</param>
    public static byte[] Write(DrawnState later, DrawnState earlier) => JsonText.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString(Tool, earlier.Version);
        json.WriteString(Later, HashOf(later));
        json.WriteString("design", earlier.Design);
        json.WriteString("revision", earlier.Revision);
        json.WriteString("fingerprint", earlier.Fingerprint);
        ListDifference.Write(json, Parts, later.Parts, earlier.Parts, part => part.Write(json));
        ListDifference.Write(json, Sheets, later.Sheets, earlier.Sheets, sheet => sheet.Write(json));
        if (earlier.Values is { } values)
        {
            ListDifference.Write(json, Values, later.Values?.Values ?? [], values.Values, WriteLine);
            ListDifference.Write(json, Parameters, later.Values?.Parameters ?? [], values.Parameters, WriteLine);
        }

        json.WriteEndObject();

        void WriteLine(string line) => json.WriteRawValue(line, skipInputValidation: true);
    });

    /// <summary>The earlier state; null when the line is none of ours, or belongs to another state than the later one.</summary>
    /// <param name="line">The line.</param>
    /// <param name="later">What the next run drew.</param>
    public static DrawnState? Read(ReadOnlyMemory<byte> line, DrawnState later)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            var json = document.RootElement;
            return DrawnState.Text(json, Later) != HashOf(later) ? null : new(
                DrawnState.Text(json, "design"),
                DrawnState.Text(json, "revision"),
                DrawnState.Text(json, "fingerprint"),
                DrawnState.Text(json, Tool),
                ListDifference.Read(json.GetProperty(Parts), later.Parts, DrawnPart.Read),
                ListDifference.Read(json.GetProperty(Sheets), later.Sheets, DrawnSheet.Read),
                json.TryGetProperty(Values, out var values)
                    ? new(
                        ListDifference.Read(values, later.Values?.Values ?? [], DrawnValues.LineOf),
                        ListDifference.Read(json.GetProperty(Parameters), later.Values?.Parameters ?? [], DrawnValues.LineOf))
                    : null);
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    private static string HashOf(DrawnState state) => Convert.ToHexStringLower(SHA256.HashData(JsonText.Line(json =>
    {
        json.WriteStartObject();
        json.WriteString(Tool, state.Version);
        state.Write(json);
        json.WriteEndObject();
    })).AsSpan(0, HashBytes));
}
