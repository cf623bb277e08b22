using PlanForge.Geometry;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Pdf;

/// <summary>Path construction operators (ISO 32000-1, 8.5.2).</summary>
/// <param name="text">Where the operators go.</param>
/// <param name="decimals">Decimals of coordinates.</param>
/// <param name="tolerance">Farthest a curve may stray from its arc, in the units written.</param>
internal readonly struct PdfPath(ByteText text, int decimals, double tolerance)
{
    /// <summary>Appends a path, closed by an operator of its own when it is closed; painting is up to the caller.</summary>
    /// <param name="path">The path.</param>
    /// <param name="scale">Factor from its units to the units written.</param>
    public void Append(Path2 path, double scale = 1)
    {
        var vertices = path.Vertices;
        var from = Scaled(vertices[0].Point, scale);
        AppendPoint(from);
        text.Append("m\n"u8);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var isLast = i == vertices.Length - 1;
            var to = Scaled(vertices[isLast ? 0 : i + 1].Point, scale);
            var segment = new Segment2(from, to, vertices[i].Bulge);
            if (!isLast || !segment.IsFlatterThan(CurveTolerance.Flat))
            {
                AppendSegment(segment);
            }

            from = to;
        }

        if (path.IsClosed)
        {
            text.Append("h\n"u8);
        }
    }

    private static Point2 Scaled(Point2 point, double scale) => new(point.X * scale, point.Y * scale);

    private void AppendSegment(Segment2 segment)
    {
        if (segment.IsFlatterThan(CurveTolerance.Flat))
        {
            AppendPoint(segment.End);
            text.Append("l\n"u8);
        }
        else if (segment.BezierError() > tolerance)
        {
            var (first, second) = segment.Halves();
            AppendSegment(first);
            AppendSegment(second);
        }
        else
        {
            var (first, second) = segment.BezierControls();
            AppendPoint(first);
            AppendPoint(second);
            AppendPoint(segment.End);
            text.Append("c\n"u8);
        }
    }

    private void AppendPoint(Point2 point) =>
        text.Append(point.X, decimals).Append(" "u8).Append(point.Y, decimals).Append(" "u8);
}
