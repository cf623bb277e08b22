using PlanForge.Geometry;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Dxf;

/// <summary>Paths as the plainest entity that holds each: a circle, a line, an arc, else a polyline with bulges.</summary>
/// <param name="tags">Where they go.</param>
internal abstract class DxfEntities(DxfTags tags)
{
    // Centre and angles of a flatter arc than this, mm, lose the ends to rounding; a polyline names the ends themselves.
    private const double LargestArcRadius = 10_000;

    /// <summary>Flag of a closed polyline.</summary>
    protected const int Closed = 1;

    /// <summary>Writes a path.</summary>
    public void Add(Path2 path, string layer)
    {
        if (path.AsCircle() is var (centre, radius))
        {
            Begin("CIRCLE"u8, layer, "AcDbCircle"u8);
            tags.AddPoint3(10, centre).AddLength(40, radius);
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
            Begin("LINE"u8, layer, "AcDbLine"u8);
            tags.AddPoint3(10, segment.Start).AddPoint3(11, segment.End);
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

    /// <summary>Begins an entity: its kind and layer, and what the version wants besides.</summary>
    protected abstract void Begin(ReadOnlySpan<byte> kind, string layer, ReadOnlySpan<byte> subclass);

    /// <summary>Begins the second subclass of an entity, where the version has subclasses.</summary>
    protected abstract void Continue(ReadOnlySpan<byte> subclass);

    /// <summary>Writes a path as a polyline.</summary>
    protected abstract void AddPolyline(Path2 path, string layer);

    /// <summary>Arcs run anticlockwise in DXF, from the start angle to the end angle in degrees.</summary>
    private void AddArc(Segment2 arc, string layer)
    {
        var (from, to) = arc.Bulge > 0 ? (arc.Start, arc.End) : (arc.End, arc.Start);
        var centre = arc.Centre;
        Begin("ARC"u8, layer, "AcDbCircle"u8);
        tags.AddPoint3(10, centre).AddLength(40, arc.Radius);
        Continue("AcDbArc"u8);
        tags.AddRatio(50, Degrees(from - centre)).AddRatio(51, Degrees(to - centre));
    }

    private static double Degrees(Vector2 direction)
    {
        var degrees = direction.Angle * (180 / Math.PI);
        return degrees < 0 ? degrees + 360 : degrees;
    }
}

/// <summary>Entities of R2000: with handle, owner and subclass names.</summary>
/// <param name="tags">Where they go.</param>
/// <param name="handles">Their numbers.</param>
/// <param name="owner">Handle of the block record of the model space.</param>
internal sealed class DxfR2000Entities(DxfTags tags, DxfHandles handles, uint owner) : DxfEntities(tags)
{
    private readonly DxfTags _tags = tags;

    /// <inheritdoc/>
    protected override void Begin(ReadOnlySpan<byte> kind, string layer, ReadOnlySpan<byte> subclass) =>
        _tags.Add(0, kind).AddHandle(5, handles.Take()).AddHandle(330, owner).Add(100, "AcDbEntity"u8).Add(8, layer).Add(100, subclass);

    /// <inheritdoc/>
    protected override void Continue(ReadOnlySpan<byte> subclass) => _tags.Add(100, subclass);

    /// <inheritdoc/>
    protected override void AddPolyline(Path2 path, string layer)
    {
        Begin("LWPOLYLINE"u8, layer, "AcDbPolyline"u8);
        _tags.Add(90, path.Vertices.Length).Add(70, path.IsClosed ? Closed : 0).AddLength(43, 0);
        for (var i = 0; i < path.Vertices.Length; i++)
        {
            var vertex = path.Vertices[i];
            _tags.AddPoint(10, vertex.Point);
            if (i < path.SegmentCount && vertex.Bulge != 0)
            {
                _tags.AddRatio(42, vertex.Bulge);
            }
        }
    }
}

/// <summary>Entities of R12: a polyline is followed by its vertices and an end of sequence.</summary>
/// <param name="tags">Where they go.</param>
internal sealed class DxfR12Entities(DxfTags tags) : DxfEntities(tags)
{
    private const int VerticesFollow = 1;
    private readonly DxfTags _tags = tags;

    /// <inheritdoc/>
    protected override void Begin(ReadOnlySpan<byte> kind, string layer, ReadOnlySpan<byte> subclass) => _tags.Add(0, kind).Add(8, layer);

    /// <inheritdoc/>
    protected override void Continue(ReadOnlySpan<byte> subclass)
    {
    }

    /// <inheritdoc/>
    protected override void AddPolyline(Path2 path, string layer)
    {
        Begin("POLYLINE"u8, layer, []);
        _tags.Add(66, VerticesFollow).AddPoint3(10, new(0, 0)).Add(70, path.IsClosed ? Closed : 0);
        for (var i = 0; i < path.Vertices.Length; i++)
        {
            var vertex = path.Vertices[i];
            Begin("VERTEX"u8, layer, []);
            _tags.AddPoint3(10, vertex.Point);
            if (i < path.SegmentCount && vertex.Bulge != 0)
            {
                _tags.AddRatio(42, vertex.Bulge);
            }
        }

        Begin("SEQEND"u8, layer, []);
    }
}
