using PlanForge.Geometry;

namespace PlanForge.Output.Dxf;

/// <summary>The remarks at the head of a file, and the HEADER and CLASSES sections.</summary>
internal static class DxfHeader
{
    private const int Millimetres = 4;
    private const int Metric = 1;
    private const int DecimalUnits = 2;

    /// <summary>Writes the title and the notes as remarks, before everything else.</summary>
    public static void WriteRemarks(DxfTags tags, CutContours contours)
    {
        const int Remark = 999;
        tags.Add(Remark, Ascii(contours.Title + ", mm"));
        foreach (var note in contours.Notes)
        {
            tags.Add(Remark, Ascii(note));
        }
    }

    /// <summary>Writes both; written last, because the seed is known only then.</summary>
    public static void Write(DxfTags tags, DxfHandles handles, Bounds2 bounds)
    {
        tags.Add(0, "SECTION"u8).Add(2, "HEADER"u8);
        tags.Add(9, "$ACADVER"u8).Add(1, "AC1015"u8);
        tags.Add(9, "$DWGCODEPAGE"u8).Add(3, "ANSI_1252"u8);
        tags.Add(9, "$INSUNITS"u8).Add(70, Millimetres);
        tags.Add(9, "$MEASUREMENT"u8).Add(70, Metric);
        tags.Add(9, "$LUNITS"u8).Add(70, DecimalUnits);
        tags.Add(9, "$EXTMIN"u8).AddPoint3(10, new(bounds.MinX, bounds.MinY));
        tags.Add(9, "$EXTMAX"u8).AddPoint3(10, new(bounds.MaxX, bounds.MaxY));
        tags.Add(9, "$LIMMIN"u8).AddPoint(10, new(bounds.MinX, bounds.MinY));
        tags.Add(9, "$LIMMAX"u8).AddPoint(10, new(bounds.MaxX, bounds.MaxY));
        tags.Add(9, "$HANDSEED"u8).AddHandle(5, handles.Next);
        tags.Add(0, "ENDSEC"u8);
        tags.Add(0, "SECTION"u8).Add(2, "CLASSES"u8).Add(0, "ENDSEC"u8);
    }

    // What old readers cannot take becomes a question mark, and a line must not end within a value.
    private static string Ascii(string text) => string.Create(text.Length, text, static (target, source) =>
    {
        for (var i = 0; i < source.Length; i++)
        {
            target[i] = source[i] is >= ' ' and <= '~' ? source[i] : '?';
        }
    });
}
