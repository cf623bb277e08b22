using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>
/// Puts dimension lines in rows beside the part: the first a standard distance off the outline, further ones a standard
/// pitch apart, shorter dimensions inside longer ones so that few lines cross.
/// </summary>
internal sealed class DimensionRows
{
    // Common practice, no source: 10 mm off the outline, 7 mm from row to row; more for large lettering.
    private const double FirstRow = 10;
    private const double Pitch = 7;
    private const double FirstRowInHeights = 3.4;
    private const double PitchInHeights = 2.3;

    // Directions and sides nearer than this (radians) share rows.
    private const double SameDirection = 1e-6;

    // Two dimensions in a row may share an end (a chain) but no more than this, mm.
    private const double Shared = 1e-6;

    private readonly List<Point2> _outline;
    private readonly double _height;
    private readonly List<Side> _sides = [];

    /// <summary>Begins without rows.</summary>
    /// <param name="outline">Points around all lines of the part that dimensions must stand off from.</param>
    /// <param name="height">Height of lettering, mm.</param>
    public DimensionRows(List<Point2> outline, double height) => (_outline, _height) = (outline, height);

    /// <summary>Puts all dimensions in rows; the result has their order.</summary>
    public DimensionLine[] Place(IReadOnlyList<(PartDimension.Linear Dimension, TextInk Ink)> dimensions)
    {
        var placed = new DimensionLine[dimensions.Count];
        var order = new int[dimensions.Count];
        var lengths = new double[dimensions.Count];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
            lengths[i] = DimensionLine.LengthOf(dimensions[i].Dimension);
        }

        Array.Sort(order, (a, b) => lengths[a] != lengths[b] ? lengths[a].CompareTo(lengths[b]) : a.CompareTo(b));
        foreach (var i in order)
        {
            placed[i] = Place(dimensions[i].Dimension, dimensions[i].Ink);
        }

        return placed;
    }

    private DimensionLine Place(PartDimension.Linear dimension, TextInk ink)
    {
        var outward = dimension.Direction.Unit().Left * (dimension.Offset < 0 ? -1 : 1);
        var side = SideFacing(outward);

        // Where on the side the line lies does not change what it takes of a row.
        var taken = TakenBy(new(dimension, 0, ink), side);
        var row = side.FirstFree(taken.From, taken.To);
        var first = Math.Max(FirstRow, FirstRowInHeights * _height);
        var distance = side.Edge + first + (row * Math.Max(Pitch, PitchInHeights * _height)) - (dimension.From - Point2.Origin).Dot(outward);
        return new(dimension, dimension.Offset < 0 ? -distance : distance, ink);
    }

    private static (double From, double To) TakenBy(DimensionLine line, Side side)
    {
        var start = (line.First - Point2.Origin).Dot(side.Along);
        var (from, to) = line.Taken;
        return line.Reading.Dot(side.Along) > 0 ? (start + from, start + to) : (start - to, start - from);
    }

    private Side SideFacing(Vector2 outward)
    {
        foreach (var side in _sides)
        {
            if ((side.Outward - outward).Length < SameDirection)
            {
                return side;
            }
        }

        var edge = _outline.Count > 0 ? double.NegativeInfinity : 0;
        foreach (var point in _outline)
        {
            edge = Math.Max(edge, (point - Point2.Origin).Dot(outward));
        }

        var added = new Side(outward, edge);
        _sides.Add(added);
        return added;
    }

    /// <summary>One side of the part: what each of its rows holds already.</summary>
    private sealed class Side(Vector2 outward, double edge)
    {
        private readonly List<List<(double From, double To)>> _rows = [];

        public Vector2 Outward { get; } = outward;

        public Vector2 Along { get; } = outward.Left;

        public double Edge { get; } = edge;

        public int FirstFree(double from, double to)
        {
            var row = 0;
            while (row < _rows.Count && _rows[row].Exists(other => from < other.To - Shared && to > other.From + Shared))
            {
                row++;
            }

            if (row == _rows.Count)
            {
                _rows.Add([]);
            }

            _rows[row].Add((from, to));
            return row;
        }
    }
}
