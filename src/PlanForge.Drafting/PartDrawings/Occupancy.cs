using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.PartDrawings;

/// <summary>Which places of a drawing are taken, on a grid of square cells: finds room for a text among lines.</summary>
internal sealed class Occupancy
{
    // Cells much larger than a letter would see no room between lines; much smaller ones only cost time.
    private const double LeastCell = 1.5;

    // The longest side is never cut into more cells, so that a long part costs no more than a large former.
    private const int MostCells = 300;

    // Free cells left and right of what is placed: with one, two texts beside each other would read as one.
    private const int SideCells = 2;

    private static readonly Bounds2 Everywhere = new(double.NegativeInfinity, double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity);

    private readonly Bounds2 _area;
    private readonly double _cell;
    private readonly int _columns;
    private readonly int _rows;

    // Entry (row, column) counts the taken cells below and left of it; rebuilt when something was marked.
    private readonly int[] _counts;
    private readonly bool[] _taken;
    private bool _isCounted;

    public Occupancy(Bounds2 area)
    {
        _area = area;
        _cell = Math.Max(LeastCell, Math.Max(area.Width, area.Height) / MostCells);
        _columns = Math.Max(1, (int)Math.Ceiling(area.Width / _cell));
        _rows = Math.Max(1, (int)Math.Ceiling(area.Height / _cell));
        _taken = new bool[_columns * _rows];
        _counts = new int[(_columns + 1) * (_rows + 1)];
    }

    /// <summary>Takes the cells along a stroke, or those of the room that a text or a fill takes.</summary>
    public void Mark(DrawingItem item)
    {
        if (item is DrawingItem.Stroke stroke)
        {
            Mark(stroke.Path);
        }
        else
        {
            Mark(ItemExtents.Of(item));
        }
    }

    /// <summary>Takes the cells along a path.</summary>
    public void Mark(Path2 path)
    {
        var points = path.Flattened(_cell / 8);
        for (var i = 0; i < points.Length - (path.IsClosed ? 0 : 1); i++)
        {
            var (start, end) = (points[i], points[(i + 1) % points.Length]);
            var steps = Math.Max(1, (int)Math.Ceiling(start.DistanceTo(end) / (_cell / 4)));
            for (var step = 0; step <= steps; step++)
            {
                Mark(start.Towards(end, (double)step / steps));
            }
        }

        _isCounted = false;
    }

    /// <summary>Takes the cells of a rectangle.</summary>
    public void Mark(Bounds2 box)
    {
        for (var row = Row(box.MinY); row <= Row(box.MaxY); row++)
        {
            for (var column = Column(box.MinX); column <= Column(box.MaxX); column++)
            {
                _taken[(row * _columns) + column] = true;
            }
        }

        _isCounted = false;
    }

    /// <summary>
    /// The lower left corner of a free upright rectangle with at least one free cell around it, its middle as near as can be
    /// to a wanted place; null when there is none.
    /// </summary>
    /// <param name="width">Its width, mm.</param>
    /// <param name="height">Its height, mm.</param>
    /// <param name="wanted">Where its middle should lie.</param>
    /// <param name="isAccepted">What else must hold for its middle.</param>
    /// <param name="within">Where alone the middle may be accepted; null for anywhere. Known, it saves most of the search.</param>
    public Point2? Find(double width, double height, Point2 wanted, Func<Point2, bool> isAccepted, Bounds2? within = null)
    {
        var columns = (int)Math.Ceiling(width / _cell) + (2 * SideCells);
        var rows = (int)Math.Ceiling(height / _cell) + 2;
        var (lastRow, lastColumn) = (_rows - rows, _columns - columns);
        if (lastRow < 0 || lastColumn < 0)
        {
            return null;
        }

        Count();
        var limits = within ?? Everywhere;
        Point2? best = null;
        var least = double.PositiveInfinity;
        var firstRow = Math.Clamp(Row(wanted.Y) - (rows / 2), 0, lastRow);
        var firstColumn = Math.Clamp(Column(wanted.X) - (columns / 2), 0, lastColumn);

        // Outward from the wanted place, so that little is tried once something is found.
        for (var i = 0; i <= 2 * Math.Max(firstRow, lastRow - firstRow); i++)
        {
            var row = Outward(firstRow, i);
            var y = _area.MinY + ((row + (rows / 2.0)) * _cell);
            if (row < 0 || row > lastRow || (y - wanted.Y) * (y - wanted.Y) >= least || y < limits.MinY || y > limits.MaxY)
            {
                continue;
            }

            for (var j = 0; j <= 2 * Math.Max(firstColumn, lastColumn - firstColumn); j++)
            {
                var column = Outward(firstColumn, j);
                var middle = new Point2(_area.MinX + ((column + (columns / 2.0)) * _cell), y);
                var distance = (middle - wanted).LengthSquared;
                if (distance < least && column >= 0 && column <= lastColumn && middle.X >= limits.MinX && middle.X <= limits.MaxX
                    && TakenIn(row, column, rows, columns) == 0 && isAccepted(middle))
                {
                    least = distance;
                    best = middle - new Vector2(width / 2, height / 2);
                }
            }
        }

        return best;
    }

    /// <summary>The terms of start, start + 1, start − 1, start + 2, ...</summary>
    private static int Outward(int start, int index) => index % 2 == 0 ? start - (index / 2) : start + ((index + 1) / 2);

    private int TakenIn(int row, int column, int rows, int columns)
    {
        var stride = _columns + 1;
        return _counts[((row + rows) * stride) + column + columns] - _counts[(row * stride) + column + columns]
            - _counts[((row + rows) * stride) + column] + _counts[(row * stride) + column];
    }

    private void Count()
    {
        if (_isCounted)
        {
            return;
        }

        var stride = _columns + 1;
        for (var row = 0; row < _rows; row++)
        {
            var inRow = 0;
            for (var column = 0; column < _columns; column++)
            {
                inRow += _taken[(row * _columns) + column] ? 1 : 0;
                _counts[((row + 1) * stride) + column + 1] = _counts[(row * stride) + column + 1] + inRow;
            }
        }

        _isCounted = true;
    }

    private void Mark(Point2 point)
    {
        if (_area.Contains(point))
        {
            _taken[(Row(point.Y) * _columns) + Column(point.X)] = true;
        }
    }

    private int Row(double y) => Math.Clamp((int)((y - _area.MinY) / _cell), 0, _rows - 1);

    private int Column(double x) => Math.Clamp((int)((x - _area.MinX) / _cell), 0, _columns - 1);
}
