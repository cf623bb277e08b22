using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Gathers what pairs of segments have to do with each other, to say it once for each two contours.</summary>
/// <param name="contours">The contours.</param>
/// <param name="narrow">Cut edges nearer to each other than this are too near, mm.</param>
internal sealed class PairFindings(List<Contour> contours, double narrow)
{
    // Crossings of two contours that are told apart, and how far apart they have to be, mm.
    private const int MostCrossings = 50;
    private const double SamePlace = 0.02;

    private readonly Dictionary<(int, int), (TextPlace At, int OtherLine, Point2 Place, double Length)> _overlaps = [];
    private readonly Dictionary<(int, int), (TextPlace At, int OtherLine, List<Point2> Places)> _crossings = [];
    private readonly Dictionary<(int, int), (TextPlace At, int OtherLine, Point2 Place, double Width)> _narrows = [];

    public void AddOverlap(int first, int second, in ContourSegment a, in ContourSegment b, Point2 place, double length)
    {
        var key = Key(first, second);
        var (earlier, later) = InOrder(a.At, b.At);
        var (known, sum) = _overlaps.TryGetValue(key, out var found) ? (found, found.Length + length) : ((later, earlier.Line, place, 0), length);
        _overlaps[key] = InOrder(later, known.At).Earlier == later ? (later, earlier.Line, place, sum) : known with { Length = sum };
    }

    public void AddCrossing(int first, int second, in ContourSegment a, in ContourSegment b, Point2 place)
    {
        var key = Key(first, second);
        var (earlier, later) = InOrder(a.At, b.At);
        if (!_crossings.TryGetValue(key, out var known))
        {
            _crossings.Add(key, known = (later, earlier.Line, []));
        }

        // The place that comes first in the file is the one to be told.
        var isFirst = later != known.At && InOrder(later, known.At).Earlier == later;
        if (known.Places.Exists(other => other.DistanceTo(place) <= SamePlace))
        {
            return;
        }

        if (isFirst)
        {
            _crossings[key] = (later, earlier.Line, known.Places);
        }

        if (known.Places.Count < MostCrossings)
        {
            known.Places.Insert(isFirst ? 0 : known.Places.Count, place);
        }
    }

    public void AddNarrow(int first, int second, in ContourSegment a, in ContourSegment b, Point2 place, double width)
    {
        var key = Key(first, second);
        if (!_narrows.TryGetValue(key, out var known) || width < known.Width)
        {
            var (earlier, later) = InOrder(a.At, b.At);
            _narrows[key] = (later, earlier.Line, place, width);
        }
    }

    /// <summary>Says all of it. Contours that run over each other are not blamed for crossing too, nor small holes for being narrow.</summary>
    public void Report(HashSet<Contour> smallHoles, FindingList findings)
    {
        foreach (var (key, (at, line, place, length)) in _overlaps)
        {
            var isCut = contours[key.Item1].Layer.IsCut && contours[key.Item2].Layer.IsCut;
            findings.Duplicate(isCut, at, line, place, length);
        }

        foreach (var (key, (at, line, places)) in _crossings)
        {
            if (_overlaps.ContainsKey(key))
            {
                continue;
            }

            var more = places.Count > 1 ? FormattableString.Invariant($" and {places.Count - 1} more") : "";
            if (key.Item1 == key.Item2)
            {
                findings.Fault(FindingCode.SelfCrossing, at, $"the contour crosses or touches itself at {Words.Of(places[0])}{more}; no inside is left there", places[0]);
            }
            else
            {
                findings.Fault(FindingCode.Crossing, at, FormattableString.Invariant($"crosses or touches the contour of line {line} at {Words.Of(places[0])}{more}; parts would be cut into"), places[0]);
            }
        }

        foreach (var (key, (at, line, place, width)) in _narrows)
        {
            if (!_overlaps.ContainsKey(key) && !(key.Item1 == key.Item2 && smallHoles.Contains(contours[key.Item1])))
            {
                findings.Warning(FindingCode.Narrow, at, FormattableString.Invariant($"only {Words.Of(width)} is left to the cut of line {line} at {Words.Of(place)}; less than {Words.Of(narrow)} burns or breaks"), place);
            }
        }
    }

    private static (int, int) Key(int first, int second) => (Math.Min(first, second), Math.Max(first, second));

    private static (TextPlace Earlier, TextPlace Later) InOrder(TextPlace a, TextPlace b) =>
        b.IsBefore(a) ? (b, a) : (a, b);
}
