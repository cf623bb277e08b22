using PlanForge.Geometry;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Svg;

/// <summary>Path data of SVG: M, L, A and Z with absolute coordinates; lengths never change on the way in.</summary>
internal static class SvgPath
{
    /// <summary>Decimals of coordinates and lengths, mm.</summary>
    public const int Decimals = 5;

    // tan(90°/4). An arc is given by its ends and radius; close to a half circle a rounded radius moves the centre far, so
    // wider arcs are written in halves.
    private const double WidestBulge = 0.41421356237309503;

    /// <summary>Begins an element for a path, a circle where it is one; attributes may follow, then the element must be closed.</summary>
    public static ByteText AppendElement(ByteText text, Path2 path, Similarity placement)
    {
        if (path.AsCircle() is var (centre, radius))
        {
            var middle = placement.Apply(centre);
            return text.Append("<circle cx=\""u8).Append(middle.X, Decimals).Append("\" cy=\""u8).Append(middle.Y, Decimals)
                .Append("\" r=\""u8).Append(radius, Decimals).Append("\""u8);
        }

        text.Append("<path d=\""u8);
        Append(text, path, placement);
        return text.Append("\""u8);
    }

    /// <summary>Appends the data of a path.</summary>
    /// <param name="text">Where it goes.</param>
    /// <param name="path">The path.</param>
    /// <param name="placement">From the path's coordinates to the picture's.</param>
    public static void Append(ByteText text, Path2 path, Similarity placement)
    {
        var vertices = path.Vertices;
        var from = placement.Apply(vertices[0].Point);
        AppendPoint(text.Append("M"u8), from);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var isLast = i == vertices.Length - 1;
            var to = placement.Apply(vertices[isLast ? 0 : i + 1].Point);
            var segment = new Segment2(from, to, placement.Apply(vertices[i].Bulge));
            if (!isLast || !segment.IsFlatterThan(CurveTolerance.Flat))
            {
                AppendSegment(text, segment);
            }

            from = to;
        }

        if (path.IsClosed)
        {
            text.Append("Z"u8);
        }
    }

    private static void AppendSegment(ByteText text, Segment2 segment)
    {
        if (segment.IsFlatterThan(CurveTolerance.Flat))
        {
            AppendPoint(text.Append("L"u8), segment.End);
        }
        else if (Math.Abs(segment.Bulge) > WidestBulge)
        {
            var (first, second) = segment.Halves();
            AppendSegment(text, first);
            AppendSegment(text, second);
        }
        else
        {
            // Radius, turn of the axes 0, never the larger arc, and the turn itself: with y down, 1 is clockwise to the eye.
            text.Append("A"u8).Append(segment.Radius, Decimals).Append(" "u8).Append(segment.Radius, Decimals)
                .Append(segment.Bulge > 0 ? " 0 0 1 "u8 : " 0 0 0 "u8);
            AppendPoint(text, segment.End);
        }
    }

    private static void AppendPoint(ByteText text, Point2 point) =>
        text.Append(point.X, Decimals).Append(" "u8).Append(point.Y, Decimals);
}
