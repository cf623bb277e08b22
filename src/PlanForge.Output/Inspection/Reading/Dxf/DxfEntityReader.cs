using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>Reads the ENTITIES section: lines and arcs of the model; what else there is, is said.</summary>
/// <param name="scanner">Stands before the first entity.</param>
/// <param name="file">Takes lines and arcs.</param>
/// <param name="findings">Takes what must not be there.</param>
internal sealed class DxfEntityReader(DxfScanner scanner, CutFile file, FindingList findings)
{
    private const int ClosedPolyline = 1;
    private const int FittedPolyline = 2 | 4;
    private const int OtherPolyline = 8 | 16 | 64;
    private const int ControlVertex = 16;

    /// <summary>Reads them all.</summary>
    /// <param name="millimetres">Millimetres of a unit of the drawing.</param>
    public void Read(double millimetres)
    {
        var shapes = new DxfShapes(file, findings, millimetres);
        var next = NextEntity(isFirst: true);
        while (next is { } entity)
        {
            next = NextEntity(isFirst: false);
            if (entity.Integer(67, 0) == 1)
            {
                // On the paper, not in the model.
                continue;
            }

            switch (entity.Kind)
            {
                case "LINE":
                    shapes.AddLine(entity);
                    break;
                case "ARC":
                    shapes.AddArc(entity);
                    break;
                case "CIRCLE":
                    shapes.AddCircle(entity);
                    break;
                case "LWPOLYLINE":
                    shapes.AddPolyline(entity);
                    break;
                case "POLYLINE":
                    next = ReadVertices(entity, next, shapes);
                    break;
                case "SEQEND":
                    break;
                default:
                    DxfEntityKinds.Report(entity.Kind, entity.At, entity.Text(8, "0"), findings);
                    file.IsIncomplete = true;
                    break;
            }
        }
    }

    private DxfEntity? ReadVertices(DxfEntity polyline, DxfEntity? next, DxfShapes shapes)
    {
        var flags = polyline.Integer(70, 0);
        var vertices = new List<(Point2 Point, double Bulge, TextPlace At)>();
        while (next is { Kind: "VERTEX" } vertex)
        {
            if ((vertex.Integer(70, 0) & ControlVertex) == 0)
            {
                vertices.Add((shapes.Point(vertex.Number(10), vertex.Number(20)), vertex.Number(42, 0), vertex.At));
            }

            next = vertices.Count > CutFile.MostSegments ? null : NextEntity(isFirst: false);
        }

        if (next is not { Kind: "SEQEND" })
        {
            findings.Fault(FindingCode.Syntax, polyline.At, "the vertices of this POLYLINE have no end; SEQEND is missing");
        }

        if ((flags & OtherPolyline) != 0)
        {
            findings.Fault(FindingCode.ForbiddenEntity, polyline.At, "this POLYLINE is a mesh or lies in space; a sheet is cut along plane lines");
            return next;
        }

        if ((flags & FittedPolyline) != 0)
        {
            findings.Warning(FindingCode.Spline, polyline.At, "this POLYLINE is fitted to a curve; write arcs and lines");
        }

        shapes.AddVertices(polyline, vertices, (flags & ClosedPolyline) != 0);
        return next;
    }

    // The groups up to the next code 0. The section's own end is read over; anything before the first entity is at fault.
    private DxfEntity? NextEntity(bool isFirst)
    {
        if (!scanner.ReadInSection())
        {
            return null;
        }

        if (isFirst && scanner.Tag.Code != 0)
        {
            findings.Fault(FindingCode.Syntax, scanner.Tag.At, "an entity has to begin here with the group code 0");
        }

        var tags = new List<DxfTag> { scanner.Tag };
        while (scanner.Read())
        {
            if (scanner.Tag.Code == 0)
            {
                scanner.GoBack();
                break;
            }

            tags.Add(scanner.Tag);
        }

        return new(tags, findings);
    }
}
