using System.Text.Json;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Designs;
using PlanForge.Folders;
using PlanForge.Parts;

namespace PlanForge.Reports;

/// <summary>Writes every computed figure of a design as JSON, for programs.</summary>
internal static class Report
{
    /// <summary>The report; the same design gives the same bytes wherever its description lies.</summary>
    /// <param name="design">The design.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    public static byte[] Of(Design design, KeptFiles? kept = null) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("planforge", ToolVersion.Text);
        json.WriteString("description", design.FileName);
        json.WriteString("design", design.Airframe.Name);
        json.WriteString("revision", design.Airframe.Issue.Revision);
        json.WriteString("fingerprint", design.Airframe.Issue.Fingerprint.Code);
        AsBuiltReport.Write(json, design);
        WriteOverrides(json, design);
        WriteFigures(json, design.AirframeFigures);
        json.WriteStartArray("parts");
        foreach (var part in design.Parts)
        {
            WritePart(json, part);
        }

        json.WriteEndArray();
        WriteSheets(json, design);
        CutReport.Write(json, design, kept ?? new());
        WriteWarnings(json, design);
        json.WriteEndObject();
    });

    // Parameters that were given on the command line: what the description alone does not say.
    private static void WriteOverrides(Utf8JsonWriter json, Design design)
    {
        if (design.Airframe.Overrides.IsEmpty)
        {
            return;
        }

        json.WriteStartObject("with");
        foreach (var parameter in design.Airframe.Overrides)
        {
            json.WriteString(parameter.Name, ParameterText.Of(parameter, design.Airframe.DisplayUnit));
        }

        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, Part part)
    {
        json.WriteStartObject();
        json.WriteString("id", part.Id);
        json.WriteString("kind", part.Kind);
        json.WriteString("title", part.Title);
        json.WriteString("making", part.Making switch { Making.Cut => "cut", Making.Template => "template", _ => "view" });
        json.WriteString("fingerprint", part.Fingerprint?.Code);
        if (part.Making == Making.Cut)
        {
            json.WriteString("material", part.Material);
            json.WriteNumber("thickness_mm", FigureUnits.Rounded(part.Thickness));
        }

        json.WriteNumber("quantity", part.Quantity);
        WriteFigures(json, part.Figures);
        json.WriteEndObject();
    }

    internal static void WriteFigures(Utf8JsonWriter json, IEnumerable<Figure> figures)
    {
        json.WriteStartArray("figures");
        foreach (var figure in figures)
        {
            json.WriteStartObject();
            json.WriteString("key", figure.Key);
            json.WriteString("label", figure.Label);
            json.WriteNumber("value", FigureUnits.ValueOf(figure));
            if (FigureUnits.NameOf(figure.Quantity) is { Length: > 0 } unit)
            {
                json.WriteString("unit", unit);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteSheets(Utf8JsonWriter json, Design design)
    {
        json.WriteStartArray("sheets");
        foreach (var sheet in design.Sheets.Sheets)
        {
            json.WriteStartObject();
            json.WriteNumber("number", sheet.Number);
            json.WriteString("title", sheet.Title);
            json.WriteString("fingerprint", sheet.Fingerprint?.Code);
            json.WriteNumber("width_mm", FigureUnits.Rounded(sheet.Width));
            json.WriteNumber("height_mm", FigureUnits.Rounded(sheet.Height));
            json.WriteTexts("parts", sheet.Parts);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    // Only the name of a file goes in: where it lies must not change the bytes.
    private static void WriteWarnings(Utf8JsonWriter json, Design design)
    {
        json.WriteStartArray("warnings");
        foreach (var warning in design.Warnings)
        {
            json.WriteStartObject();
            json.WriteString("file", Path.GetFileName(warning.At.File));
            if (warning.At != SourcePosition.WholeFile(warning.At.File))
            {
                json.WriteNumber("line", warning.At.Line);
                json.WriteNumber("column", warning.At.Column);
            }

            json.WriteString("message", warning.Message);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
