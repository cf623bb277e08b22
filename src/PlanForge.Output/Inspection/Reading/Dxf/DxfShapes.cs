using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>Makes lines and arcs of the entities that may be cut.</summary>
/// <param name="file">Takes them.</param>
/// <param name="findings">Takes what is at fault.</param>
/// <param name="millimetres">Millimetres of a unit of the drawing.</param>
internal sealed class DxfShapes(CutFile file, FindingList findings, double millimetres)
{
    private const int Closed = 1;

    // How far an entity may leave the plane, in units of the drawing: rounding of programs that work in space.
    private const double Flat = 1e-6;

    public void AddLine(DxfEntity entity)
    {
        var (start, end) = (Point(entity.Number(10), entity.Number(20)), Point(entity.Number(11), entity.Number(21)));
        if (Math.Abs(entity.Number(30, 0) - entity.Number(31, 0)) > Flat)
        {
            NotFlat(entity);
        }

        // The ends of a line are given in space, not in the plane of the entity.
        Add(entity, [new(new(start, end, 0), entity.At)], isClosed: false, isMirrored: false);
    }

    public void AddArc(DxfEntity entity)
    {
        var (centre, radius) = (Point(entity.Number(10), entity.Number(20)), Radius(entity));
        var (from, to) = (entity.Number(50) % 360, entity.Number(51) % 360);
        if (entity.IsBroken)
        {
            return;
        }

        // Arcs run anticlockwise from the first angle to the second.
        var sweep = to > from ? to - from : to - from + 360;
        var (first, last) = (from * Math.PI / 180, (from + sweep) * Math.PI / 180);
        var middle = (first + last) / 2;
        var bulge = Math.Tan(sweep * Math.PI / 180 / 8);
        var (a, b, c) = (At(first), At(middle), At(last));
        Add(entity, [new(new(a, b, bulge), entity.At), new(new(b, sweep == 360 ? a : c, bulge), entity.At)], sweep == 360, IsMirrored(entity));

        Point2 At(double angle) => centre + (Vector2.FromAngle(angle) * radius);
    }

    public void AddCircle(DxfEntity entity)
    {
        var (centre, radius) = (Point(entity.Number(10), entity.Number(20)), Radius(entity));
        var (right, left) = (centre + new Vector2(radius, 0), centre - new Vector2(radius, 0));
        Add(entity, [new(new(right, left, 1), entity.At), new(new(left, right, 1), entity.At)], isClosed: true, IsMirrored(entity));
    }

    public void AddPolyline(DxfEntity entity)
    {
        var vertices = new List<(Point2 Point, double Bulge, TextPlace At)>();
        var x = default((double Value, TextPlace At)?);
        foreach (var tag in entity.Tags)
        {
            switch (tag.Code)
            {
                case 10:
                    x = (entity.Number(tag), tag.At);
                    break;
                case 20 when x is var (value, at):
                    vertices.Add((Point(value, entity.Number(tag)), 0, at));
                    x = null;
                    break;
                case 42 when vertices.Count > 0:
                    vertices[^1] = vertices[^1] with { Bulge = entity.Number(tag) };
                    break;
            }
        }

        AddVertices(entity, vertices, (entity.Integer(70, 0) & Closed) != 0);
    }

    /// <summary>A polyline of vertices, bulges after them.</summary>
    public void AddVertices(DxfEntity entity, List<(Point2 Point, double Bulge, TextPlace At)> vertices, bool isClosed)
    {
        if (vertices.Count < 2)
        {
            if (!entity.IsBroken)
            {
                findings.Fault(FindingCode.ZeroLength, entity.At, $"this {entity.Kind} has fewer than two vertices");
            }

            return;
        }

        var segments = new List<FileSegment>(vertices.Count);
        for (var i = 0; i < (isClosed ? vertices.Count : vertices.Count - 1); i++)
        {
            var (point, bulge, at) = vertices[i];
            segments.Add(new(new(point, vertices[(i + 1) % vertices.Count].Point, bulge), at));
        }

        // A closed polyline may repeat its first vertex: what joins the two is no segment anybody meant.
        if (isClosed && segments.Count > 2 && segments[^1].Segment.Start == segments[^1].Segment.End)
        {
            segments.RemoveAt(segments.Count - 1);
        }

        Add(entity, segments, isClosed, IsMirrored(entity));
    }

    /// <summary>A place in mm.</summary>
    public Point2 Point(double x, double y) => new(x * millimetres, y * millimetres);

    private double Radius(DxfEntity entity)
    {
        var radius = entity.Number(40) * millimetres;
        if (radius <= 0 && !entity.IsBroken)
        {
            findings.Fault(FindingCode.ZeroLength, entity.At, $"this {entity.Kind} has the radius {Words.Of(radius)}; it must be over 0");
            return 0;
        }

        return radius;
    }

    // An extrusion of (0, 0, -1) turns the entity over: x becomes -x (DXF reference, object coordinate systems; from memory).
    private bool IsMirrored(DxfEntity entity)
    {
        var (x, y, z) = (entity.Number(210, 0), entity.Number(220, 0), entity.Number(230, 1));
        if (Math.Abs(x) > Flat || Math.Abs(y) > Flat)
        {
            NotFlat(entity);
        }

        return z < 0;
    }

    private void NotFlat(DxfEntity entity) =>
        findings.Fault(FindingCode.NotFlat, entity.At, $"this {entity.Kind} leaves the plane of the sheet; give all of it one height");

    private void Add(DxfEntity entity, List<FileSegment> segments, bool isClosed, bool isMirrored)
    {
        if (entity.IsBroken || (entity.Kind is "CIRCLE" or "ARC" && entity.Number(40) <= 0))
        {
            return;
        }

        for (var i = 0; isMirrored && i < segments.Count; i++)
        {
            var ((start, end, bulge), at, _) = segments[i];
            segments[i] = new(new(new(-start.X, start.Y), new(-end.X, end.Y), 0 - bulge), at);
        }

        if (!file.Add(file.LayerOf(entity.Text(8, "0")), entity.At, segments, isClosed))
        {
            findings.Fault(FindingCode.Size, entity.At, $"this {entity.Kind} reaches farther than 1 km");
        }
    }
}
