using PlanForge.Geometry;
using PlanForge.Output.Inspection.Reading;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>
/// Joins the lines of a layer end to end. What keeps them from being closed contours is said: lines without length, the same
/// line twice, ends that miss each other, ends where too many meet.
/// </summary>
/// <remarks>Every segment has two slots, its start and its end; a link says which slot follows which.</remarks>
internal sealed class ContourBuilder
{
    /// <summary>A line up to this long has no length, mm.</summary>
    public const double NoLength = 0.001;

    private const int Loose = -1;
    private const int Branched = -2;

    private readonly CutFile _file;
    private readonly FileLayer _layer;
    private readonly FindingList _findings;
    private readonly List<FileSegment> _segments = [];
    private readonly List<bool> _isBridge = [];
    private readonly List<int> _links = [];
    private readonly EndNodes _nodes = new();

    private ContourBuilder(CutFile file, FileLayer layer, FindingList findings) => (_file, _layer, _findings) = (file, layer, findings);

    /// <summary>The contours of a layer.</summary>
    public static void Build(CutFile file, FileLayer layer, IEnumerable<FileShape> shapes, List<Contour> contours, FindingList findings)
    {
        var builder = new ContourBuilder(file, layer, findings);
        var twice = new TwiceDrawn(layer, builder._nodes, findings);
        foreach (var shape in shapes)
        {
            builder.AddShape(shape, twice);
        }

        twice.Report();
        builder.LinkEnds();
        if (layer.IsCut)
        {
            builder.PairLooseEnds();
        }

        builder.Walk(contours);
    }

    private void AddShape(FileShape shape, TwiceDrawn twice)
    {
        var (first, last, isWhole) = (-1, -1, true);
        for (var i = shape.First; i < shape.First + shape.Count; i++)
        {
            var piece = _file.Segments[i];
            if (piece.Segment.Start == piece.Segment.End || piece.Segment.Length <= NoLength)
            {
                if (!piece.IsChord)
                {
                    _findings.Warning(FindingCode.ZeroLength, piece.At, $"a line without length at {Words.Of(piece.Segment.Start)}; take it out", piece.Segment.Start);
                }

                continue;
            }

            if (twice.IsKnown(piece, shape))
            {
                (last, isWhole) = (-1, false);
                continue;
            }

            var number = AddSegment(piece, isBridge: false);
            if (last >= 0)
            {
                Link((2 * last) + 1, 2 * number);
            }

            (first, last) = (first < 0 ? number : first, number);
        }

        if (shape.IsClosed && isWhole && first >= 0)
        {
            Link((2 * last) + 1, 2 * first);
        }
    }

    private int AddSegment(FileSegment piece, bool isBridge)
    {
        _segments.Add(piece);
        _isBridge.Add(isBridge);
        _links.Add(Loose);
        _links.Add(Loose);
        return _segments.Count - 1;
    }

    private void Link(int slot, int other) => (_links[slot], _links[other]) = (other, slot);

    private Point2 PointOf(int slot) => slot % 2 == 0 ? _segments[slot / 2].Segment.Start : _segments[slot / 2].Segment.End;

    private void LinkEnds()
    {
        var free = new Dictionary<int, (int First, int Second, int Count)>();
        var order = new List<int>();
        for (var slot = 0; slot < _links.Count; slot++)
        {
            if (_links[slot] != Loose)
            {
                continue;
            }

            var node = _nodes.Of(PointOf(slot));
            var (a, b, count) = free.GetValueOrDefault(node, (slot, slot, 0));
            if (count == 0)
            {
                order.Add(node);
            }

            if (count >= 2)
            {
                (_links[a], _links[b], _links[slot]) = (Branched, Branched, Branched);
            }

            free[node] = (a, count == 1 ? slot : b, count + 1);
        }

        foreach (var node in order)
        {
            var (a, b, count) = free[node];
            if (count == 2)
            {
                Link(a, b);
            }
            else if (count > 2 && _layer.IsCut)
            {
                var point = PointOf(a);
                _findings.Fault(FindingCode.Branch, _segments[a / 2].At, FormattableString.Invariant($"{count} lines end at {Words.Of(point)}; where a contour goes on is anybody's guess, draw each closed"), point);
            }
        }
    }

    private void PairLooseEnds()
    {
        var ends = new List<LooseEnd>();
        for (var slot = 0; slot < _links.Count; slot++)
        {
            if (_links[slot] == Loose)
            {
                var (segment, at, _) = _segments[slot / 2];
                ends.Add(new(slot, slot % 2 == 0 ? segment.Reversed() : segment, at));
            }
        }

        var (tabs, gaps) = EndPairs.Find(ends);
        HoldingTabs.Report(tabs, _layer, _findings);
        foreach (var gap in gaps)
        {
            var (a, b) = gap.A.Slot < gap.B.Slot ? (gap.A, gap.B) : (gap.B, gap.A);
            _findings.Fault(FindingCode.Gap, a.At, $"the ends {Words.Of(a.Point)} and {Words.Of(b.Point)} are {Words.Of(gap.Width)} apart; let them meet", a.Point);
            Bridge(gap);
        }

        foreach (var tab in tabs)
        {
            Bridge(tab);
        }
    }

    private void Bridge(EndPair pair)
    {
        var number = AddSegment(new(new(pair.A.Point, pair.B.Point, 0), pair.A.At), isBridge: true);
        Link(pair.A.Slot, 2 * number);
        Link((2 * number) + 1, pair.B.Slot);
    }

    private void Walk(List<Contour> contours)
    {
        var isUsed = new bool[_segments.Count];
        for (var slot = 0; slot < _links.Count; slot++)
        {
            if (_links[slot] < 0 && !isUsed[slot / 2])
            {
                contours.Add(Follow(slot, isUsed));
            }
        }

        for (var number = 0; number < _segments.Count; number++)
        {
            if (!isUsed[number])
            {
                contours.Add(Follow(2 * number, isUsed));
            }
        }
    }

    private Contour Follow(int slot, bool[] isUsed)
    {
        var start = slot;
        var (pieces, from, end) = (new List<ContourSegment>(), 0.0, slot);
        do
        {
            var (segment, at, isChord) = _segments[slot / 2];
            isUsed[slot / 2] = true;
            var travelled = slot % 2 == 0 ? segment : segment.Reversed();
            pieces.Add(new(travelled, at, isChord, _isBridge[slot / 2], from));
            from += travelled.Length;
            end = slot ^ 1;
            slot = _links[end];
        }
        while (slot >= 0 && !isUsed[slot / 2]);

        var contour = new Contour(_layer, pieces, isClosed: slot >= 0);
        if (slot < 0 && _layer.IsCut && (_links[start] == Loose || _links[end] == Loose))
        {
            ReportOpen(contour, _links[start] == Loose ? PointOf(start) : null, _links[end] == Loose ? PointOf(end) : null);
        }

        return contour;
    }

    private void ReportOpen(Contour contour, Point2? start, Point2? end)
    {
        var where = start is { } a && end is { } b
            ? $"ends at {Words.Of(a)} and {Words.Of(b)}, {Words.Of(a.DistanceTo(b))} apart"
            : $"ends at {Words.Of((start ?? end)!.Value)}";
        var text = $"this contour on layer {Words.Quote(_layer.Name)} {where}";
        if (_file.IsIncomplete)
        {
            _findings.Warning(FindingCode.OpenContour, contour.At, $"{text}, unless what could not be read closes it", start ?? end);
        }
        else
        {
            _findings.Fault(FindingCode.OpenContour, contour.At, $"{text}; close it, or put it on a layer that is scored", start ?? end);
        }
    }
}
