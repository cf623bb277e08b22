using System.Collections.Immutable;
using PlanForge.Parts;

namespace PlanForge.Drafting.Nests;

/// <summary>What a nest plan uses, in numbers for the report.</summary>
public static class NestFigures
{
    /// <summary>Sheets, parts and yields of each stock, in the order of the plan.</summary>
    /// <remarks>
    /// The yield is wood in the parts over wood of the sheets, 0 to 1; the yield of outlines counts openings as part, and that of
    /// the used length counts only as much of each stock's last sheet as is used. The least count of sheets is the area of wood
    /// over that of a sheet, rounded up: nothing can do with fewer, but for what lies on remnants.
    /// </remarks>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<Figure> Of(NestPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var figures = ImmutableArray.CreateBuilder<Figure>();
        foreach (var stock in plan.Sheets.GroupBy(sheet => sheet.Stock))
        {
            var (sheets, last) = (stock.ToList(), stock.Last());
            var (name, key) = (stock.Key.Name, $"nests.{KeyOf(stock.Key.Name)}");
            var (wood, area) = (sheets.Sum(sheet => sheet.PartArea), sheets.Sum(sheet => sheet.Width * sheet.Length));
            var used = area - (last.Width * (last.Length - last.UsedLength));
            var whole = stock.Key.Width * stock.Key.Length;
            Add("sheets", "sheets", sheets.Count(sheet => !sheet.IsRemnant), FigureQuantity.Number);
            Add("sheets.least", "least count of sheets", Math.Ceiling(wood / whole), FigureQuantity.Number);
            Add("remnants", "remnants used", sheets.Count(sheet => sheet.IsRemnant), FigureQuantity.Number);
            Add("parts", "parts", sheets.Sum(sheet => sheet.Parts.Length), FigureQuantity.Number);
            Add("area", "area of the parts", wood, FigureQuantity.Area);
            Add("yield", "yield", wood / area, FigureQuantity.Number);
            Add("yield.used", "yield of the used length", wood / used, FigureQuantity.Number);
            Add("yield.outlines", "yield of outlines in the used length", sheets.Sum(sheet => sheet.OutlineArea) / used, FigureQuantity.Number);
            Add("left_over", "length left over of the last sheet", last.Length - last.UsedLength, FigureQuantity.Length);

            void Add(string what, string label, double value, FigureQuantity quantity) =>
                figures.Add(new($"{key}.{what}", $"{name}: {label}", value, quantity));
        }

        return figures.ToImmutable();
    }

    // Names hold blanks and capitals; keys hold neither.
    private static string KeyOf(string name) => string.Concat(name.Select(letter =>
        char.IsAsciiLetterUpper(letter) ? (char)(letter | 0x20) : char.IsAsciiLetterOrDigit(letter) ? letter : '_'));
}
