using PlanForge.Geometry;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Svg;

/// <summary>Path data of SVG: M, L, A and Z with absolute coordinates, but for lettering (<see cref="LetterStamp"/>); lengths never change on the way in.</summary>
internal static class SvgPath
{
    /// <summary>Decimals of coordinates and lengths, mm.</summary>
    public const int Decimals = 5;

    /// <summary>
    /// A little over a quarter circle (0.4142). An arc is given by its ends and radius; the nearer it comes to a half circle, the
    /// farther a rounded radius moves its centre. Wider arcs are written in halves.
    /// </summary>
    public const double WidestBulge = 0.42;

    /// <summary>Begins an element for a path, a circle where it is one; attributes may follow, then the element must be closed.</summary>
    public static ByteText AppendElement(ByteText text, Path2 path, SvgFrame frame)
    {
        if (path.AsCircle() is var (centre, radius))
        {
            var middle = frame.Apply(centre);
            return text.Append("<circle cx=\""u8).Append(middle.X, Decimals).Append("\" cy=\""u8).Append(middle.Y, Decimals)
                .Append("\" r=\""u8).Append(radius, Decimals).Append("\""u8);
        }

        text.Append("<path d=\""u8);
        Append(text, path, frame, Decimals);
        return text.Append("\""u8);
    }

    /// <summary>Appends the data of a path.</summary>
    /// <param name="text">Where it goes.</param>
    /// <param name="path">The path.</param>
    /// <param name="frame">From the path's coordinates to the picture's.</param>
    /// <param name="decimals">Decimals of coordinates.</param>
    public static void Append(ByteText text, Path2 path, SvgFrame frame, int decimals)
    {
        var vertices = path.Vertices;
        var from = frame.Apply(vertices[0].Point);
        AppendPoint(text.Append("M"u8), from, decimals);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var isLast = i == vertices.Length - 1;
            var to = frame.Apply(vertices[isLast ? 0 : i + 1].Point);
            var segment = new Segment2(from, to, SvgFrame.Apply(vertices[i].Bulge));
            if (!isLast || !segment.IsFlatterThan(CurveTolerance.Flat))
            {
                AppendSegment(text, segment, decimals);
            }

            from = to;
        }

        if (path.IsClosed)
        {
            text.Append("Z"u8);
        }
    }

    private static void AppendSegment(ByteText text, Segment2 segment, int decimals)
    {
        if (segment.IsFlatterThan(CurveTolerance.Flat))
        {
            AppendPoint(text.Append("L"u8), segment.End, decimals);
        }
        else if (Math.Abs(segment.Bulge) > WidestBulge)
        {
            var (first, second) = segment.Halves();
            AppendSegment(text, first, decimals);
            AppendSegment(text, second, decimals);
        }
        else
        {
            // Radius, turn of the axes 0, never the larger arc, and the turn itself: with y down, 1 is clockwise to the eye.
            text.Append("A"u8).Append(segment.Radius, decimals).Append(" "u8).Append(segment.Radius, decimals)
                .Append(segment.Bulge > 0 ? " 0 0 1 "u8 : " 0 0 0 "u8);
            AppendPoint(text, segment.End, decimals);
        }
    }

    private static void AppendPoint(ByteText text, Point2 point, int decimals) =>
        text.Append(point.X, decimals).Append(" "u8).Append(point.Y, decimals);
}
