namespace PlanForge.Geometry.Regions;

/// <summary>A place where a piece has to be split.</summary>
/// <param name="Piece">Index of the piece.</param>
/// <param name="Point">Index of the point among all points.</param>
internal readonly record struct Split(int Piece, int Point);

/// <summary>Finds all crossings and touches between pieces.</summary>
internal static class CrossingSweep
{
    // A crossing must satisfy both carriers to within this many snap distances. Only carriers that nearly coincide yield
    // worse; those are split at each other's ends instead. Too small loses real touches, too large admits points off the pieces.
    private const double GreatestMiss = 2;

    /// <summary>The splits of all pieces; crossings are added to the cutter's points.</summary>
    public static List<Split> Find(PieceCutter cutter)
    {
        var splits = new List<Split>();
        var pieces = cutter.Pieces;
        var lows = new double[pieces.Count];
        for (var i = 0; i < lows.Length; i++)
        {
            lows[i] = pieces[i].Bounds.MinX;
        }

        // From left to right, each piece meets only those that begin before it ends.
        var order = Ascending.Order(lows);
        for (var i = 0; i < order.Length; i++)
        {
            var bounds = pieces[order[i]].Bounds.Grown(cutter.Snap);
            for (var j = i + 1; j < order.Length && lows[j] <= bounds.MaxX; j++)
            {
                if (bounds.Touches(pieces[order[j]].Bounds))
                {
                    Meet(cutter, Math.Min(order[i], order[j]), Math.Max(order[i], order[j]), splits);
                }
            }
        }

        return splits;
    }

    private static void Meet(PieceCutter cutter, int a, int b, List<Split> splits)
    {
        var (sourceA, sourceB) = (cutter.Pieces[a].Source, cutter.Pieces[b].Source);
        if (sourceA == sourceB)
        {
            return;
        }

        var count = Carrier.Meet(
            cutter.Carriers[sourceA], cutter.Carriers[sourceB], cutter.Snap, out var first, out var second);
        if (count > 0)
        {
            Add(cutter, a, b, first, splits);
        }

        if (count > 1)
        {
            Add(cutter, a, b, second, splits);
        }
    }

    private static void Add(PieceCutter cutter, int a, int b, Point2 crossing, List<Split> splits)
    {
        var (pieceA, pieceB) = (cutter.Pieces[a], cutter.Pieces[b]);
        if (!pieceA.Bounds.Grown(cutter.Snap).Contains(crossing)
            || !pieceB.Bounds.Grown(cutter.Snap).Contains(crossing)
            || Math.Abs(cutter.Carriers[pieceA.Source].Value(crossing)) > GreatestMiss * cutter.Snap
            || Math.Abs(cutter.Carriers[pieceB.Source].Value(crossing)) > GreatestMiss * cutter.Snap)
        {
            return;
        }

        var point = EndNear(cutter, pieceA, crossing) ?? EndNear(cutter, pieceB, crossing);
        if (point is null)
        {
            cutter.Points.Add(crossing);
            point = cutter.Points.Count - 1;
        }

        splits.Add(new(a, point.Value));
        splits.Add(new(b, point.Value));
    }

    private static int? EndNear(PieceCutter cutter, in Piece piece, Point2 crossing) =>
        crossing.DistanceTo(cutter.Points[piece.StartPoint]) <= cutter.Snap ? piece.StartPoint
        : crossing.DistanceTo(cutter.Points[piece.EndPoint]) <= cutter.Snap ? piece.EndPoint
        : null;
}
