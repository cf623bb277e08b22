using PlanForge.Output.Inspection.Reading;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Finds lines and arcs of one layer with the same ends and the same middle.</summary>
/// <param name="layer">The layer.</param>
/// <param name="nodes">Numbers the ends.</param>
/// <param name="findings">Takes what is drawn twice.</param>
internal sealed class TwiceDrawn(FileLayer layer, EndNodes nodes, FindingList findings)
{
    // Shorter ones are not told apart from what lies beside them.
    private const double Shortest = 3 * EndNodes.Tolerance;

    // Arcs between the same two ends that are compared; a real drawing has two.
    private const int MostCompared = 16;

    private readonly Dictionary<(int, int), List<(FileSegment Piece, FileShape Shape)>> _known = [];
    private readonly Dictionary<(int, int), (FileSegment First, FileSegment Known, double Length)> _twice = [];
    private readonly List<(int, int)> _order = [];

    /// <summary>True when a segment was there before; otherwise it is known from now on.</summary>
    public bool IsKnown(FileSegment piece, FileShape shape)
    {
        if (piece.Segment.Length < Shortest)
        {
            return false;
        }

        var (a, b) = (nodes.Of(piece.Segment.Start), nodes.Of(piece.Segment.End));
        var key = (Math.Min(a, b), Math.Max(a, b));
        if (!_known.TryGetValue(key, out var known))
        {
            _known.Add(key, known = []);
        }

        var middle = piece.Segment.PointAt(0.5);
        foreach (var (other, otherShape) in known)
        {
            if (other.Segment.PointAt(0.5).DistanceTo(middle) <= EndNodes.Tolerance)
            {
                Count(piece, other, (shape.First, otherShape.First));
                return true;
            }
        }

        if (known.Count < MostCompared)
        {
            known.Add((piece, shape));
        }

        return false;
    }

    /// <summary>Says what was drawn twice, once for each two shapes.</summary>
    public void Report()
    {
        foreach (var key in _order)
        {
            var (piece, known, length) = _twice[key];
            findings.Duplicate(layer.IsCut, piece.At, known.At.Line, piece.Segment.Start, length);
        }
    }

    private void Count(FileSegment piece, FileSegment known, (int, int) key)
    {
        if (_twice.TryGetValue(key, out var found))
        {
            _twice[key] = found with { Length = found.Length + piece.Segment.Length };
        }
        else
        {
            _order.Add(key);
            _twice.Add(key, (piece, known, piece.Segment.Length));
        }
    }
}
