using PlanForge.Geometry;

namespace PlanForge.Drafting.Nests;

/// <summary>Finds every cell of a grid that lies within a distance of a shape: never one too few, seldom one too many.</summary>
/// <remarks>
/// Each chord covers the cells that the strip around it (all points within the reach) meets in a column; between them the
/// column is filled where its middle lies inside by the even-odd rule, since a cell that no chord meets is wholly in or out.
/// What overlaps a cell by less than <see cref="Slack"/> does not take it, so that edges on the grid's lines take no cell beyond.
/// </remarks>
internal sealed class Rasterizer
{
    /// <summary>What may overlap a cell without taking it, mm; rounding of coordinates is far less, a spacing far more.</summary>
    public const double Slack = 1e-7;

    private readonly double _cell;
    private readonly int _border;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int _words;
    private readonly ulong[] _bits;

    private Rasterizer(double width, double height, double cell, int border)
    {
        (_cell, _border) = (cell, border);
        _columns = CellsOver(width, cell) + (2 * border);
        _rows = CellsOver(height, cell) + (2 * border);
        _words = (_rows + 63) / 64;
        _bits = new ulong[_columns * _words];
    }

    /// <summary>How many cells a length begins, at least 1.</summary>
    public static int CellsOver(double length, double cell) => Math.Max(1, (int)Math.Ceiling((length - Slack) / cell));

    /// <summary>The cells within a distance of the shape.</summary>
    /// <param name="chords">The shape, its lower left corner at the origin.</param>
    /// <param name="width">Its extent along x, mm.</param>
    /// <param name="height">Its extent along y, mm.</param>
    /// <param name="cell">Edge of a cell, mm, over 0.</param>
    /// <param name="reach">The distance, mm; 0 for the shape itself, which takes no cell outside of its extents.</param>
    public static ShapeCells Cells(ReadOnlySpan<Chord> chords, double width, double height, double cell, double reach)
    {
        var stray = 0.0;
        foreach (var chord in chords)
        {
            stray = Math.Max(stray, chord.Stray);
        }

        var raster = new Rasterizer(width, height, cell, reach == 0 ? 0 : CellsOver(reach + stray, cell));
        foreach (var chord in chords)
        {
            raster.MarkAround(chord, reach + chord.Stray);
        }

        raster.FillInside(chords);
        return raster.ToCells();
    }

    private void MarkAround(in Chord chord, double radius)
    {
        var (a, b) = chord.Start.X <= chord.End.X ? (chord.Start, chord.End) : (chord.End, chord.Start);
        var first = Math.Max(0, First(a.X - radius));
        var last = Math.Min(_columns - 1, Last(b.X + radius));
        var (below, belowEnd) = (new Point2(a.X, -a.Y), new Point2(b.X, -b.Y));
        for (var column = first; column <= last; column++)
        {
            var from = Math.Max((column - _border) * _cell, a.X - radius);
            var to = Math.Min((column + 1 - _border) * _cell, b.X + radius);
            Mark(column, -Highest(below, belowEnd, radius, from, to), Highest(a, b, radius, from, to));
        }
    }

    /// <summary>The highest point, between two places across, of all that lies within a radius of the line from a to b (a left of b).</summary>
    private static double Highest(Point2 a, Point2 b, double radius, double from, double to)
    {
        // The strip's upper edge rises to its top and falls after it: the top, or what is nearest to it, is the highest.
        var (top, topEnd) = a.Y > b.Y ? (a.X, a.X) : a.Y < b.Y ? (b.X, b.X) : (a.X, b.X);
        var x = Math.Clamp(Math.Clamp(from, top, topEnd), from, to);
        var highest = Math.Max(CircleTop(a, radius, x), CircleTop(b, radius, x));
        var chord = b - a;
        if (chord.X > 0)
        {
            var side = chord.Left * (radius / chord.Length);
            var fraction = (x - a.X - side.X) / chord.X;
            if (fraction is >= 0 and <= 1)
            {
                highest = Math.Max(highest, a.Y + side.Y + (chord.Y * fraction));
            }
        }

        return highest;
    }

    private static double CircleTop(Point2 centre, double radius, double x)
    {
        var squared = (radius * radius) - ((x - centre.X) * (x - centre.X));
        return squared > -Slack ? centre.Y + Math.Sqrt(Math.Max(0, squared)) : double.NegativeInfinity;
    }

    private void FillInside(ReadOnlySpan<Chord> chords)
    {
        var crossings = CrossingsOf(chords);
        for (var i = 0; i + 1 < crossings.Count; i += 2)
        {
            Mark(crossings[i].Column, crossings[i].Height, crossings[i + 1].Height);
        }
    }

    /// <summary>Where the chords pass the middles of the columns, column by column upward; an even number in each.</summary>
    private List<Crossing> CrossingsOf(ReadOnlySpan<Chord> chords)
    {
        var crossings = new List<Crossing>();
        foreach (var chord in chords)
        {
            var (low, high) = (Math.Min(chord.Start.X, chord.End.X), Math.Max(chord.Start.X, chord.End.X));
            for (var column = ColumnOf(low); column < _columns && MiddleOf(column) is var middle && middle < high; column++)
            {
                if (middle >= low)
                {
                    var fraction = (middle - chord.Start.X) / (chord.End.X - chord.Start.X);
                    crossings.Add(new(column, chord.Start.Y + ((chord.End.Y - chord.Start.Y) * fraction)));
                }
            }
        }

        crossings.Sort(Crossing.Compare);
        return crossings;
    }

    private double MiddleOf(int column) => (column - _border + 0.5) * _cell;

    private int ColumnOf(double x) => Math.Max(0, _border + (int)Math.Floor(x / _cell));

    private void Mark(int column, double low, double high)
    {
        var (first, last) = (Math.Max(0, First(low)), Math.Min(_rows - 1, Last(high)));
        if (first <= last)
        {
            BitRows.Set(_bits.AsSpan(column * _words, _words), first, last + 1);
        }
    }

    // Clamped, since a chord may reach nowhere in a column by rounding: its highest point is then minus infinity.
    private int First(double at) => _border + (int)Math.Floor(Math.Clamp((at + Slack) / _cell, -1e6, 1e6));

    private int Last(double at) => _border + (int)Math.Ceiling(Math.Clamp((at - Slack) / _cell, -1e6, 1e6)) - 1;

    private ShapeCells ToCells()
    {
        var columns = new CellRun[_columns][];
        var runs = new List<CellRun>();
        for (var column = 0; column < _columns; column++)
        {
            runs.Clear();
            var bits = _bits.AsSpan(column * _words, _words);
            for (var from = BitRows.Next(bits, 0, true); from < _rows; from = BitRows.Next(bits, from, true))
            {
                var to = Math.Min(_rows, BitRows.Next(bits, from, false));
                runs.Add(new(from - _border, to - _border));
                from = to;
            }

            columns[column] = [.. runs];
        }

        return new(-_border, columns);
    }
}

/// <summary>A place where a contour passes the middle of a column.</summary>
internal readonly record struct Crossing(int Column, double Height)
{
    /// <summary>By columns, in each upward.</summary>
    public static int Compare(Crossing a, Crossing b) => a.Column != b.Column ? a.Column.CompareTo(b.Column) : a.Height.CompareTo(b.Height);
}
