using System.Text.Json;
using PlanForge.Designs;
using PlanForge.Geometry;
using PlanForge.Geometry.Deviations;
using PlanForge.Parts;
using PlanForge.Parts.Comparison;
using PlanForge.Parts.Wording;
using PlanForge.Reports;

namespace PlanForge.Comparing;

/// <summary>Writes a comparison as JSON, for programs: millimetres and degrees; places in a part's own coordinates.</summary>
internal static class ComparisonReport
{
    /// <summary>The report.</summary>
    public static byte[] Of(DesignComparison comparison) => JsonText.Write(json =>
    {
        json.WriteStartObject();
        json.WriteString("planforge", ToolVersion.Text);
        WriteDesign(json, "old", comparison.Old);
        WriteDesign(json, "new", comparison.New);
        json.WriteBoolean("same", comparison.IsSame);
        json.WriteObjects("values", comparison.Values, value => ValueChangeJson.Write(json, value));
        json.WriteObjects("figures", comparison.Parts.Figures, figure => WriteFigure(json, figure));
        var words = new ComparisonTexts(new MeasureText(comparison.New.Airframe.DisplayUnit));
        json.WriteObjects("parts", comparison.Parts.Parts, part => WritePart(json, part, comparison, words));
        json.WriteObjects("sheets", comparison.Sheets, sheet =>
        {
            json.WriteNumber("number", sheet.Sheet.Number);
            json.WriteString("title", sheet.Sheet.Title);
            json.WriteString("fingerprint", sheet.Sheet.Fingerprint);
            json.WriteString("do", sheet.Was is null ? "reprint" : "keep");
            if (sheet.Was is { } was)
            {
                json.WriteNumber("was", was.Number);
            }
            else
            {
                json.WriteObjects("causes", comparison.CausesOf(sheet), value => ValueChangeJson.Write(json, value));
            }
        });
        json.WriteObjects("sheets_gone", comparison.GoneSheets, sheet =>
        {
            json.WriteNumber("number", sheet.Number);
            json.WriteString("title", sheet.Title);
            json.WriteString("fingerprint", sheet.Fingerprint);
        });
        json.WriteEndObject();
    });

    private static void WriteDesign(Utf8JsonWriter json, string name, Design design)
    {
        json.WriteStartObject(name);
        json.WriteString("description", design.FileName);
        json.WriteString("design", design.Airframe.Name);
        json.WriteString("revision", design.Airframe.Issue.Revision);
        json.WriteString("fingerprint", design.Airframe.Issue.Fingerprint.Code);
        json.WriteEndObject();
    }

    private static void WriteFigure(Utf8JsonWriter json, FigureChange figure)
    {
        json.WriteString("key", figure.Key);
        json.WriteString("label", figure.Label);
        Write("old", figure.Old);
        Write("new", figure.New);
        if (FigureUnits.NameOf(figure.Quantity) is { Length: > 0 } unit)
        {
            json.WriteString("unit", unit);
        }

        void Write(string name, double? value)
        {
            if (value is { } number)
            {
                json.WriteNumber(name, FigureUnits.ValueOf(new(figure.Key, figure.Label, number, figure.Quantity)));
            }
            else
            {
                json.WriteNull(name);
            }
        }
    }

    private static void WritePart(Utf8JsonWriter json, PartComparison part, DesignComparison comparison, ComparisonTexts words)
    {
        json.WriteString("id", part.Part.Id);
        json.WriteString("title", part.Part.Title);
        json.WriteString("kind", part.Part.Kind);
        json.WriteString("state", NameOf(part.State));
        json.WriteString("do", part.Advice switch
        {
            PartAdvice.Keep => "keep",
            PartAdvice.PutElsewhere => "put_elsewhere",
            PartAdvice.MarkAnew => "mark_anew",
            PartAdvice.TakeOff => "take_off",
            PartAdvice.Make => "make",
            PartAdvice.PrintAgain => "print_again",
            _ => "discard",
        });
        if (part.State == PartState.Same)
        {
            return;
        }

        json.WriteString("text", words.Of(part));
        if (part.Largest is { } largest)
        {
            WriteDeviation(json, "largest", largest.Distance, largest.At, part.Part);
        }

        if (part.Surplus is { } surplus)
        {
            WriteDeviation(json, "take_off", surplus.Largest.Distance, surplus.Middle, part.Part);
        }

        if (part.Lack is { } lack)
        {
            WriteDeviation(json, "short", lack.Largest.Distance, lack.Middle, part.Part);
        }

        json.WriteObjects("zones", part.Wood?.Zones ?? [], zone =>
        {
            json.WriteString("side", zone.IsBeyondEnd ? (zone.IsOnOld ? "ends_earlier" : "goes_on") : zone.Side == DeviationSide.Surplus ? "take_off" : "short");
            WriteDeviation(json, "largest", zone.Largest.Distance, zone.Middle, part.Part);
            json.WriteNumber("length_mm", FigureUnits.Rounded(zone.Run.Length));
            json.WriteString("text", words.Of(zone));
        });
        json.WriteObjects("causes", comparison.CausesOf(part), value => ValueChangeJson.Write(json, value));
        json.WriteObjects("figures", part.Figures, figure => WriteFigure(json, figure));
    }

    private static string NameOf(PartState state) => state switch
    {
        PartState.Same => "same",
        PartState.Moved => "moved",
        PartState.Changed => "changed",
        PartState.New => "new",
        _ => "gone",
    };

    private static void WriteDeviation(Utf8JsonWriter json, string name, double distance, Point2 at, Part part)
    {
        json.WriteStartObject(name);
        json.WriteNumber("mm", FigureUnits.Rounded(distance));
        json.WriteNumber("x_mm", FigureUnits.Rounded(at.X));
        json.WriteNumber("y_mm", FigureUnits.Rounded(at.Y));
        json.WriteString("where", ComparisonTexts.Where(part, at));
        json.WriteEndObject();
    }
}
