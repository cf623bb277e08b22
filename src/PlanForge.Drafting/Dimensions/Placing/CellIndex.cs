using PlanForge.Geometry;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>Finds what lies near a place without looking at everything: numbers of things by the square cells they touch.</summary>
/// <remarks>What lies outside the area counts as lying in its outermost cells, for putting in and for finding alike.</remarks>
internal sealed class CellIndex
{
    // A cell holds a short word. Larger cells hold more things to look at, smaller ones make long lines costly.
    private const double Cell = 8;
    private const int MostCells = 120;

    private readonly Bounds2 _area;
    private readonly double _cell;
    private readonly int _columns;
    private readonly List<int>?[] _cells;

    public CellIndex(Bounds2 area)
    {
        _area = area;
        _cell = Math.Max(Cell, Math.Max(area.Width, area.Height) / MostCells);
        _columns = (int)(area.Width / _cell) + 1;
        _cells = new List<int>[_columns * ((int)(area.Height / _cell) + 1)];
    }

    /// <summary>Puts a thing into all cells that a rectangle touches; one that was put there just before is not put twice.</summary>
    public void Put(int number, Bounds2 box)
    {
        var (first, last, low, high) = Range(box);
        for (var row = low; row <= high; row++)
        {
            for (var column = first; column <= last; column++)
            {
                var things = _cells[(row * _columns) + column] ??= [];
                if (things.Count == 0 || things[^1] != number)
                {
                    things.Add(number);
                }
            }
        }
    }

    /// <summary>Puts a straight line into the cells along it.</summary>
    public void Put(int number, Point2 start, Point2 end)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(start.DistanceTo(end) / _cell));
        for (var i = 0; i < pieces; i++)
        {
            Put(number, Bounds2.Around(start.Towards(end, (double)i / pieces), start.Towards(end, (i + 1.0) / pieces)));
        }
    }

    /// <summary>The cells that a rectangle touches, each with the numbers in it.</summary>
    public IEnumerable<List<int>> Near(Bounds2 box)
    {
        var (first, last, low, high) = Range(box);
        for (var row = low; row <= high; row++)
        {
            for (var column = first; column <= last; column++)
            {
                if (_cells[(row * _columns) + column] is { } things)
                {
                    yield return things;
                }
            }
        }
    }

    private (int First, int Last, int Low, int High) Range(Bounds2 box) => (
        Index(box.MinX - _area.MinX, _columns),
        Index(box.MaxX - _area.MinX, _columns),
        Index(box.MinY - _area.MinY, _cells.Length / _columns),
        Index(box.MaxY - _area.MinY, _cells.Length / _columns));

    private int Index(double along, int count) => (int)Math.Clamp(along / _cell, 0, count - 1);
}
