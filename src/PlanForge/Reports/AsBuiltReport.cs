using System.Text.Json;
using PlanForge.Designs;
using PlanForge.Parts;
using PlanForge.Parts.Comparison;
using PlanForge.Parts.Wording;

namespace PlanForge.Reports;

/// <summary>Writes what was measured on the wood and what moved by it, for programs.</summary>
internal static class AsBuiltReport
{
    /// <summary>Adds the section; nothing when nothing was measured.</summary>
    public static void Write(Utf8JsonWriter json, Design design)
    {
        if (design.Airframe.AsBuilt is not { } asBuilt)
        {
            return;
        }

        var figures = new FigureText(design.Airframe.DisplayUnit);
        json.WriteStartObject("as_built");
        json.WriteStartArray("measured");
        foreach (var measurement in asBuilt.Measurements)
        {
            json.WriteStartObject();
            json.WriteString("key", measurement.Thing.Key);
            json.WriteString("label", measurement.Thing.Label(figures.Length));
            WriteValues(json, FigureQuantity.Length, measurement.Designed, measurement.Built);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (design.Moved is { } moved)
        {
            json.WriteStartArray("figures");
            foreach (var figure in moved.Figures)
            {
                json.WriteStartObject();
                json.WriteString("key", figure.Key);
                json.WriteString("label", figure.Label);
                WriteValues(json, figure.Quantity, figure.Old, figure.New);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            var words = new ComparisonTexts(new MeasureText(design.Airframe.DisplayUnit));
            json.WriteObjects("parts", moved.Parts.Where(part => part.State != PartState.Same), part =>
            {
                json.WriteString("id", part.Part.Id);
                json.WriteString("text", words.Of(part));
            });
            WriteIds(json, "parts_changed", moved.Those(PartState.Changed, PartState.Moved));
            WriteIds(json, "parts_added", moved.Those(PartState.New));
            WriteIds(json, "parts_gone", moved.Those(PartState.Gone));
        }

        json.WriteEndObject();
    }

    private static void WriteValues(Utf8JsonWriter json, FigureQuantity quantity, double? designed, double? built)
    {
        Write("designed", designed);
        Write("built", built);
        Write("difference", built - designed);
        if (FigureUnits.NameOf(quantity) is { Length: > 0 } unit)
        {
            json.WriteString("unit", unit);
        }

        void Write(string name, double? value)
        {
            if (value is { } number)
            {
                json.WriteNumber(name, FigureUnits.ValueOf(quantity, number));
            }
        }
    }

    private static void WriteIds(Utf8JsonWriter json, string name, IEnumerable<PartComparison> parts)
    {
        json.WriteTexts(name, parts.Select(part => part.Part.Id));
    }
}
