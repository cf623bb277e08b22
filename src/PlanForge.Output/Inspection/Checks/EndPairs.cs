using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>An end of a contour that meets no other.</summary>
/// <param name="Slot">Its number: twice the segment's, one more for the segment's end.</param>
/// <param name="Segment">The segment, travelled so that this is its end.</param>
/// <param name="At">Where the segment stands in the file.</param>
internal readonly record struct LooseEnd(int Slot, Segment2 Segment, TextPlace At)
{
    public Point2 Point => Segment.End;
}

/// <summary>Two loose ends that belong together.</summary>
internal readonly record struct EndPair(LooseEnd A, LooseEnd B, double Width);

/// <summary>Pairs loose ends: those across a holding tab, and those that were meant to meet.</summary>
internal static class EndPairs
{
    /// <summary>Gaps that differ by less are equal, mm.</summary>
    public const double SameWidth = 0.03;

    private const double WidestGap = 0.5;
    private const double NarrowestTab = 0.3;
    private const double WidestTab = 3;

    // How far a line that goes on may miss the other end, mm: drawing is better, an arc goes on as its circle.
    private const double TabOffset = 0.02;

    // Cosine of the angle between the end and the gap: the chord of a gap of 3 mm in an arc of 6 mm radius still passes.
    private const double TabDirection = 0.95;

    // Ends that are looked at around one end; where more meet nothing can be paired.
    private const int MostNeighbours = 24;

    /// <summary>The pairs; each end is in one at most.</summary>
    public static (List<EndPair> Tabs, List<EndPair> Gaps) Find(List<LooseEnd> ends)
    {
        var pairs = Candidates(ends);
        pairs.Sort((a, b) => (a.Width, a.A.Slot, a.B.Slot).CompareTo((b.Width, b.A.Slot, b.B.Slot)));
        var taken = new HashSet<int>();
        var (likely, gaps) = (new List<EndPair>(), new List<EndPair>());
        foreach (var pair in pairs)
        {
            if (!taken.Contains(pair.A.Slot) && !taken.Contains(pair.B.Slot))
            {
                taken.Add(pair.A.Slot);
                taken.Add(pair.B.Slot);
                (IsTab(pair) ? likely : gaps).Add(pair);
            }
        }

        var tabs = new List<EndPair>();
        for (var first = 0; first < likely.Count;)
        {
            var next = first + 1;
            while (next < likely.Count && likely[next].Width - likely[first].Width <= SameWidth)
            {
                next++;
            }

            // One gap alone is more likely a slip than a tab.
            var isMeant = next - first > 1;
            for (; first < next; first++)
            {
                if (isMeant)
                {
                    tabs.Add(likely[first]);
                }
                else if (likely[first].Width < WidestGap)
                {
                    gaps.Add(likely[first]);
                }
            }
        }

        return (tabs, gaps);
    }

    private static List<EndPair> Candidates(List<LooseEnd> ends)
    {
        var boxes = new Bounds2[ends.Count];
        for (var i = 0; i < boxes.Length; i++)
        {
            boxes[i] = Bounds2.Around(ends[i].Point, ends[i].Point);
        }

        var tree = new BoxTree(boxes);
        var pairs = new List<EndPair>();
        for (var i = 0; i < boxes.Length; i++)
        {
            var (a, number, seen) = (ends[i], i, 0);
            tree.Find(boxes[i].Grown(WidestTab), other =>
            {
                var pair = new EndPair(a, ends[other], a.Point.DistanceTo(ends[other].Point));
                if (other > number && (pair.Width < WidestGap || IsTab(pair)))
                {
                    pairs.Add(pair);
                }

                return ++seen < MostNeighbours;
            });
        }

        return pairs;
    }

    private static bool IsTab(EndPair pair)
    {
        var (a, b, width) = pair;
        if (width is < NarrowestTab or > WidestTab)
        {
            return false;
        }

        var across = (b.Point - a.Point) / width;
        return a.Segment.DirectionAt(1).Dot(across) > TabDirection && -b.Segment.DirectionAt(1).Dot(across) > TabDirection
            && SegmentPair.IsOnCarrier(a.Segment, b.Point, TabOffset) && SegmentPair.IsOnCarrier(b.Segment, a.Point, TabOffset);
    }
}
