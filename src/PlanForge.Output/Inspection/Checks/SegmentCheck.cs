using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Checks;

/// <summary>Looks along a contour for segments too short to be meant and for curves crumbled into chords.</summary>
internal static class SegmentCheck
{
    private const double Tiny = 0.05;

    // A chord of a crumbled curve is shorter than this, mm, and turns by less than this, radians, against the one before it.
    private const double LongestCrumb = 2;
    private const double SharpestTurn = 15 * Math.PI / 180;

    // So many in a row are no polygon any more; and they have to turn by as much as shows, radians.
    private const int FewestCrumbs = 12;
    private const double LeastTurning = 5 * Math.PI / 180;

    public static void Run(Contour contour, FindingList findings)
    {
        for (var i = 0; i < contour.Segments.Count;)
        {
            var count = CrumbsFrom(contour, i, out var turning);
            if (count >= FewestCrumbs && turning >= LeastTurning)
            {
                ReportCrumbs(contour, i, count, findings);
                i += count;
                continue;
            }

            for (var last = i + Math.Max(1, count); i < last; i++)
            {
                var piece = contour.Segments[i];
                if (!piece.IsChord && !piece.IsBridge && piece.Segment.Length < Tiny)
                {
                    findings.Warning(FindingCode.TinySegment, piece.At, $"a piece of {Words.Of(piece.Segment.Length)} at {Words.Of(piece.Segment.Start)}; the machine stops at each end, join it to its neighbour", piece.Segment.Start);
                }
            }
        }
    }

    // How many segments from one on are such chords.
    private static int CrumbsFrom(Contour contour, int first, out double turning)
    {
        turning = 0;
        var count = 0;
        while (first + count < contour.Segments.Count && IsCrumb(contour.Segments[first + count]))
        {
            if (count > 0)
            {
                var (before, after) = (contour.Segments[first + count - 1].Segment, contour.Segments[first + count].Segment);
                var turn = Math.Abs(Angle(before.End - before.Start, after.End - after.Start));
                if (turn > SharpestTurn)
                {
                    break;
                }

                turning += turn;
            }

            count++;
        }

        return count;
    }

    private static bool IsCrumb(ContourSegment piece) =>
        piece.Segment.IsLine && !piece.IsChord && !piece.IsBridge && piece.Segment.Length < LongestCrumb;

    private static double Angle(Vector2 a, Vector2 b) => Math.Atan2(a.Cross(b), a.Dot(b));

    private static void ReportCrumbs(Contour contour, int first, int count, FindingList findings)
    {
        var length = 0.0;
        for (var i = first; i < first + count; i++)
        {
            length += contour.Segments[i].Segment.Length;
        }

        var piece = contour.Segments[first];
        var start = piece.Segment.Start;
        findings.Warning(FindingCode.Crumbs, piece.At, FormattableString.Invariant($"{count} straight pieces of {Words.Of(length / count)} in a row from {Words.Of(start)}; the machine stutters on them, write arcs"), start);
    }
}
