using System.Collections.Immutable;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Inputs;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Nests;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Sheets;

/// <summary>Draws all parts of a design on sheets at true size.</summary>
public static class PlanSheets
{
    private const string Language = "en";

    /// <summary>Draws the sheets: parts of a kind together, kinds in the order they first come, parts in their own order.</summary>
    /// <param name="options">What the sheets say and are drawn on.</param>
    /// <param name="list">The parts, and the whole airframe in views for the first sheet; nothing of both makes no sheet.</param>
    /// <param name="nests">The sheets of stock that parts are cut from; they come last, to a scale.</param>
    /// <exception cref="ArgumentException">The paper is unknown.</exception>
    public static PlanSheetsResult Draw(PlanOptions options, PartList list, IReadOnlyList<NestedSheet>? nests = null) =>
        Draw(options, list, () => nests ?? [], new());

    /// <summary>Draws the sheets, as far as they are not kept from an earlier run.</summary>
    /// <param name="options">What the sheets say and are drawn on.</param>
    /// <param name="list">The parts, and the whole airframe in views for the first sheet; nothing of both makes no sheet.</param>
    /// <param name="nests">Gives the sheets of stock that parts are cut from, when all else is placed: they come last, to a scale.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    /// <exception cref="ArgumentException">The paper is unknown.</exception>
    public static PlanSheetsResult Draw(PlanOptions options, PartList list, Func<IReadOnlyList<NestedSheet>> nests, KeptDrawings kept)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(nests);
        ArgumentNullException.ThrowIfNull(kept);
        var log = options.Recording?.Log ?? new();
        var title = options.Issue.Revision.Length > 0 ? $"{options.Name} rev. {options.Issue.Revision}" : options.Name;
        var room = log.Record(() => SheetRoom.Of(options, list));
        var (first, layout, notes) = room.Unnoted;
        var faults = Faults(options, first, notes).ToImmutableArray();
        if (!faults.IsEmpty)
        {
            return new(new(title, Language, []), faults);
        }

        ShownUnits units = default;
        var unitInputs = log.InputsOf(() => units = new(options.Unit, options.Sheets.HasBothUnits));
        var placing = new PartPlacing(first, layout, units, kept);
        var inputs = new SheetInputs(room.Inputs.ToSet(), unitInputs.ToSet(), options.Recording?.Stock.ToSet() ?? InputSet.None, list);
        if (list.Arrangement is { } views)
        {
            var arrangement = log.Record(() => ArrangementSheet.Of(first, views, list.AirframeFigures, options));
            inputs = inputs with { Arrangement = list.ArrangementInputs.With(arrangement.Inputs.ToSet()) };
            if (arrangement.Unnoted is { } sheet)
            {
                placing.Begin(sheet);
            }
        }

        foreach (var kind in list.Parts.GroupBy(part => part.Kind, StringComparer.Ordinal))
        {
            placing.Add([.. kind]);
        }

        var stock = nests();
        foreach (var nest in stock)
        {
            placing.Add(nest, isAlone: stock.Count == 1);
        }

        var furniture = new SheetFurniture(options, notes);
        var sheets = ImmutableArray.CreateBuilder<Sheet>(placing.Sheets.Count);
        foreach (var open in placing.Sheets)
        {
            var sheet = log.Record(() => Finished(open, furniture, notes, sheets.Count + 1, placing.Sheets.Count, kept));
            var own = inputs.Own(open);
            sheets.Add(kept.Known(sheet.Unnoted with
            {
                Inputs = own.With(SheetInputs.OfParts(open)),
                OwnInputs = own,
                FrameInputs = sheet.Inputs.ToSet(),
                PlacingInputs = inputs.Placing,
            }));
        }

        var warnings = placing.Warnings.Select(warning => Diagnostic.Warning(options.Sheets.At, warning));
        return new(new(title, Language, sheets.MoveToImmutable()), [.. warnings]);
    }

    private static IEnumerable<Diagnostic> Faults(PlanOptions options, SheetLayout layout, FootNotes notes)
    {
        foreach (var fault in TitleBlock.Faults(options))
        {
            yield return fault;
        }

        if (!layout.IsLargeEnough)
        {
            var paper = layout.Paper;
            var (width, height) = SheetLayout.Least(notes.HeightFor(TitleBlock.Width));
            yield return Diagnostic.Error(
                options.Sheets.At,
                $"paper of {SizeOf(paper.Width, paper.Height)} is too small for its margins, title block, check bars and notes; "
                    + $"at least {SizeOf(Math.Ceiling(width), Math.Ceiling(height))} is needed");
        }
    }

    /// <summary>The scale of most of a sheet; others follow in brackets (ISO 7200, from memory).</summary>
    private static string ScaleOf(List<PlacedDrawing> drawings)
    {
        if (drawings.Count == 0)
        {
            return SheetItem.TrueSize;
        }

        var scales = drawings.Select(drawing => drawing.Item.Scale).Distinct().OrderBy(scale => scale != SheetItem.TrueSize).ToList();
        return scales.Count == 1 ? scales[0] : $"{scales[0]} ({string.Join(", ", scales.Skip(1))})";
    }

    private static string SizeOf(double width, double height) => $"{Measure.Number(width, 1)} x {Measure.Number(height, 1)} mm";

    private static Sheet Finished(OpenSheet open, SheetFurniture furniture, FootNotes notes, int number, int count, KeptDrawings kept)
    {
        var drawings = open.Drawings;
        var layout = open.Layout.Paper.IsRoll
            ? open.Layout.CutToLength([.. drawings.Select(drawing => drawing.Place)], PartPlacing.Gap, notes.HeightFor)
            : open.Layout;
        var parts = drawings.Select(drawing => drawing.Item.Part).OfType<Part>().Distinct().ToList();
        var title = drawings.Count == 0 ? "Revisions" : string.Join(", ", drawings.Select(drawing => drawing.Item.Kind).Distinct());
        var fingerprint = DrawingFingerprint.Of(drawings, kept);
        var sketch = new Sketch();
        furniture.Draw(
            sketch,
            layout,
            new(title, number, count, ScaleOf(drawings), fingerprint.Code),
            drawings.Aggregate(LinesUsed.Of(parts), (used, drawing) => used.And(drawing.Item.Used)));
        foreach (var drawing in drawings)
        {
            var moved = kept.Moved.Of((new(drawing.Item.List), drawing.Move), () => Sketch.Moved(drawing.Item.Items, drawing.Move));
            sketch.Add(moved, drawing.Item.Bounds, drawing.Move);
        }

        return new(number, title, layout.Paper.Width, layout.Paper.Height, new(sketch.Items), [.. parts.Select(part => part.Id)])
        {
            Fingerprint = fingerprint,
            Bookmarks = [.. drawings.Select(drawing => new Bookmark(drawing.Item.Title, drawing.Place))],
            ScaledViews = [.. drawings.SelectMany(drawing => drawing.Item.ScaledViews.Select(view => view with { Place = view.Place.MovedBy(drawing.Move) }))],
        };
    }
}
