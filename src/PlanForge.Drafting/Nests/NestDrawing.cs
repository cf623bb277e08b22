using System.Collections.Immutable;
using PlanForge.Drafting.Arrangement;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.PartDrawings;
using PlanForge.Geometry;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Nests;

/// <summary>A nest as drawn: the sheet to a scale, its parts with their names, the grain, sizes and what is left over.</summary>
/// <param name="Title">What it shows: <c>balsa 3, sheet 1</c>.</param>
/// <param name="Items">What is drawn; the sheet's lower left corner is the origin.</param>
/// <param name="Bounds">The smallest upright rectangle around it.</param>
/// <param name="ScaleName">The scale as a drawing names it: <c>1:5</c>.</param>
/// <param name="View">The sheet itself, which is the view that is not at true size.</param>
public sealed record NestDrawing(
    string Title, ImmutableArray<DrawingItem> Items, Bounds2 Bounds, string ScaleName, ScaledView View)
{
    // Clear distances on the paper, mm.
    private const double Gap = 3;
    private const double GrainLength = 30;

    // Narrower columns of text are ragged.
    private const double LeastTextWidth = 80;

    // Grain, title, details and dimensions take more than that above and below any sheet: no need to draw it to see that.
    private const double LeastAround = 25;

    /// <summary>Draws a nest at the largest reduction of ISO 5455 (from memory) at which it fits; it is never drawn at true size.</summary>
    /// <param name="sheet">The nest.</param>
    /// <param name="units">The units lengths are shown in.</param>
    /// <param name="width">Width of the free space, mm.</param>
    /// <param name="height">Height of the free space, mm.</param>
    /// <returns>The drawing; null where even the smallest does not fit.</returns>
    public static NestDrawing? Of(NestedSheet sheet, ShownUnits units, double width, double height)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        foreach (var reduction in GeneralArrangement.Reductions)
        {
            var scale = 1.0 / reduction;
            if (reduction == 1 || sheet.Length * scale >= width || (sheet.Width * scale) + LeastAround >= height)
            {
                continue;
            }

            // Rather a key wider than the sheet than a sheet nobody can read.
            var drawn = new SheetAtScale(sheet, units, reduction);
            var own = Math.Max(LeastTextWidth, sheet.Length * scale);
            foreach (var textWidth in new[] { own, Math.Min(2 * own, width), width })
            {
                if (drawn.WithTexts(textWidth) is var drawing && drawing.Bounds.Width <= width && drawing.Bounds.Height <= height)
                {
                    return drawing;
                }
            }
        }

        return null;
    }

    /// <summary>A sheet at one scale with what is written on it, to which the texts around it are added.</summary>
    private sealed class SheetAtScale
    {
        private readonly NestedSheet _sheet;
        private readonly ShownUnits _units;
        private readonly string _name;
        private readonly double _scale;
        private readonly Bounds2 _place;
        private readonly Sketch _sketch = new();
        private readonly ImmutableArray<string> _key;

        public SheetAtScale(NestedSheet sheet, ShownUnits units, int reduction)
        {
            (_sheet, _units, _name, _scale) = (sheet, units, FormattableString.Invariant($"1:{reduction}"), 1.0 / reduction);
            _place = new Bounds2(0, 0, sheet.Length * _scale, sheet.Width * _scale);
            var edge = LineConventions.StyleOf(LineUse.Edge);
            _sketch.Stroke(Layer.Reference, Path2.Rectangle(_place), edge);
            var labels = new NestLabels(_sketch, _place);
            if (HasRest(sheet, _scale, units))
            {
                var end = Path2.Line(new(sheet.UsedLength * _scale, 0), new(sheet.UsedLength * _scale, _place.MaxY));
                _sketch.Stroke(Layer.Reference, end, LineConventions.StyleOf(LineUse.Hidden));
                labels.KeepOff(end);
            }

            foreach (var part in sheet.Parts)
            {
                var contours = part.Contours().Select(contour => contour.Scaled(_scale)).ToImmutableArray();
                foreach (var contour in contours)
                {
                    _sketch.Stroke(Layer.Reference, contour, edge);
                }

                labels.Add(part.Part, contours);
            }

            _key = [.. labels.Draw()];
            DrawDimensions(_sketch, sheet, _place, _scale, units);
        }

        public NestDrawing WithTexts(double width)
        {
            var sketch = new Sketch();
            sketch.Add(_sketch, default);
            DrawAbove(sketch, _place.MaxY, _sheet.Title, TextWrap.Lines(Details(_sheet, _units, _name), width, LetteringSizes.Least), _units);
            DrawBelow(sketch, _key, width);
            return new(_sheet.Title, sketch.Items, sketch.Bounds, _name, new(_sheet.Title, _place, _scale));
        }
    }

    private static string Details(NestedSheet sheet, ShownUnits units, string scale)
    {
        var thickness = Measure.LengthWithUnit(sheet.Stock.Thickness, units, 2);
        var size = $"{Measure.Dimension(sheet.Width, units)} x {Measure.LengthWithUnit(sheet.Length, units)}";
        var parts = sheet.Parts.Length == 1 ? "1 part" : Measure.Number(sheet.Parts.Length, 0) + " parts";
        return $"{sheet.Stock.Material} {thickness}, {size}; scale {scale}; {parts}, {Measure.Number(100 * sheet.Yield, 0)} % of the sheet";
    }

    private static void DrawDimensions(Sketch sketch, NestedSheet sheet, Bounds2 place, double scale, ShownUnits units)
    {
        var height = LetteringSizes.For(units).Body;
        var row = (2 * height) + Gap;
        var below = row;
        if (HasRest(sheet, scale, units))
        {
            Level(sheet.UsedLength * scale, RestOf(sheet, units), below);
            below += row;
        }

        Level(0, Measure.Dimension(sheet.Length, units), below);
        PlacedAnnotation.Draw(
            sketch, new(new(0, 0), new(0, place.MaxY), new(0, 1), row), Measure.Dimension(sheet.Width, units), height);

        void Level(double from, string text, double lineBelow) => PlacedAnnotation.Draw(
            sketch, new(new(from, 0), new(place.MaxX, 0), new(1, 0), -lineBelow), text, height);
    }

    // Rounded down: it is cut off for the next design.
    private static string RestOf(NestedSheet sheet, ShownUnits units) =>
        $"left over {Measure.Dimension(Math.Floor(sheet.Length - sheet.UsedLength), units)}";

    // A rest too short for its text on the drawing is worth no mention.
    private static bool HasRest(NestedSheet sheet, double scale, ShownUnits units) => (sheet.Length - sheet.UsedLength) * scale
        >= StrokeAlphabet.WidthOf(RestOf(sheet, units), LetteringSizes.For(units).Body) + Gap;

    // The grain next to the sheet, then the details, the title on top.
    private static void DrawAbove(Sketch sketch, double top, string title, IEnumerable<string> details, ShownUnits units)
    {
        var grain = GrainArrow.Draw(0, GrainLength, LetteringSizes.Least);
        sketch.Add(grain, new(-grain.Bounds.MinX, top + Gap - grain.Bounds.MinY));
        var y = top + Gap + grain.Bounds.Height + (Gap / 2);
        foreach (var line in details.Reverse())
        {
            y += StrokeAlphabet.Descent * LetteringSizes.Least;
            sketch.Text(Layer.Notes, line, new(0, y), LetteringSizes.Least);
            y += LetteringSizes.PitchOf(line, LetteringSizes.Least);
        }

        var height = LetteringSizes.For(units).Title;
        sketch.Text(Layer.Notes, title, new(0, y + (StrokeAlphabet.Descent * height)), height);
    }

    // The key in columns: a number is found faster below another than in a row of text.
    private static void DrawBelow(Sketch sketch, ImmutableArray<string> entries, double width)
    {
        if (entries.IsEmpty)
        {
            return;
        }

        var column = entries.Max(entry => StrokeAlphabet.WidthOf(entry, LetteringSizes.Least)) + (2 * Gap);
        var columns = Math.Clamp((int)(width / column), 1, entries.Length);
        var rows = (entries.Length + columns - 1) / columns;
        var top = sketch.Bounds.MinY - Gap;
        for (var i = 0; i < entries.Length; i++)
        {
            var y = top - (((i % rows) + 1) * LetteringSizes.PitchOf(entries[i], LetteringSizes.Least));
            sketch.Text(Layer.Notes, entries[i], new(i / rows * column, y), LetteringSizes.Least);
        }
    }
}
