namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>
/// Reads DXF in text form, R12 to current: header variables, the table of layers, and the entities of the model. Blocks are
/// passed over, as nothing of them may be in a cut file.
/// </summary>
internal sealed class DxfFileReader
{
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
                new DxfEntityReader(_scanner, _file, _findings).Read(_header.Millimetres);
                break;
            default:
                while (_scanner.ReadInSection())
                {
                }

                break;
        }
    }

    private void ReadHeader()
    {
        var variable = "";
        while (_scanner.ReadInSection())
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
        while (_scanner.ReadInSection())
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
