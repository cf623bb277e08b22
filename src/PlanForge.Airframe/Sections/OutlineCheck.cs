using PlanForge.Airframe.Diagnostics;
using PlanForge.Geometry;

namespace PlanForge.Airframe.Sections;

/// <summary>Finds what keeps an outline from being one of a section: two surfaces that run aft from a nose and do not cross.</summary>
internal static class OutlineCheck
{
    // Fewer points do not tell a shape; a triangle drawn as a section needs points along its sides.
    private const int LeastCount = 4;

    // In chords: tables of closed sections print the last digits of both surfaces so that they touch.
    private const double Touching = 1e-7;

    // In chords: half a chord is a round bar. A point farther off has lost its decimal point.
    private const double GreatestHeight = 0.6;

    // dy over d(sqrt(x)) between neighbours: 1 at the nose of a round bar, 2 where a trailing edge is cut off at 45 degrees. A
    // curve through a steeper step rings; less would refuse rounded trailing edges.
    private const double GreatestStep = 8;

    /// <summary>Adds an error for each fault.</summary>
    /// <param name="rows">The rows of the file.</param>
    /// <param name="outline">The same points in chords, from the lower trailing edge by way of the nose to the upper.</param>
    /// <param name="foremost">Index of the foremost point.</param>
    /// <param name="findings">Receives the errors.</param>
    public static void Check(List<ListedPoint> rows, Point2[] outline, int foremost, List<Diagnostic> findings)
    {
        var count = findings.Count;
        CheckCount(rows, "lower", 0, foremost, findings);
        CheckCount(rows, "upper", foremost, outline.Length - 1, findings);
        CheckDirection(rows, outline, foremost, findings);
        CheckHeight(rows, outline, findings);
        if (findings.Count == count)
        {
            CheckSteps(rows, outline, foremost, findings);
            CheckCrossing(rows, outline, foremost, findings);
        }
    }

    /// <summary>Index of the foremost point; of two that share their x, the lower.</summary>
    public static int Foremost(ReadOnlySpan<Point2> outline)
    {
        var foremost = 0;
        for (var i = 1; i < outline.Length; i++)
        {
            foremost = outline[i].X < outline[foremost].X ? i : foremost;
        }

        return foremost;
    }

    /// <summary>Whether so many points on either side of the foremost one lie farther aft one after the other.</summary>
    public static bool RunsAft(ReadOnlySpan<Point2> outline, int foremost, int count)
    {
        for (var i = 0; i < count; i++)
        {
            if (outline[foremost - i - 1].X <= outline[foremost - i].X
                || (outline[foremost + i + 1].X <= outline[foremost + i].X && i > 0))
            {
                return false;
            }
        }

        return true;
    }

    private static void CheckCount(List<ListedPoint> rows, string side, int first, int last, List<Diagnostic> findings)
    {
        var count = last - first + 1;
        if (count < LeastCount)
        {
            findings.Add(Diagnostic.Error(rows[first == 0 ? 0 : last].At, FormattableString.Invariant(
                $"the {side} surface has too few points: {count} with the foremost one, where at least {LeastCount} are needed")));
        }
    }

    private static void CheckDirection(List<ListedPoint> rows, Point2[] outline, int foremost, List<Diagnostic> findings)
    {
        for (var i = 0; i < outline.Length; i++)
        {
            var towards = Math.Sign(foremost - i);
            if (towards == 0 || outline[i].X > outline[i + towards].X)
            {
                continue;
            }

            var isForemost = outline[i].X == outline[foremost].X && outline[i + towards].X == outline[foremost].X;
            if (!isForemost)
            {
                findings.Add(Diagnostic.Error(
                    rows[i].At, $"{Side(i, foremost)} turns back here: x is not aft of the point before it, {rows[i + towards].Text}"));
            }
            else if (i + towards != foremost)
            {
                findings.Add(Diagnostic.Error(
                    rows[i].At, "the nose is blunt: more than two points share the foremost x; leave out those between the outer two"));
            }
        }
    }

    private static void CheckHeight(List<ListedPoint> rows, Point2[] outline, List<Diagnostic> findings)
    {
        for (var i = 0; i < outline.Length; i++)
        {
            if (Math.Abs(outline[i].Y) > GreatestHeight)
            {
                findings.Add(Diagnostic.Error(rows[i].At, FormattableString.Invariant(
                    $"this point lies {Math.Abs(outline[i].Y):0.##} chords off the chord line: is its decimal point in place?")));
            }
        }
    }

    // The steps beside the foremost point are left out: how far its own nose lies ahead of it is not known yet.
    private static void CheckSteps(List<ListedPoint> rows, Point2[] outline, int foremost, List<Diagnostic> findings)
    {
        double Root(int i) => Math.Sqrt(outline[i].X - outline[foremost].X);
        for (var i = 0; i < outline.Length; i++)
        {
            var before = i + Math.Sign(foremost - i);
            var step = outline[i] - outline[before];
            if (before != foremost && i != foremost && Math.Abs(step.Y) > GreatestStep * (Root(i) - Root(before)))
            {
                var change = FormattableString.Invariant($"y changes by {Math.Abs(step.Y):0.####} chords over {step.X:0.######} of x");
                findings.Add(Diagnostic.Error(rows[i].At, $"{Side(i, foremost)} jumps here: {change} from the point before it"));
            }
        }
    }

    private static void CheckCrossing(List<ListedPoint> rows, Point2[] outline, int foremost, List<Diagnostic> findings)
    {
        ListedPoint? crossing = null;
        for (var i = 0; i < outline.Length; i++)
        {
            var other = Height(outline, foremost, i < foremost ? 1 : -1, outline[i].X);
            var gap = i < foremost ? other - outline[i].Y : outline[i].Y - other;
            if (i != foremost && gap < -Touching && (crossing is not { } found || rows[i].At.Line < found.At.Line))
            {
                crossing = rows[i];
            }
        }

        if (crossing is { } row)
        {
            findings.Add(Diagnostic.Error(row.At, "the surfaces cross: here the lower one lies above the upper one"));
        }
    }

    private static string Side(int index, int foremost) => index < foremost ? "the lower surface" : "the upper surface";

    // Height of one surface at x, between its listed points; the end's height beyond the ends.
    private static double Height(Point2[] outline, int foremost, int side, double x)
    {
        var end = side > 0 ? outline.Length - 1 : 0;
        for (var i = foremost; i != end; i += side)
        {
            Point2 a = outline[i], b = outline[i + side];
            if (x <= b.X)
            {
                return b.X > a.X ? a.Y + ((b.Y - a.Y) * Math.Clamp((x - a.X) / (b.X - a.X), 0, 1)) : b.Y;
            }
        }

        return outline[end].Y;
    }
}
