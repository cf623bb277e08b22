namespace PlanForge.Geometry.Regions;

/// <summary>Points within the snap distance of each other made one vertex.</summary>
internal sealed class VertexTable
{
    // The abscissa by which each vertex was entered, ascending; the vertex itself lies within the snap distance of it.
    private readonly List<double> _entries = [];
    private readonly List<int> _leaders = [];
    private readonly int[] _vertexOfPoint;
    private readonly double _snap;

    private VertexTable(int pointCount, double snap) => (_vertexOfPoint, _snap) = (new int[pointCount], snap);

    /// <summary>Where each vertex lies: at the first of its points, so that given vertices stay where they were given.</summary>
    public Point2[] Positions { get; private set; } = [];

    /// <summary>Gathers points.</summary>
    public static VertexTable Of(List<Point2> points, double snap)
    {
        var table = new VertexTable(points.Count, snap);
        var abscissas = new double[points.Count];
        for (var i = 0; i < abscissas.Length; i++)
        {
            abscissas[i] = points[i].X;
        }

        var entered = new List<Point2>(points.Count);
        foreach (var point in Ascending.Order(abscissas))
        {
            table.Enter(points, point, entered);
        }

        table.Positions = new Point2[table._leaders.Count];
        for (var vertex = 0; vertex < table.Positions.Length; vertex++)
        {
            table.Positions[vertex] = points[table._leaders[vertex]];
        }

        return table;
    }

    /// <summary>The vertex a point became.</summary>
    public int VertexOf(int point) => _vertexOfPoint[point];

    /// <summary>The first vertex that may lie at or right of an abscissa; those after it follow from left to right.</summary>
    public int FirstFrom(double x)
    {
        var (low, high) = (0, _entries.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_entries[middle] < x - (2 * _snap))
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    /// <summary>True when a vertex, and so every later one, lies right of an abscissa.</summary>
    public bool IsBeyond(int vertex, double x) => _entries[vertex] > x + (2 * _snap);

    private void Enter(List<Point2> points, int point, List<Point2> entered)
    {
        var position = points[point];
        for (var vertex = entered.Count - 1; vertex >= 0 && entered[vertex].X >= position.X - _snap; vertex--)
        {
            if (entered[vertex].DistanceTo(position) <= _snap)
            {
                _vertexOfPoint[point] = vertex;
                _leaders[vertex] = Math.Min(_leaders[vertex], point);
                return;
            }
        }

        _vertexOfPoint[point] = entered.Count;
        _leaders.Add(point);
        _entries.Add(position.X);
        entered.Add(position);
    }
}
