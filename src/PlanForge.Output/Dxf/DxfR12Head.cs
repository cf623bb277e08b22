using PlanForge.Geometry;

namespace PlanForge.Output.Dxf;

/// <summary>Header and tables of an R12 file: no handles, no classes, no blocks, no objects.</summary>
internal static class DxfR12Head
{
    private const int Foreground = 7;

    /// <summary>Writes both sections.</summary>
    public static void Write(DxfTags tags, IReadOnlyList<DxfLayer> layers, Bounds2 bounds)
    {
        Point2 least = new(bounds.MinX, bounds.MinY), greatest = new(bounds.MaxX, bounds.MaxY);
        tags.Add(0, "SECTION"u8).Add(2, "HEADER"u8);
        tags.Add(9, "$ACADVER"u8).Add(1, "AC1009"u8);
        tags.Add(9, "$EXTMIN"u8).AddPoint3(10, least);
        tags.Add(9, "$EXTMAX"u8).AddPoint3(10, greatest);
        tags.Add(9, "$LIMMIN"u8).AddPoint(10, least);
        tags.Add(9, "$LIMMAX"u8).AddPoint(10, greatest);
        tags.Add(0, "ENDSEC"u8);

        tags.Add(0, "SECTION"u8).Add(2, "TABLES"u8);
        tags.Add(0, "TABLE"u8).Add(2, "LTYPE"u8).Add(70, 1);
        tags.Add(0, "LTYPE"u8).Add(2, "CONTINUOUS"u8).Add(70, 0).Add(3, "Solid line"u8).Add(72, 65).Add(73, 0).AddLength(40, 0);
        tags.Add(0, "ENDTAB"u8);
        tags.Add(0, "TABLE"u8).Add(2, "LAYER"u8).Add(70, layers.Count + 1);
        WriteLayer(tags, new("0", Foreground, IsWork: true));
        foreach (var layer in layers)
        {
            WriteLayer(tags, layer);
        }

        tags.Add(0, "ENDTAB"u8).Add(0, "ENDSEC"u8);
    }

    private static void WriteLayer(DxfTags tags, DxfLayer layer) =>
        tags.Add(0, "LAYER"u8).Add(2, layer.Name).Add(70, layer.Flags).Add(62, layer.Colour).Add(6, "CONTINUOUS"u8);
}
