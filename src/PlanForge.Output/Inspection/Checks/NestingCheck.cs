using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Finds out which contour lies in which, and from that holes too small to cut and borders that would be cut.</summary>
internal sealed class NestingCheck
{
    // A place on a contour that drawings do not favour, so that no ray from it runs through corners.
    private const double OddFraction = 0.3719;

    // Part of its bounding rectangle that a rectangle fills at least.
    private const double Full = 0.9999;

    // How far a border may be off the edge of the sheet to be taken for it, mm.
    private const double AtEdge = 0.5;

    private readonly List<Contour> _contours;
    private readonly List<(int Contour, Segment2 Segment)> _pieces = [];
    private readonly BoxTree _tree;

    private NestingCheck(List<Contour> contours)
    {
        _contours = contours;
        var boxes = new List<Bounds2>();
        for (var c = 0; c < contours.Count; c++)
        {
            foreach (var piece in contours[c].Segments)
            {
                _pieces.Add((c, piece.Segment));
                boxes.Add(piece.Segment.Bounds);
            }
        }

        _tree = new([.. boxes]);
    }

    /// <param name="contours">The closed contours on cut layers.</param>
    /// <param name="options">Thickness and sheet.</param>
    /// <param name="findings">Takes what is found.</param>
    /// <returns>The holes that are too small.</returns>
    public static HashSet<Contour> Run(List<Contour> contours, InspectionOptions options, FindingList findings)
    {
        var small = new HashSet<Contour>();
        if (contours.Count == 0)
        {
            return small;
        }

        var check = new NestingCheck(contours);
        var depths = new int[contours.Count];
        for (var i = 0; i < depths.Length; i++)
        {
            depths[i] = check.DepthOf(i);
            if (options.Thickness is { } thickness && depths[i] % 2 == 1 && IsSmallHole(contours[i], thickness, findings))
            {
                small.Add(contours[i]);
            }
        }

        check.CheckFrame(depths, options.Sheet, findings);
        return small;
    }

    private static bool IsSmallHole(Contour hole, double thickness, FindingList findings)
    {
        var size = Math.Min(hole.Bounds.Width, hole.Bounds.Height);
        if (size >= thickness / 2)
        {
            return false;
        }

        findings.Warning(FindingCode.SmallHole, hole.At, $"this hole is {Words.Of(size)} wide, less than half the thickness; it closes or burns, drill it instead", hole.Bounds.Centre);
        return true;
    }

    // One contour around all others is a border when what lies in it has openings of its own, or when it is the sheet's edge.
    private void CheckFrame(int[] depths, SheetSize? sheet, FindingList findings)
    {
        var outermost = Array.IndexOf(depths, 0);
        if (outermost < 0 || depths.Length < 2 || Array.LastIndexOf(depths, 0) != outermost)
        {
            return;
        }

        var contour = _contours[outermost];
        var bounds = contour.Bounds;
        var isRectangle = contour.Segments.TrueForAll(piece => piece.Segment.IsLine) && contour.Area >= Full * bounds.Width * bounds.Height;
        var isSheet = sheet is var (width, height) && Math.Abs(bounds.Width - width) <= AtEdge && Math.Abs(bounds.Height - height) <= AtEdge;
        if (isRectangle && (isSheet || depths.Max() >= 2))
        {
            findings.Warning(FindingCode.Frame, contour.At, $"a rectangle of {Words.SizeOf(bounds)} encloses everything; a border on layer {Words.Quote(contour.Layer.Name)} is cut too, take it out", new(bounds.MinX, bounds.MinY));
        }
    }

    // A ray to the right from a place on the contour meets each contour around it an odd number of times.
    private int DepthOf(int index)
    {
        var longest = _contours[index].Segments[0].Segment;
        foreach (var piece in _contours[index].Segments)
        {
            longest = piece.Segment.Length > longest.Length ? piece.Segment : longest;
        }

        var from = longest.PointAt(OddFraction);
        var odd = new HashSet<int>();
        _tree.Find(new(from.X, from.Y, double.PositiveInfinity, from.Y), found =>
        {
            var (contour, segment) = _pieces[found];
            if (contour != index && HitsOf(segment, from) % 2 == 1 && !odd.Remove(contour))
            {
                odd.Add(contour);
            }

            return true;
        });
        return odd.Count;
    }

    private static int HitsOf(in Segment2 segment, Point2 from)
    {
        if (segment.IsLine)
        {
            var (a, b) = (segment.Start, segment.End);
            return a.Y > from.Y != b.Y > from.Y && a.X + ((b.X - a.X) * (from.Y - a.Y) / (b.Y - a.Y)) > from.X ? 1 : 0;
        }

        var (centre, radius) = (segment.Centre, segment.Radius);
        var half = Math.Sqrt((radius * radius) - ((from.Y - centre.Y) * (from.Y - centre.Y)));
        return IsHit(segment, new(centre.X - half, from.Y), from) + IsHit(segment, new(centre.X + half, from.Y), from);
    }

    // Not a number where the ray misses the circle, which compares false.
    private static int IsHit(in Segment2 segment, Point2 point, Point2 from) => point.X > from.X && segment.IsWithinSweep(point) ? 1 : 0;
}
