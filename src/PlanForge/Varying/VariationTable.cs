using System.Globalization;
using System.Text;
using PlanForge.Parts.Wording;

namespace PlanForge.Varying;

/// <summary>A variation as a table for a person: a row a figure that varies, a column a step; why a step has none stands below.</summary>
internal static class VariationTable
{
    private const string None = "-";

    /// <summary>The table; every line ends with LF.</summary>
    public static string Of(Variation variation)
    {
        var own = ShownUnit.Of(variation.Dimension, variation.Unit);
        var rows = new List<List<string>> { new() { Named(variation.Parameter, own.Name) } };
        rows[0].AddRange(variation.Steps.Select((step, i) => HeadOf(step, i, own)));
        var varying = variation.Varying;
        foreach (var figure in varying)
        {
            var unit = ShownUnit.Of(figure.Quantity, variation.Unit);
            rows.Add([Named(figure.Label, unit.Name), .. variation.Steps.Select(step => step.ValueOf(figure.Key) is { } value ? unit.Text(value) : None)]);
        }

        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{variation.Design}: {variation.Steps.Length} steps of {variation.Parameter}, {varying.Length} of {CountOf(variation)} key figures vary\n\n");
        var widths = Enumerable.Range(0, rows[0].Count).Select(column => rows.Max(row => row[column].Length)).ToList();
        foreach (var row in rows)
        {
            text.Append(row[0].PadRight(widths[0]));
            for (var column = 1; column < row.Count; column++)
            {
                text.Append("  ").Append(row[column].PadLeft(widths[column]));
            }

            text.Append('\n');
        }

        foreach (var (step, i) in variation.Steps.Select((step, i) => (step, i)).Where(it => !it.step.Faults.IsEmpty))
        {
            text.Append('\n').Append(variation.Parameter).Append(' ').Append(HeadOf(step, i, own)).Append(": ").Append(FaultOf(step)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Why a step could not be worked out, in one line; empty when it could.</summary>
    public static string FaultOf(VariationStep step) => string.Join("; ", step.Faults.Select(fault => fault.Message));

    private static int CountOf(Variation variation) => variation.Steps.Max(step => step.Figures.Length);

    private static string HeadOf(VariationStep step, int index, ShownUnit unit) =>
        step.Value is { } value ? MeasureText.Rounded(value * unit.Factor, unit.Decimals) : string.Create(CultureInfo.InvariantCulture, $"step {index + 1}");

    private static string Named(string what, string unit) => unit.Length > 0 ? $"{what} ({unit})" : what;
}
