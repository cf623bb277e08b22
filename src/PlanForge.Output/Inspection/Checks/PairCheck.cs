using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Compares segments that lie near each other: stretches drawn twice, crossings, and what is too narrow between two cuts.</summary>
internal sealed class PairCheck
{
    // Lines pass each other within this and touch, mm.
    private const double Touch = 0.001;

    // Two lines share a stretch when it is longer than this, mm; shorter ones come of ends that meet at a flat angle.
    private const double ShortestOverlap = 0.1;

    // A scored line that ends at the edge may run along with it so far, mm.
    private const double ShortestScored = 0.5;

    // Crossings that near to each other along a contour are the rounding of a corner, mm.
    private const double Corner = 0.05;

    // What two neighbours that go on smoothly may be apart before their meeting again is a crossing, mm.
    private const double Smooth = 0.005;

    // Pairs that are compared, and how many more for each segment; a drawing has a dozen, what needs more is a heap of lines.
    private const int MostPairs = 1_000_000;
    private const int MostPairsEach = 20;

    private readonly List<Contour> _contours;
    private readonly List<(int Contour, int Index)> _pieces = [];
    private readonly double _narrow;
    private readonly PairFindings _found;

    private PairCheck(List<Contour> contours, double narrow, PairFindings found) => (_contours, _narrow, _found) = (contours, narrow, found);

    /// <param name="contours">All contours.</param>
    /// <param name="smallHoles">Those that are blamed for their size already.</param>
    /// <param name="narrow">Cut edges nearer to each other than this are too near, mm.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Run(List<Contour> contours, HashSet<Contour> smallHoles, double narrow, FindingList findings)
    {
        var found = new PairFindings(contours, narrow);
        new PairCheck(contours, narrow, found).Run(findings);
        found.Report(smallHoles, findings);
    }

    private void Run(FindingList findings)
    {
        var boxes = new List<Bounds2>();
        var cuts = new List<int>();
        for (var c = 0; c < _contours.Count; c++)
        {
            for (var i = 0; i < _contours[c].Segments.Count; i++)
            {
                if (!_contours[c].Segments[i].IsBridge)
                {
                    if (_contours[c].Layer.IsCut)
                    {
                        cuts.Add(_pieces.Count);
                    }

                    _pieces.Add((c, i));
                    boxes.Add(_contours[c].Segments[i].Segment.Bounds);
                }
            }
        }

        // What is not cut is compared with what is cut alone: letters are most of the segments.
        var all = new BoxTree([.. boxes]);
        var cut = new BoxTree([.. cuts.Select(number => boxes[number])]);
        var (pairs, most) = (0, MostPairs + (MostPairsEach * boxes.Count));
        for (var i = 0; i < boxes.Count && pairs < most; i++)
        {
            var number = i;
            if (_contours[_pieces[i].Contour].Layer.IsCut)
            {
                all.Find(boxes[i].Grown(_narrow), other => IsFurther(number, other));
            }
            else
            {
                cut.Find(boxes[i].Grown(EndNodes.Tolerance), other => IsFurther(number, cuts[other]));
            }
        }

        if (pairs >= most)
        {
            findings.Warning(FindingCode.TooLarge, TextPlace.WholeFile, "too many lines lie on a heap to compare each with each; crossings and doubles may be missing here");
        }

        bool IsFurther(int number, int other)
        {
            if (other > number)
            {
                Compare(_pieces[number], _pieces[other], boxes[number].Grown(EndNodes.Tolerance).Touches(boxes[other]));
            }

            return ++pairs < most;
        }
    }

    private void Compare((int Contour, int Index) first, (int Contour, int Index) second, bool mayTouch)
    {
        var (c, d) = (_contours[first.Contour], _contours[second.Contour]);
        var (a, b) = (c.Segments[first.Index], d.Segments[second.Index]);
        var isCut = c.Layer.IsCut && d.Layer.IsCut;
        if ((!c.Layer.IsCut && !d.Layer.IsCut) || (a.IsChord && b.IsChord && first.Contour == second.Contour && AreNeighbours(c, a, b)))
        {
            return;
        }

        if (mayTouch)
        {
            if (SegmentPair.Overlap(a.Segment, b.Segment, EndNodes.Tolerance) is var (from, to)
                && (to - from) * a.Segment.Length > (isCut ? ShortestOverlap : ShortestScored))
            {
                _found.AddOverlap(first.Contour, second.Contour, a, b, a.Segment.PointAt(from), (to - from) * a.Segment.Length);
                return;
            }

            if (isCut && Cross(first.Contour, second.Contour, a, b))
            {
                return;
            }
        }

        if (isCut)
        {
            NarrowPlace.Find(c, first.Index, d, second.Index, _narrow, (at, width) => _found.AddNarrow(first.Contour, second.Contour, a, b, at, width));
        }
    }

    private bool Cross(int first, int second, in ContourSegment a, in ContourSegment b)
    {
        var isCrossed = false;
        foreach (var point in SegmentPair.SharedPoints(a.Segment, b.Segment, Touch))
        {
            var (ends, others) = (EndsAt(_contours[first], point), EndsAt(_contours[second], point));
            if (first == second ? ends == 2 || IsCorner(_contours[first], a, b, point) : ends > 0 && others > 0)
            {
                continue;
            }

            isCrossed = true;
            _found.AddCrossing(first, second, a, b, point);
        }

        return isCrossed;
    }

    // Where open contours end together more lines meet than two, which is said already.
    private static int EndsAt(Contour contour, Point2 point) => contour.IsClosed
        ? 0
        : (IsSame(contour.Segments[0].Segment.Start, point) ? 1 : 0) + (IsSame(contour.Segments[^1].Segment.End, point) ? 1 : 0);

    private static bool IsSame(Point2 a, Point2 b) => a.DistanceTo(b) <= 2 * EndNodes.Tolerance;

    private static bool IsCorner(Contour contour, in ContourSegment a, in ContourSegment b, Point2 point)
    {
        var (onA, onB) = (a.Segment.NearestFraction(point), b.Segment.NearestFraction(point));
        if (contour.Apart(a.From + (onA * a.Segment.Length), b.From + (onB * b.Segment.Length)) < Corner)
        {
            return true;
        }

        if (!AreNeighbours(contour, a, b))
        {
            return false;
        }

        // Between a joint and a place where the neighbours meet again they have to part.
        var isAfter = a.Segment.End.DistanceTo(b.Segment.Start) <= EndNodes.Tolerance;
        return b.Segment.DistanceTo(a.Segment.PointAt((onA + (isAfter ? 1 : 0)) / 2)) <= Smooth;
    }

    private static bool AreNeighbours(Contour contour, in ContourSegment a, in ContourSegment b) =>
        contour.Apart(a.From + a.Segment.Length, b.From) < EndNodes.Tolerance || contour.Apart(b.From + b.Segment.Length, a.From) < EndNodes.Tolerance;
}
