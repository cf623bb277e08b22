using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Numbers places, so that ends which count as meeting have the same number.</summary>
internal sealed class EndNodes
{
    /// <summary>Ends no farther apart than this meet, mm: less than any machine resolves, more than files of three decimals lose.</summary>
    public const double Tolerance = 0.01;

    private readonly Dictionary<(long, long), int> _first = [];
    private readonly List<(Point2 Point, int Next)> _nodes = [];

    /// <summary>How many places there are.</summary>
    public int Count => _nodes.Count;

    /// <summary>The number of a place.</summary>
    public int Of(Point2 point)
    {
        var (x, y) = ((long)Math.Floor(point.X / Tolerance), (long)Math.Floor(point.Y / Tolerance));
        for (var i = x - 1; i <= x + 1; i++)
        {
            for (var j = y - 1; j <= y + 1; j++)
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

        _nodes.Add((point, _first.GetValueOrDefault((x, y), -1)));
        return _first[(x, y)] = _nodes.Count - 1;
    }
}
