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

    // Room for a figure written with a pencil, in heights of the lettering: 5.5 mm by 18 mm.
    private const double BlankPitch = 2.2;
    private const double BlankWidth = 7.2;

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
        var pitch = height * (table.BlankColumns > 0 ? BlankPitch : RowPitch);
        var y = corner.Y;
        Rule(corner.X, y);
        y = DrawRow(table.Header, y, height * RowPitch);
        Rule(corner.X, y);
        var blanksTop = y;
        var end = Math.Min(table.Rows.Length, first + MostRows);
        for (var row = first; row < end; row++)
        {
            y = DrawRow(table.Rows[row], y, pitch);
            if (table.BlankColumns > 0)
            {
                Rule(corner.X, y);
            }
        }

        Rule(corner.X, y);
        DrawBlanks(blanksTop, y);
        return right;

        void Rule(double from, double at) => sketch.Line(Layer.Notes, new(from, at), new(right, at), LineConventions.Thin);

        void DrawBlanks(double from, double to)
        {
            var x = right + (ColumnGap / 2);
            for (var column = widths.Length - 1; column >= widths.Length - table.BlankColumns; column--)
            {
                x -= widths[column] + ColumnGap;
                sketch.Line(Layer.Notes, new(x, from), new(x, to), LineConventions.Thin);
            }
        }

        double DrawRow(ImmutableArray<string> cells, double rowTop, double pitch)
        {
            var x = corner.X;
            for (var column = 0; column < cells.Length; column++)
            {
                if (cells[column].Length == 0)
                {
                    break;
                }

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
            width = Math.Max(width, column >= table.Header.Length - table.BlankColumns ? BlankWidth * height : 0);
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
