using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Numbers places, so that ends which count as meeting have the same number.</summary>
internal sealed class EndNodes
{
    /// <summary>Ends no farther apart than this meet, mm: less than any machine resolves, more than files of three decimals lose.</summary>
    public const double Tolerance = 0.01;

    // Few places are near enough to the edge of such a cell to be looked for in its neighbours too, mm.
    private const double Cell = 32 * Tolerance;

    private readonly Dictionary<(long, long), int> _first = [];
    private readonly List<(Point2 Point, int Next)> _nodes = [];

    /// <summary>How many places there are.</summary>
    public int Count => _nodes.Count;

    /// <summary>The number of a place.</summary>
    public int Of(Point2 point)
    {
        var (left, right) = (CellOf(point.X - Tolerance), CellOf(point.X + Tolerance));
        var (bottom, top) = (CellOf(point.Y - Tolerance), CellOf(point.Y + Tolerance));
        for (var i = left; i <= right; i++)
        {
            for (var j = bottom; j <= top; j++)
            {
                for (var node = _first.GetValueOrDefault((i, j), -1); node >= 0; node = _nodes[node].Next)
                {
                    if (_nodes[node].Point.DistanceTo(point) <= Tolerance)
                    {
                        return node;
                    }
                }
            }
        }

        var own = (CellOf(point.X), CellOf(point.Y));
        _nodes.Add((point, _first.GetValueOrDefault(own, -1)));
        return _first[own] = _nodes.Count - 1;
    }

    private static long CellOf(double coordinate) => (long)Math.Floor(coordinate / Cell);
}
