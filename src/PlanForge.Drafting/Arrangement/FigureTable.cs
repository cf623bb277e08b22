using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Parts;

namespace PlanForge.Drafting.Arrangement;

/// <summary>The key figures in one or more columns.</summary>
internal sealed class FigureTable
{
    private const double CellGap = 4;
    private const double ColumnGap = 8;
    // Line pitch for capitals and small letters, ISO 3098-0: 15/10 of the height.
    private const double Pitch = 1.5;
    private const double RuleGap = 0.8;
    private const double Height = LetteringSizes.Least;

    private readonly ImmutableArray<(string Label, string Value)> _rows;

    public FigureTable(ImmutableArray<Figure> figures, DisplayUnit unit) =>
        _rows = [.. figures.Select(figure => (figure.Label, ValueOf(figure, unit)))];

    /// <summary>Draws the table downwards from the origin, its rows shared out over some columns.</summary>
    public Sketch Draw(int columns)
    {
        var sketch = new Sketch();
        const double Line = Height * Pitch;
        sketch.Text(Layer.Notes, "Key figures", new(0, -Height), Height);
        var top = -Line;
        var count = Math.Max(1, (_rows.Length + columns - 1) / columns);
        var left = 0.0;
        for (var first = 0; first < _rows.Length; first += count)
        {
            left = DrawColumn(sketch, first, Math.Min(_rows.Length, first + count), left, top, Line) + ColumnGap;
        }

        return sketch;
    }

    private double DrawColumn(Sketch sketch, int first, int end, double left, double top, double pitch)
    {
        double labels = 0, values = 0;
        for (var i = first; i < end; i++)
        {
            labels = Math.Max(labels, StrokeAlphabet.WidthOf(_rows[i].Label, Height));
            values = Math.Max(values, StrokeAlphabet.WidthOf(_rows[i].Value, Height));
        }

        var right = left + labels + CellGap + values;
        sketch.Line(Layer.Notes, new(left, top), new(right, top), LineConventions.Thin);
        for (var i = first; i < end; i++)
        {
            var baseline = top - RuleGap - Height - ((i - first) * pitch);
            sketch.Text(Layer.Notes, _rows[i].Label, new(left, baseline), Height);
            sketch.Text(Layer.Notes, _rows[i].Value, new(right - StrokeAlphabet.WidthOf(_rows[i].Value, Height), baseline), Height);
        }


        // Descenders of the last row keep clear of the line as well.
        var bottom = top - RuleGap - Height - ((end - first - 1) * pitch) - (StrokeAlphabet.Descent * Height) - RuleGap;
        sketch.Line(Layer.Notes, new(left, bottom), new(right, bottom), LineConventions.Thin);
        return right;
    }

    private static string ValueOf(Figure figure, DisplayUnit unit) => figure.Quantity switch
    {
        // Thousandths of an inch, not fractions: figures to reckon with, in columns.
        FigureQuantity.Length => unit == DisplayUnit.Inch
            ? Measure.Number(figure.Value / Measure.Inch, 3) + "″"
            : Measure.LengthWithUnit(figure.Value, unit),
        FigureQuantity.Area => unit == DisplayUnit.Inch
            ? Measure.Number(figure.Value / (Measure.Inch * Measure.Inch), 1) + " in²"
            : Measure.Number(figure.Value / 10_000, 2) + " dm²",
        FigureQuantity.Angle => Measure.Angle(figure.Value),
        _ => Measure.Number(figure.Value, 3),
    };
}
