using System.Collections.Immutable;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Draws a table: title, heads between two lines, rows, a closing line; a long one in pieces side by side.</summary>
internal static class TableDrawing
{
    // A longer table would stand higher than an A4 sheet across leaves room for.
    private const int MostRows = 20;
    private const double ColumnGap = 4;
    private const double PieceGap = 8;
    private const double RowPitch = 1.8;

    // From the middle of a row down to the baseline, in heights: less than half a capital, so that tails clear the rule below.
    private const double Baseline = 0.42;

    /// <summary>Draws a table downwards from the origin.</summary>
    public static Sketch Draw(PartTable table, double height)
    {
        var sketch = new Sketch();
        var top = 0.0;
        if (table.Title.Length > 0)
        {
            sketch.Text(Layer.Notes, table.Title, new(0, -height), height);
            top = -height * RowPitch;
        }

        var widths = WidthsOf(table, height);
        var left = 0.0;
        for (var first = 0; first == 0 || first < table.Rows.Length; first += MostRows)
        {
            left = DrawPiece(sketch, table, widths, first, new(left, top), height) + PieceGap;
        }

        return sketch;
    }

    private static double DrawPiece(
        Sketch sketch, PartTable table, ImmutableArray<double> widths, int first, Point2 corner, double height)
    {
        var right = corner.X + widths.Sum() + (ColumnGap * (widths.Length - 1));
        var pitch = height * RowPitch;
        var y = corner.Y;
        Rule(y);
        y = DrawRow(table.Header, y);
        Rule(y);
        var end = Math.Min(table.Rows.Length, first + MostRows);
        for (var row = first; row < end; row++)
        {
            y = DrawRow(table.Rows[row], y);
        }

        Rule(y);
        return right;

        void Rule(double at) => sketch.Line(Layer.Notes, new(corner.X, at), new(right, at), LineConventions.Thin);

        double DrawRow(ImmutableArray<string> cells, double rowTop)
        {
            var x = corner.X;
            for (var column = 0; column < cells.Length; column++)
            {
                var indent = IsNumeric(table, column) ? widths[column] - StrokeAlphabet.WidthOf(cells[column], height) : 0;
                sketch.Text(Layer.Notes, cells[column], new(x + indent, rowTop - (pitch / 2) - (Baseline * height)), height);
                x += widths[column] + ColumnGap;
            }

            return rowTop - pitch;
        }
    }

    private static ImmutableArray<double> WidthsOf(PartTable table, double height)
    {
        var widths = ImmutableArray.CreateBuilder<double>(table.Header.Length);
        for (var column = 0; column < table.Header.Length; column++)
        {
            var width = StrokeAlphabet.WidthOf(table.Header[column], height);
            foreach (var row in table.Rows)
            {
                width = Math.Max(width, StrokeAlphabet.WidthOf(row[column], height));
            }

            widths.Add(width);
        }

        return widths.MoveToImmutable();
    }

    /// <summary>True when every cell of a column begins like a number: such columns are set flush right.</summary>
    private static bool IsNumeric(PartTable table, int column)
    {
        foreach (var row in table.Rows)
        {
            var cell = row[column].AsSpan().TrimStart("-−+±");
            if (cell.IsEmpty || !char.IsAsciiDigit(cell[0]))
            {
                return false;
            }
        }

        return true;
    }
}
