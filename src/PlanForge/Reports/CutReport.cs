using System.Text.Json;
using PlanForge.Designs;
using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Nests;
using PlanForge.Folders;

namespace PlanForge.Reports;

/// <summary>The part of the report that is about cutting: what each file holds, and how the parts lie on the stock.</summary>
internal static class CutReport
{
    public static void Write(Utf8JsonWriter json, Design design, KeptFiles kept)
    {
        json.WriteStartArray("cut_files");
        foreach (var cut in design.Cuts.Drawings)
        {
            var figures = kept.CutFigures.Of((new(cut), new(design.Cuts.Profile)), () => CutFigures.Of(cut, design.Cuts.Profile));
            WriteFile(json, cut.Name, figures, design);
        }

        json.WriteEndArray();
        json.WriteStartObject("nests");
        Report.WriteFigures(json, NestFigures.Of(design.Cuts.Nests));
        json.WriteStartArray("sheets");
        foreach (var sheet in design.Cuts.Nests.Sheets)
        {
            WriteSheet(json, sheet);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteFile(Utf8JsonWriter json, string name, CutFigures figures, Design design)
    {
        var cutter = design.Airframe.Cutter;
        json.WriteStartObject();
        json.WriteString("part", name);
        json.WriteNumber("lines", figures.Lines);
        json.WriteNumber("arcs", figures.Arcs);
        json.WriteNumber("circles", figures.Circles);
        json.WriteNumber("cut_mm", FigureUnits.Rounded(figures.Cut));
        json.WriteNumber("scored_mm", FigureUnits.Rounded(figures.Scored));
        json.WriteNumber("engraved_mm", FigureUnits.Rounded(figures.Engraved));
        if (cutter.CutSpeed is not null || cutter.ScoreSpeed is not null || cutter.EngraveSpeed is not null)
        {
            json.WriteNumber("seconds", FigureUnits.Rounded(figures.Seconds(cutter.EngraveSpeed, cutter.ScoreSpeed, cutter.CutSpeed)));
        }

        json.WriteEndObject();
    }

    private static void WriteSheet(Utf8JsonWriter json, NestedSheet sheet)
    {
        json.WriteStartObject();
        json.WriteString("title", sheet.Title);
        json.WriteNumber("length_mm", FigureUnits.Rounded(sheet.Length));
        json.WriteNumber("width_mm", FigureUnits.Rounded(sheet.Width));
        json.WriteNumber("yield", FigureUnits.Rounded(sheet.Yield));
        json.WriteNumber("used_length_mm", FigureUnits.Rounded(sheet.UsedLength));
        json.WriteTexts("parts", sheet.Parts.Select(part => part.Part.Id));
        json.WriteEndObject();
    }
}
