using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Sheets;

/// <summary>Draws all parts of a design on sheets at true size.</summary>
public static class PlanSheets
{
    private const string Language = "en";

    /// <summary>Draws the sheets: parts of a kind together, kinds in the order they first come, parts in their own order.</summary>
    /// <param name="options">What the sheets say and are drawn on.</param>
    /// <param name="parts">The parts; none make no sheet.</param>
    /// <exception cref="ArgumentException">The paper is unknown.</exception>
    public static PlanSheetsResult Draw(PlanOptions options, IReadOnlyList<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(parts);
        var paper = Paper.Find(options.Paper)
            ?? throw new ArgumentException($"There is no paper named '{options.Paper}'.", nameof(options));
        var notes = new FootNotes(options.Notes, parts);
        var placing = new PartPlacing(options.IsPortrait ? paper : paper.Across(), notes, options.Unit);
        foreach (var kind in parts.GroupBy(part => part.Kind, StringComparer.Ordinal))
        {
            foreach (var part in kind)
            {
                placing.Add(part);
            }
        }

        var sheets = ImmutableArray.CreateBuilder<Sheet>(placing.Sheets.Count);
        foreach (var sheet in placing.Sheets)
        {
            sheets.Add(Finished(sheet, options, notes, sheets.Count + 1, placing.Sheets.Count));
        }

        var title = options.Revision.Length > 0 ? $"{options.Name} rev. {options.Revision}" : options.Name;
        return new(new(title, Language, sheets.MoveToImmutable()), placing.Warnings);
    }

    private static Sheet Finished(OpenSheet open, PlanOptions options, FootNotes notes, int number, int count)
    {
        var (layout, parts) = (open.Layout, open.Parts);
        var title = string.Join(", ", parts.Select(part => part.Drawing.Part.Kind).Distinct());
        var sketch = new Sketch();
        sketch.Stroke(Layer.Frame, Path2.Rectangle(layout.Frame), LineConventions.Frame);
        TitleStrip.Draw(sketch, layout.TitleStrip, options, title, number, count);
        CheckBars.DrawPanel(sketch, layout.CheckPanel);
        CheckBars.DrawColumn(sketch, layout.CheckColumn);
        notes.Draw(sketch, layout.FootNotes, parts.Select(part => part.Drawing.Part));
        foreach (var part in parts)
        {
            sketch.Add(part.Drawing.Items, part.Drawing.Bounds, part.Move);
        }

        return new(
            number, title, layout.Paper.Width, layout.Paper.Height, new(sketch.Items), [.. parts.Select(part => part.Drawing.Part.Id)]);
    }
}
