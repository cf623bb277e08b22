using PlanForge.Geometry;

namespace PlanForge.Output.Dxf;

/// <summary>The handles of the two block records every file has.</summary>
internal readonly record struct DxfBlockRecords(uint ModelSpace, uint PaperSpace);

/// <summary>
/// The TABLES section with the nine tables that R2000 asks for (source: the DXF internals notes of ezdxf, "minimal R13+",
/// secondary: shared/check-values.md section 10).
/// </summary>
internal sealed class DxfTables
{
    private readonly DxfTags _tags;
    private readonly DxfHandles _handles;

    private DxfTables(DxfTags tags, DxfHandles handles) => (_tags, _handles) = (tags, handles);

    /// <summary>Writes the section.</summary>
    public static DxfBlockRecords Write(DxfTags tags, DxfHandles handles, IReadOnlyList<DxfLayer> layers, Bounds2 bounds)
    {
        var tables = new DxfTables(tags, handles);
        tags.Add(0, "SECTION"u8).Add(2, "TABLES"u8);
        tables.WriteViewports(bounds);
        tables.WriteLineTypes();
        tables.WriteLayers(layers);
        tables.WriteStyles();
        tables.Begin("VIEW"u8, 0);
        tables.End();
        tables.Begin("UCS"u8, 0);
        tables.End();
        tables.WriteApplications();
        tables.WriteDimensionStyles();
        var blocks = tables.WriteBlockRecords();
        tags.Add(0, "ENDSEC"u8);
        return blocks;
    }

    private uint Begin(ReadOnlySpan<byte> name, int count)
    {
        var handle = _handles.Take();
        _tags.Add(0, "TABLE"u8).Add(2, name).AddHandle(5, handle).AddHandle(330, 0).Add(100, "AcDbSymbolTable"u8).Add(70, count);
        return handle;
    }

    private void End() => _tags.Add(0, "ENDTAB"u8);

    private uint Record(ReadOnlySpan<byte> kind, ReadOnlySpan<byte> subclass, uint owner, int handleCode = 5)
    {
        var handle = _handles.Take();
        _tags.Add(0, kind).AddHandle(handleCode, handle).AddHandle(330, owner)
            .Add(100, "AcDbSymbolTableRecord"u8).Add(100, subclass);
        return handle;
    }

    /// <summary>The view a program opens with: the whole drawing.</summary>
    private void WriteViewports(Bounds2 bounds)
    {
        const double MarginRatio = 1.1;
        const double SmallestHeight = 1;
        var height = Math.Max(SmallestHeight, Math.Max(bounds.Width, bounds.Height) * MarginRatio);
        var table = Begin("VPORT"u8, 1);
        Record("VPORT"u8, "AcDbViewportTableRecord"u8, table);
        _tags.Add(2, "*ACTIVE"u8).Add(70, 0)
            .AddPoint(10, new(0, 0)).AddPoint(11, new(1, 1)).AddPoint(12, bounds.Centre)
            .AddPoint(13, new(0, 0)).AddPoint(14, new(10, 10)).AddPoint(15, new(10, 10))
            .AddPoint(16, new(0, 0)).AddLength(36, 1)
            .AddPoint3(17, new(0, 0))
            .AddLength(40, height).AddLength(41, 1).AddLength(42, 50).AddLength(43, 0).AddLength(44, 0).AddLength(50, 0).AddLength(51, 0)
            .Add(71, 0).Add(72, 100).Add(73, 1).Add(74, 3).Add(75, 0).Add(76, 0).Add(77, 0).Add(78, 0);
        End();
    }

    private void WriteLineTypes()
    {
        var table = Begin("LTYPE"u8, 3);
        WriteLineType(table, "ByBlock"u8, ""u8);
        WriteLineType(table, "ByLayer"u8, ""u8);
        WriteLineType(table, "Continuous"u8, "Solid line"u8);
        End();
    }

    private void WriteLineType(uint table, ReadOnlySpan<byte> name, ReadOnlySpan<byte> description)
    {
        const int AlignmentA = 65;
        Record("LTYPE"u8, "AcDbLinetypeTableRecord"u8, table);
        _tags.Add(2, name).Add(70, 0).Add(3, description).Add(72, AlignmentA).Add(73, 0).AddLength(40, 0);
    }

    private void WriteLayers(IReadOnlyList<DxfLayer> layers)
    {
        const int Foreground = 7;
        var table = Begin("LAYER"u8, layers.Count + 1);
        WriteLayer(table, new("0", Foreground, IsWork: true));
        foreach (var layer in layers)
        {
            WriteLayer(table, layer);
        }

        End();
    }

    private void WriteLayer(uint table, DxfLayer layer)
    {
        const int DefaultWeight = -3;
        const int NotPlotted = 0;
        Record("LAYER"u8, "AcDbLayerTableRecord"u8, table);
        _tags.Add(2, layer.Name).Add(70, layer.Flags).Add(62, layer.Colour).Add(6, "Continuous"u8);
        if (!layer.IsWork)
        {
            _tags.Add(290, NotPlotted);
        }

        _tags.Add(370, DefaultWeight);
    }

    private void WriteStyles()
    {
        var table = Begin("STYLE"u8, 1);
        Record("STYLE"u8, "AcDbTextStyleTableRecord"u8, table);
        _tags.Add(2, "Standard"u8).Add(70, 0).AddLength(40, 0).AddLength(41, 1).AddLength(50, 0).Add(71, 0).AddLength(42, 2.5)
            .Add(3, "txt"u8).Add(4, ""u8);
        End();
    }

    private void WriteApplications()
    {
        var table = Begin("APPID"u8, 1);
        Record("APPID"u8, "AcDbRegAppTableRecord"u8, table);
        _tags.Add(2, "ACAD"u8).Add(70, 0);
        End();
    }

    private void WriteDimensionStyles()
    {
        // Dimension styles keep their handle under 105, because 5 once meant something else in them.
        const int HandleCode = 105;
        var table = Begin("DIMSTYLE"u8, 1);
        _tags.Add(100, "AcDbDimStyleTable"u8);
        Record("DIMSTYLE"u8, "AcDbDimStyleTableRecord"u8, table, HandleCode);
        _tags.Add(2, "Standard"u8).Add(70, 0);
        End();
    }

    private DxfBlockRecords WriteBlockRecords()
    {
        var table = Begin("BLOCK_RECORD"u8, 2);
        var model = Record("BLOCK_RECORD"u8, "AcDbBlockTableRecord"u8, table);
        _tags.Add(2, DxfBlocks.ModelSpace);
        var paper = Record("BLOCK_RECORD"u8, "AcDbBlockTableRecord"u8, table);
        _tags.Add(2, DxfBlocks.PaperSpace);
        End();
        return new(model, paper);
    }
}
