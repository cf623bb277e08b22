using System.Text;
using PlanForge.Designs;
using PlanForge.Parts;
using PlanForge.Parts.Comparison;
using PlanForge.Parts.Wording;

namespace PlanForge.Reports;

/// <summary>Writes for a person what was measured on the wood, what moved by it and which parts to make again.</summary>
internal static class AsBuiltSummary
{
    /// <summary>The section, every line ending with LF, a blank line behind it; empty when nothing was measured.</summary>
    public static string Of(Design design, FigureText figures)
    {
        if (design.Airframe.AsBuilt is not { } asBuilt)
        {
            return "";
        }

        var text = new StringBuilder();
        AddRows(text, "As built", [.. asBuilt.Measurements.Select(measurement => Row.Of(
            figures, measurement.Thing.Label(figures.Length), FigureQuantity.Length, measurement.Designed, measurement.Built))]);
        if (design.Moved is { } moved)
        {
            var felt = moved.Figures.Where(IsFelt).ToList();
            AddRows(text, "Moved by that", [.. felt
                .Select(figure => Row.Of(figures, figure.Label, figure.Quantity, figure.Old, figure.New))]);
            if (moved.Figures.Length > felt.Count)
            {
                text.Append("  and ").Append(Counts.Of(moved.Figures.Length - felt.Count, "figure")).Append(" by less than a builder feels (see report.json)\n");
            }

            AddParts(text, "Parts that changed", moved.Those(PartState.Changed, PartState.Moved), new(new MeasureText(design.Airframe.DisplayUnit)));
            AddParts(text, "New parts", moved.Those(PartState.New));
            AddParts(text, "No longer needed", moved.Those(PartState.Gone));
        }

        return text.Append('\n').ToString();
    }

    // A twentieth of a millimetre is about what a steel rule and a good eye tell apart (common practice, no source).
    private static bool IsFelt(FigureChange figure) => figure.New - figure.Old is not { } difference || Math.Abs(difference) >= figure.Quantity switch
    {
        FigureQuantity.Length => 0.05,
        FigureQuantity.Area => 100,
        FigureQuantity.Angle => 0.05 * Math.PI / 180,
        _ => 0.001,
    };

    private static void AddRows(StringBuilder text, string title, List<Row> rows)
    {
        if (rows.Count == 0)
        {
            return;
        }

        int label = rows.Max(row => row.Label.Length), built = rows.Max(row => row.Built.Length);
        text.Append(title).Append('\n');
        foreach (var row in rows)
        {
            text.Append("  ").Append(row.Label.PadRight(label)).Append("  ").Append(row.Built.PadLeft(built))
                .Append("  (designed ").Append(row.Designed).Append(row.Difference).Append(")\n");
        }
    }

    private static void AddParts(StringBuilder text, string title, IEnumerable<PartComparison> parts)
    {
        var titles = string.Join("; ", parts.Select(part => part.Part.Title));
        text.Append(titles.Length > 0 ? $"{title}: {titles}\n" : "");
    }

    private static void AddParts(StringBuilder text, string title, IEnumerable<PartComparison> parts, ComparisonTexts words)
    {
        var alike = parts.GroupBy(words.Of).ToList();
        text.Append(alike.Count > 0 ? $"{title}\n" : "");
        foreach (var group in alike)
        {
            text.Append("  ").AppendJoin("; ", group.Select(part => part.Part.Title)).Append(": ").Append(group.Key).Append('\n');
        }
    }

    /// <summary>A value before and after, as texts.</summary>
    private sealed record Row(string Label, string Designed, string Built, string Difference)
    {
        public static Row Of(FigureText figures, string label, FigureQuantity quantity, double? designed, double? built)
        {
            var difference = built - designed is { } number
                ? $", {(number >= 0 ? "+" : "")}{figures.ValueOf(quantity, number)}{figures.UnitOf(quantity)}"
                : "";
            return new(label, Text(designed), Text(built), difference);

            string Text(double? value) => value is { } known ? figures.ValueOf(quantity, known) + figures.UnitOf(quantity) : "none";
        }
    }
}
