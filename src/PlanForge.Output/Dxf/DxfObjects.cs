namespace PlanForge.Output.Dxf;

/// <summary>The OBJECTS section: the root dictionary with the empty dictionary of groups, and the end of the file.</summary>
internal static class DxfObjects
{
    /// <summary>Writes the section and the end.</summary>
    public static void Write(DxfTags tags, DxfHandles handles)
    {
        var (root, groups) = (handles.Take(), handles.Take());
        tags.Add(0, "SECTION"u8).Add(2, "OBJECTS"u8);
        tags.Add(0, "DICTIONARY"u8).AddHandle(5, root).AddHandle(330, 0).Add(100, "AcDbDictionary"u8).Add(281, 1)
            .Add(3, "ACAD_GROUP"u8).AddHandle(350, groups);
        tags.Add(0, "DICTIONARY"u8).AddHandle(5, groups).AddHandle(330, root).Add(100, "AcDbDictionary"u8).Add(281, 1);
        tags.Add(0, "ENDSEC"u8).Add(0, "EOF"u8);
    }
}
