using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>
/// Reads DXF in text form, R12 to current: header variables, the table of layers, and the entities of the model. Blocks are
/// passed over, as nothing of them may be in a cut file.
/// </summary>
internal sealed class DxfFileReader
{
    private const int ClosedPolyline = 1;
    private const int FittedPolyline = 2 | 4;
    private const int OtherPolyline = 8 | 16 | 64;
    private const int ControlVertex = 16;
    private const int FrozenLayer = 1;

    private readonly DxfScanner _scanner;
    private readonly FindingList _findings;
    private readonly CutFile _file;
    private readonly DxfHeader _header = new();
    private readonly string _name;
    private bool _hasLayerTable;
    private bool _hasEntities;

    private DxfFileReader(string name, string text, CutFile file, FindingList findings)
    {
        (_name, _file, _findings) = (name, file, findings);
        _scanner = new(text, findings);
    }

    /// <summary>Reads what can be read; what cannot is said.</summary>
    public static void Read(string name, string text, CutFile file, FindingList findings) =>
        new DxfFileReader(name, text, file, findings).Read();

    private void Read()
    {
        var isSettled = false;
        var isEnded = false;
        while (!isEnded && _scanner.Read())
        {
            var tag = _scanner.Tag;
            if (tag.Is(0, "EOF"))
            {
                isEnded = true;
            }
            else if (tag.Is(0, "SECTION"))
            {
                var section = _scanner.Read() && _scanner.Tag.Code == 2 ? _scanner.Tag.Value : "";
                if (section != "HEADER" && !isSettled)
                {
                    isSettled = true;
                    _header.Settle(_name, _findings);
                }

                ReadSection(section);
            }
            else if (tag.Code != 999)
            {
                _findings.Fault(FindingCode.Syntax, tag.At, $"a section has to begin here with 0 SECTION, not {Words.Quote(tag.Value)}");
                _file.IsIncomplete = true;
                break;
            }
        }

        if (!isSettled)
        {
            _header.Settle(_name, _findings);
        }

        Finish(isEnded);
    }

    private void ReadSection(string name)
    {
        switch (name)
        {
            case "HEADER":
                ReadHeader();
                break;
            case "TABLES":
                ReadTables();
                break;
            case "ENTITIES":
                _hasEntities = true;
                ReadEntities();
                break;
            default:
                while (IsInSection())
                {
                }

                break;
        }
    }

    /// <summary>Goes on to the next group of a section.</summary>
    private bool IsInSection()
    {
        if (!_scanner.Read())
        {
            return false;
        }

        if (_scanner.Tag.Is(0, "EOF") || _scanner.Tag.Is(0, "SECTION"))
        {
            _findings.Fault(FindingCode.Syntax, _scanner.Tag.At, "the section before this is not closed; 0 ENDSEC is missing");
            _scanner.GoBack();
            return false;
        }

        return !_scanner.Tag.Is(0, "ENDSEC");
    }

    private void ReadHeader()
    {
        var variable = "";
        while (IsInSection())
        {
            if (_scanner.Tag.Code == 9)
            {
                variable = _scanner.Tag.Value;
            }
            else
            {
                _header.Add(variable, _scanner.Tag);
            }
        }
    }

    private void ReadTables()
    {
        var (isLayer, name, flags, colour, at) = (false, "", 0, 0, TextPlace.WholeFile);
        while (IsInSection())
        {
            var tag = _scanner.Tag;
            if (tag.Code == 0)
            {
                Keep();
                (isLayer, name, flags, colour, at) = (tag.Value == "LAYER", "", 0, 0, tag.At);
            }
            else if (tag.Code == 2)
            {
                name = tag.Value;
            }
            else if (tag.Code is 70 or 62 && tag.TryInteger(out var number))
            {
                (flags, colour) = tag.Code == 70 ? (number, colour) : (flags, number);
            }
        }

        Keep();

        void Keep()
        {
            if (isLayer && name.Length > 0)
            {
                _hasLayerTable = true;
                var layer = _file.LayerOf(name);
                layer.IsListed = true;
                layer.IsOff = colour < 0 || (flags & FrozenLayer) != 0;
                layer.At = at;
            }
        }
    }

    private void ReadEntities()
    {
        var shapes = new DxfShapes(_file, _findings, _header.Millimetres);
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
                    DxfEntityKinds.Report(entity.Kind, entity.At, entity.Text(8, "0"), _findings);
                    _file.IsIncomplete = true;
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
            _findings.Fault(FindingCode.Syntax, polyline.At, "the vertices of this POLYLINE have no end; SEQEND is missing");
        }

        if ((flags & OtherPolyline) != 0)
        {
            _findings.Fault(FindingCode.ForbiddenEntity, polyline.At, "this POLYLINE is a mesh or lies in space; a sheet is cut along plane lines");
            return next;
        }

        if ((flags & FittedPolyline) != 0)
        {
            _findings.Warning(FindingCode.Spline, polyline.At, "this POLYLINE is fitted to a curve; write arcs and lines");
        }

        shapes.AddVertices(polyline, vertices, (flags & ClosedPolyline) != 0);
        return next;
    }

    // The groups up to the next code 0. The section's own end is read over; anything before the first entity is at fault.
    private DxfEntity? NextEntity(bool isFirst)
    {
        if (!IsInSection())
        {
            return null;
        }

        if (isFirst && _scanner.Tag.Code != 0)
        {
            _findings.Fault(FindingCode.Syntax, _scanner.Tag.At, "an entity has to begin here with the group code 0");
        }

        var tags = new List<DxfTag> { _scanner.Tag };
        while (_scanner.Read())
        {
            if (_scanner.Tag.Code == 0)
            {
                _scanner.GoBack();
                break;
            }

            tags.Add(_scanner.Tag);
        }

        return new(tags, _findings);
    }

    private void Finish(bool isEnded)
    {
        _file.IsIncomplete |= _scanner.IsBroken;
        (_file.Format, _file.Unit) = ($"DXF {_header.Version}", _header.Unit);
        if (!_hasEntities && !_scanner.IsBroken)
        {
            _findings.Fault(FindingCode.Syntax, TextPlace.WholeFile, "there is no section ENTITIES");
        }
        else if (!isEnded && !_file.IsIncomplete)
        {
            _findings.Fault(FindingCode.Syntax, TextPlace.WholeFile, "the file breaks off: 0 EOF is missing");
        }

        if (_header.Extents() is var (extents, at))
        {
            (_file.Area, _file.AreaPlace, _file.IsAreaTight) = (extents, at, true);
        }
        else if (_header.Limits() is var (limits, limitsAt))
        {
            (_file.Area, _file.AreaPlace) = (limits, limitsAt);
        }

        DxfLayerTable.Check(_file, _hasLayerTable || !_header.IsR12, _findings);
    }
}
