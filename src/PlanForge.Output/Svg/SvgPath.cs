using PlanForge.Geometry;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Svg;

/// <summary>Path data of SVG: M, L, A and Z with absolute coordinates, but for lettering (<see cref="LetterStamp"/>); lengths never change on the way in.</summary>
internal static class SvgPath
{
    /// <summary>Decimals of coordinates and lengths, mm.</summary>
    public const int Decimals = 5;

    // A little over a quarter circle (0.4142). An arc is given by its ends and radius; the nearer it comes to a half circle, the
    // farther a rounded radius moves its centre. Wider arcs are written in halves.
    private const double WidestBulge = 0.42;

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
        Append(text, path, frame);
        return text.Append("\""u8);
    }

    /// <summary>Appends the data of a path.</summary>
    /// <param name="text">Where it goes.</param>
    /// <param name="path">The path.</param>
    /// <param name="frame">From the path's coordinates to the picture's.</param>
    public static void Append(ByteText text, Path2 path, SvgFrame frame) => Draw(path, frame, new PlacePen(text));

    /// <summary>Draws a path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="frame">From the path's coordinates to the picture's.</param>
    /// <param name="pen">Writes it.</param>
    public static void Draw<TPen>(Path2 path, SvgFrame frame, TPen pen)
        where TPen : ISvgPen
    {
        var vertices = path.Vertices;
        var from = frame.Apply(vertices[0].Point);
        pen.MoveTo(from);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var isLast = i == vertices.Length - 1;
            var to = frame.Apply(vertices[isLast ? 0 : i + 1].Point);
            var segment = new Segment2(from, to, SvgFrame.Apply(vertices[i].Bulge));
            if (!isLast || !segment.IsFlatterThan(CurveTolerance.Flat))
            {
                Draw(segment, pen);
            }

            from = to;
        }

        if (path.IsClosed)
        {
            pen.Close();
        }
    }

    /// <summary>What stands between an arc's radii and its end: turn of the axes 0, never the larger arc, and the turn itself.</summary>
    public static ReadOnlySpan<byte> ArcFlags(bool isClockwise) => isClockwise ? " 0 0 1 "u8 : " 0 0 0 "u8;

    private static void Draw<TPen>(Segment2 segment, TPen pen)
        where TPen : ISvgPen
    {
        if (segment.IsFlatterThan(CurveTolerance.Flat))
        {
            pen.LineTo(segment.End);
        }
        else if (Math.Abs(segment.Bulge) > WidestBulge)
        {
            var (first, second) = segment.Halves();
            Draw(first, pen);
            Draw(second, pen);
        }
        else
        {
            // With y down, what turns against the clock in the numbers is clockwise to the eye.
            pen.ArcTo(segment.Radius, segment.Bulge > 0, segment.End);
        }
    }

    /// <summary>Writes places.</summary>
    private readonly struct PlacePen(ByteText text) : ISvgPen
    {
        public void MoveTo(Point2 point) => AppendPoint(text.Append("M"u8), point);

        public void LineTo(Point2 point) => AppendPoint(text.Append("L"u8), point);

        public void ArcTo(double radius, bool isClockwise, Point2 point) => AppendPoint(
            text.Append("A"u8).Append(radius, Decimals).Append(" "u8).Append(radius, Decimals).Append(ArcFlags(isClockwise)), point);

        public void Close() => text.Append("Z"u8);

        private static void AppendPoint(ByteText text, Point2 point) => text.Append(point.X, Decimals).Append(" "u8).Append(point.Y, Decimals);
    }
}
