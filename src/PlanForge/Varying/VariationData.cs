using System.Globalization;
using System.Text;
using System.Text.Json;
using PlanForge.Airframe;
using PlanForge.Parts;
using PlanForge.Reports;

namespace PlanForge.Varying;

/// <summary>A variation for programs: a row a step, in the units of the report (mm, mm², degrees), with the figures that vary.</summary>
internal static class VariationData
{
    private const string Fault = "fault";

    /// <summary>As comma-separated values (RFC 4180, but lines end with LF); the last column says why a step has no figures.</summary>
    public static string ToCsv(Variation variation)
    {
        var varying = variation.Varying;
        var text = new StringBuilder();
        AddRow(text, [Named(variation.Parameter, UnitOf(variation.Dimension)), .. varying.Select(figure => Named(figure.Key, FigureUnits.NameOf(figure.Quantity))), Fault]);
        foreach (var step in variation.Steps)
        {
            AddRow(
                text,
                [
                    NumberOf(ValueOf(variation, step)),
                    .. varying.Select(figure => NumberOf(step.ValueOf(figure.Key))),
                    VariationTable.FaultOf(step),
                ]);
        }

        return text.ToString();
    }

    /// <summary>As JSON.</summary>
    public static byte[] ToJson(Variation variation) => JsonText.Write(json =>
    {
        var varying = variation.Varying;
        json.WriteStartObject();
        json.WriteString("planforge", ToolVersion.Text);
        json.WriteString("design", variation.Design);
        json.WriteStartObject("parameter");
        json.WriteString("name", variation.Parameter);
        WriteUnit(json, UnitOf(variation.Dimension));
        json.WriteEndObject();
        json.WriteStartArray("figures");
        foreach (var figure in varying)
        {
            json.WriteStartObject();
            json.WriteString("key", figure.Key);
            json.WriteString("label", figure.Label);
            WriteUnit(json, FigureUnits.NameOf(figure.Quantity));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("steps");
        foreach (var step in variation.Steps)
        {
            WriteStep(json, variation, step, varying);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    });

    private static void WriteStep(Utf8JsonWriter json, Variation variation, VariationStep step, IEnumerable<Figure> varying)
    {
        json.WriteStartObject();
        if (ValueOf(variation, step) is { } value)
        {
            json.WriteNumber("value", value);
        }

        json.WriteStartObject("figures");
        foreach (var figure in varying)
        {
            if (step.ValueOf(figure.Key) is { } number)
            {
                json.WriteNumber(figure.Key, number);
            }
        }

        json.WriteEndObject();
        if (!step.Faults.IsEmpty)
        {
            json.WriteTexts("faults", step.Faults.Select(fault => fault.Message));
        }

        json.WriteEndObject();
    }

    private static void WriteUnit(Utf8JsonWriter json, string unit)
    {
        if (unit.Length > 0)
        {
            json.WriteString("unit", unit);
        }
    }

    private static double? ValueOf(Variation variation, VariationStep step) =>
        step.Value is { } value ? FigureUnits.Rounded(variation.Dimension == Dimension.Angle ? value * 180 / Math.PI : value) : null;

    private static string UnitOf(Dimension dimension) => dimension switch
    {
        Dimension.Length => "mm",
        Dimension.Angle => "deg",
        Dimension.Mass => "g",
        _ => "",
    };

    private static string Named(string what, string unit) => unit.Length > 0 ? $"{what} [{unit}]" : what;

    private static string NumberOf(double? value) => value?.ToString("0.######", CultureInfo.InvariantCulture) ?? "";

    private static void AddRow(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\n") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
