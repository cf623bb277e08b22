namespace PlanForge.Output.Dxf;

/// <summary>The BLOCKS section: model and paper space, both empty here, as the ENTITIES section holds the model's content.</summary>
internal static class DxfBlocks
{
    /// <summary>Name of the model's block.</summary>
    public static ReadOnlySpan<byte> ModelSpace => "*Model_Space"u8;

    /// <summary>Name of the paper's block.</summary>
    public static ReadOnlySpan<byte> PaperSpace => "*Paper_Space"u8;

    /// <summary>Writes the section.</summary>
    public static void Write(DxfTags tags, DxfHandles handles, DxfBlockRecords records)
    {
        tags.Add(0, "SECTION"u8).Add(2, "BLOCKS"u8);
        Write(tags, handles, records.ModelSpace, ModelSpace);
        Write(tags, handles, records.PaperSpace, PaperSpace);
        tags.Add(0, "ENDSEC"u8);
    }

    private static void Write(DxfTags tags, DxfHandles handles, uint record, ReadOnlySpan<byte> name)
    {
        tags.Add(0, "BLOCK"u8).AddHandle(5, handles.Take()).AddHandle(330, record).Add(100, "AcDbEntity"u8).Add(8, "0"u8)
            .Add(100, "AcDbBlockBegin"u8).Add(2, name).Add(70, 0).AddPoint3(10, new(0, 0)).Add(3, name).Add(1, ""u8);
        tags.Add(0, "ENDBLK"u8).AddHandle(5, handles.Take()).AddHandle(330, record).Add(100, "AcDbEntity"u8).Add(8, "0"u8)
            .Add(100, "AcDbBlockEnd"u8);
    }
}
