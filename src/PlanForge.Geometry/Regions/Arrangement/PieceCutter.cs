namespace PlanForge.Geometry.Regions;

/// <summary>Cuts contours into <see cref="Piece"/>s: lines stay whole, arcs are cut where they run along an axis.</summary>
internal sealed class PieceCutter
{
    private PieceCutter(double snap) => Snap = snap;

    /// <summary>The distance under which places count as one, mm.</summary>
    public double Snap { get; }

    /// <summary>All points: the contours' vertices first, then the cuts.</summary>
    public List<Point2> Points { get; } = [];

    /// <summary>The contours' segments in order of travel.</summary>
    public List<Segment2> Sources { get; } = [];

    /// <summary>What carries each source.</summary>
    public List<Carrier> Carriers { get; } = [];

    /// <summary>The pieces in order of travel, source by source.</summary>
    public List<Piece> Pieces { get; } = [];

    /// <summary>Takes both sets of contours apart.</summary>
    /// <exception cref="ArgumentException">A contour is open or not finite.</exception>
    public static PieceCutter Cut(IEnumerable<Path2> first, IEnumerable<Path2> second, double snap)
    {
        var cutter = new PieceCutter(snap);
        List<Path2> contours = [.. first];
        var firstCount = contours.Count;
        contours.AddRange(second);
        foreach (var contour in contours)
        {
            cutter.AddVertices(contour);
        }

        var firstPoint = 0;
        for (var i = 0; i < contours.Count; i++)
        {
            cutter.AddPieces(contours[i], firstPoint, i < firstCount);
            firstPoint += contours[i].Vertices.Length;
        }

        return cutter;
    }

    private void AddVertices(Path2 contour)
    {
        if (!contour.IsClosed)
        {
            throw new ArgumentException("A region is bounded by closed contours; one of them is open.", nameof(contour));
        }

        foreach (var vertex in contour.Vertices)
        {
            if (!double.IsFinite(vertex.Point.X) || !double.IsFinite(vertex.Point.Y) || !double.IsFinite(vertex.Bulge))
            {
                throw new ArgumentException("A contour's coordinates and bulges must be finite numbers.", nameof(contour));
            }

            Points.Add(vertex.Point);
        }
    }

    private void AddPieces(Path2 contour, int firstPoint, bool isFirstSet)
    {
        for (var i = 0; i < contour.SegmentCount; i++)
        {
            var segment = contour.SegmentAt(i);
            if (segment.Start == segment.End)
            {
                continue;
            }

            Sources.Add(segment);
            Carriers.Add(Carrier.Of(segment));
            var (start, end) = (firstPoint + i, firstPoint + ((i + 1) % contour.Vertices.Length));
            if (!segment.IsLine)
            {
                start = AddArcPieces(segment, start, isFirstSet);
            }

            AddPiece(start, end, isFirstSet);
        }
    }

    // Adds all pieces of an arc but the last, and returns where that one starts.
    private int AddArcPieces(in Segment2 arc, int start, bool isFirstSet)
    {
        const double Quarter = Math.PI / 2;
        var (sweep, length) = (arc.Sweep, arc.Length);
        var first = (arc.End - arc.Start).Angle - (sweep / 2);
        var step = sweep > 0 ? Quarter : -Quarter;
        var next = sweep > 0 ? Math.Ceiling(first / Quarter) * Quarter : Math.Floor(first / Quarter) * Quarter;
        for (; Math.Abs(next - first) < Math.Abs(sweep); next += step)
        {
            var fraction = (next - first) / sweep;

            // A cut nearer to the arc's end would be snapped to it. The piece overshoots its bounds by less than the square
            // of that over its diameter, which is nothing.
            if (Math.Min(fraction, 1 - fraction) * length > 2 * Snap)
            {
                Points.Add(arc.PointAt(fraction));
                AddPiece(start, Points.Count - 1, isFirstSet);
                start = Points.Count - 1;
            }
        }

        return start;
    }

    private void AddPiece(int start, int end, bool isFirstSet) =>
        Pieces.Add(new(Sources.Count - 1, isFirstSet, start, end, Bounds2.Around(Points[start], Points[end])));
}
