using PlanForge.Geometry;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Dxf;

/// <summary>Paths as the plainest entity that holds each: a circle, a line, an arc, else a polyline with bulges.</summary>
/// <param name="tags">Where they go.</param>
/// <param name="handles">Their numbers.</param>
/// <param name="owner">Handle of the block record of the model space.</param>
internal sealed class DxfEntities(DxfTags tags, DxfHandles handles, uint owner)
{
    // Centre and angles of a flatter arc than this, mm, lose the ends to rounding; a polyline names the ends themselves.
    private const double LargestArcRadius = 10_000;

    private const int Closed = 1;

    /// <summary>Writes a path.</summary>
    public void Add(Path2 path, string layer)
    {
        if (path.AsCircle() is var (centre, radius))
        {
            Begin("CIRCLE"u8, layer).Add(100, "AcDbCircle"u8).AddPoint3(10, centre).AddLength(40, radius);
            return;
        }

        if (path.IsClosed || path.SegmentCount > 1)
        {
            AddPolyline(path, layer);
            return;
        }

        var segment = path.SegmentAt(0);
        if (segment.IsFlatterThan(CurveTolerance.Flat))
        {
            Begin("LINE"u8, layer).Add(100, "AcDbLine"u8).AddPoint3(10, segment.Start).AddPoint3(11, segment.End);
        }
        else if (segment.Radius > LargestArcRadius)
        {
            AddPolyline(path, layer);
        }
        else
        {
            AddArc(segment, layer);
        }
    }

    private DxfTags Begin(ReadOnlySpan<byte> kind, string layer) =>
        tags.Add(0, kind).AddHandle(5, handles.Take()).AddHandle(330, owner).Add(100, "AcDbEntity"u8).Add(8, layer);

    private void AddPolyline(Path2 path, string layer)
    {
        Begin("LWPOLYLINE"u8, layer).Add(100, "AcDbPolyline"u8).Add(90, path.Vertices.Length)
            .Add(70, path.IsClosed ? Closed : 0).AddLength(43, 0);
        for (var i = 0; i < path.Vertices.Length; i++)
        {
            var vertex = path.Vertices[i];
            tags.AddPoint(10, vertex.Point);
            if (i < path.SegmentCount && vertex.Bulge != 0)
            {
                tags.AddRatio(42, vertex.Bulge);
            }
        }
    }

    /// <summary>Arcs run anticlockwise in DXF, from the start angle to the end angle in degrees.</summary>
    private void AddArc(Segment2 arc, string layer)
    {
        var (from, to) = arc.Bulge > 0 ? (arc.Start, arc.End) : (arc.End, arc.Start);
        var centre = arc.Centre;
        Begin("ARC"u8, layer).Add(100, "AcDbCircle"u8).AddPoint3(10, centre).AddLength(40, arc.Radius)
            .Add(100, "AcDbArc"u8).AddRatio(50, Degrees(from - centre)).AddRatio(51, Degrees(to - centre));
    }

    private static double Degrees(Vector2 direction)
    {
        var degrees = direction.Angle * (180 / Math.PI);
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
