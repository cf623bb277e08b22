using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Arrangement;

/// <summary>
/// Sets labels in rows above a view so that no two texts overlap and no label's line crosses another's text: a text over
/// somebody's line stands in a higher row than that one's text.
/// </summary>
internal sealed class LabelRows(Sketch sketch, double height, double firstBaseline, double left, double right)
{
    private const double Gap = 1.5;
    private const double BesideLine = 1;
    private const double LinesApart = 1.2;
    private const int MostRows = 10;

    // What a millimetre beyond the view's ends costs against a millimetre of height.
    private const double OverhangCost = 0.3;

    private readonly List<Placed> _placed = [];

    private double Pitch => height * 1.7;

    /// <summary>Places a label in the lowest row it may have: around its line, to its left or to its right.</summary>
    /// <param name="text">The text.</param>
    /// <param name="hasArrow">True for a leader with an arrow; false for a plain station line.</param>
    /// <param name="targets">Where its line may end, the best first.</param>
    public void Place(string text, bool hasArrow, ImmutableArray<Point2> targets)
    {
        var width = StrokeAlphabet.WidthOf(text, height);
        Placed? best = null;
        var least = double.PositiveInfinity;
        foreach (var target in targets)
        {
            var x = target.X;
            ReadOnlySpan<double> starts = hasArrow
                ? [x + BesideLine, x - BesideLine - width]
                : [x - (width / 2), x - BesideLine - width, x + BesideLine];
            foreach (var start in starts)
            {
                for (var row = 0; row < MostRows; row++)
                {
                    var overhang = Math.Max(0, left - start) + Math.Max(0, start + width - right);
                    var cost = (row * Pitch) + (overhang * OverhangCost);
                    var candidate = new Placed(text, hasArrow, target, start, start + width, row);
                    if (cost < least && _placed.TrueForAll(other => AreClear(candidate, other)))
                    {
                        (best, least) = (candidate, cost);
                        break;
                    }
                }
            }
        }

        // Without a clear place it is left out: the table has the figure, the former's own sheet its name.
        if (best is not null)
        {
            _placed.Add(best);
        }
    }

    /// <summary>Draws all labels placed.</summary>
    public void Draw()
    {
        foreach (var (text, hasArrow, target, start, end, row) in _placed)
        {
            var baseline = firstBaseline + (row * Pitch);
            var isAround = start < target.X && target.X < end;
            sketch.Text(Layer.Notes, text, new(start, baseline), height);
            sketch.Line(
                Layer.Dimensions, new(target.X, isAround ? baseline - BesideLine : baseline + height), target, LineConventions.Thin);
            if (hasArrow)
            {
                Arrowhead.Draw(sketch, target, new(0, -1));
            }
        }
    }

    private static bool AreClear(Placed a, Placed b) =>
        (a.Row != b.Row || a.End + Gap < b.Start || b.End + Gap < a.Start)
        && Math.Abs(a.Target.X - b.Target.X) > LinesApart
        && IsLineClear(a, b)
        && IsLineClear(b, a);

    // The line of one label runs down from its row: the other's text must not stand across it.
    private static bool IsLineClear(Placed line, Placed text) =>
        text.Row > line.Row
        || line.Target.X < text.Start - (BesideLine / 2)
        || line.Target.X > text.End + (BesideLine / 2);

    private sealed record Placed(string Text, bool HasArrow, Point2 Target, double Start, double End, int Row);
}
