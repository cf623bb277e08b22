using System.Globalization;
using System.Text;
using System.Text.Json;
using PlanForge.Geometry;
using PlanForge.Output.Inspection;

namespace PlanForge.Reports;

/// <summary>Writes what an inspection found, for a person and for programs.</summary>
internal static class InspectionText
{
    /// <summary>A line for each finding, then what the file holds.</summary>
    /// <param name="name">The file as it was given.</param>
    /// <param name="result">What was found.</param>
    /// <param name="isQuiet">Warnings and faults only.</param>
    /// <param name="isFirst">False for a file after another: a blank line parts them.</param>
    public static string Of(string name, InspectionResult result, bool isQuiet, bool isFirst)
    {
        var text = new StringBuilder(isFirst || isQuiet ? "" : "\n");
        foreach (var finding in result.Findings)
        {
            if (!isQuiet || finding.Severity != FindingSeverity.Note)
            {
                text.Append(finding.In(name)).Append('\n');
            }
        }

        return isQuiet ? text.ToString() : AppendSummary(text, name, result).ToString();
    }

    /// <summary>The same as JSON.</summary>
    public static string ToJson(string name, InspectionResult result) => Encoding.UTF8.GetString(JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("file", name);
        json.WriteString("format", result.Summary.Format);
        json.WriteString("unit", result.Summary.Unit);
        WriteLayers(json, result);
        json.WriteTexts("colours", result.Summary.Colours);
        json.WriteStartArray("findings");
        foreach (var finding in result.Findings)
        {
            WriteFinding(json, finding);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }));

    private static StringBuilder AppendSummary(StringBuilder text, string name, InspectionResult result)
    {
        var (faults, warnings) = (CountOf(result, FindingSeverity.Fault), CountOf(result, FindingSeverity.Warning));
        var summary = result.Summary;
        text.Append(name).Append(": ").Append(summary.Format).Append(summary.Unit.Length > 0 ? $", {summary.Unit}" : "");
        text.Append(", ").Append(Counts.Of(faults, "fault")).Append(", ").Append(Counts.Of(warnings, "warning")).Append('\n');
        foreach (var layer in summary.Layers)
        {
            text.Append("  ").Append(layer.Name).Append(layer.IsCut ? " (cut): " : " (marked): ").Append(Counts.Of(layer.ContourCount, "contour"))
                .Append(", ").Append(Counts.Of(layer.OpenCount, "open path"))
                .Append(CultureInfo.InvariantCulture, $", {layer.Length:0.0} mm long, {layer.Extents.Width:0.000} x {layer.Extents.Height:0.000} mm\n");
        }

        return summary.Colours.IsEmpty ? text : text.Append("  colours: ").AppendJoin(", ", summary.Colours).Append('\n');
    }

    private static int CountOf(InspectionResult result, FindingSeverity severity) => result.Findings.Count(finding => finding.Severity == severity);

    private static void WriteLayers(Utf8JsonWriter json, InspectionResult result)
    {
        json.WriteStartArray("layers");
        foreach (var layer in result.Summary.Layers)
        {
            json.WriteStartObject();
            json.WriteString("name", layer.Name);
            json.WriteBoolean("cut", layer.IsCut);
            json.WriteNumber("contours", layer.ContourCount);
            json.WriteNumber("open_paths", layer.OpenCount);
            json.WriteNumber("length_mm", FigureUnits.Rounded(layer.Length));
            WritePoint(json, "from_mm", new(layer.Extents.MinX, layer.Extents.MinY));
            WritePoint(json, "to_mm", new(layer.Extents.MaxX, layer.Extents.MaxY));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("severity", Finding.WordOf(finding.Severity));
        json.WriteString("code", finding.Code);
        if (finding.Line > 0)
        {
            json.WriteNumber("line", finding.Line);
            json.WriteNumber("column", finding.Column);
        }

        if (finding.At is { } at)
        {
            WritePoint(json, "at_mm", at);
        }

        json.WriteString("message", finding.Text);
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, string name, Point2 point)
    {
        json.WriteStartArray(name);
        json.WriteNumberValue(FigureUnits.Rounded(point.X));
        json.WriteNumberValue(FigureUnits.Rounded(point.Y));
        json.WriteEndArray();
    }
}
