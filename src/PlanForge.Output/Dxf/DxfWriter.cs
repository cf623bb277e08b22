using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Dxf;

/// <summary>
/// Writes a cut drawing as DXF AC1015 (R2000) in text form: lines, arcs, circles and polylines in millimetres, and nothing
/// else. Lettering becomes single strokes; line types are not written, as a machine cuts along the whole line.
/// </summary>
public static class DxfWriter
{
    /// <summary>The whole file. The same drawing gives the same bytes.</summary>
    /// <param name="drawing">Strokes and texts, at least one of them; no fills.</param>
    /// <param name="options">Names and colours of the layers.</param>
    /// <exception cref="ArgumentException">Nothing to cut, a fill, a layer without a name, or a coordinate that is not finite.</exception>
    public static byte[] Write(CutDrawing drawing, DxfOptions options)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(options);
        var handles = new DxfHandles();
        var body = new DxfTags();
        var contours = CutContours.Of(drawing);
        var blocks = DxfTables.Write(body, handles, DxfLayers.Used(contours, options), contours.Bounds);
        DxfBlocks.Write(body, handles, blocks);
        body.Add(0, "SECTION"u8).Add(2, "ENTITIES"u8);
        var entities = new DxfEntities(body, handles, blocks.ModelSpace);
        foreach (var (layer, path) in contours.Paths)
        {
            entities.Add(path, DxfLayers.Find(options, layer).Name);
        }

        body.Add(0, "ENDSEC"u8);
        DxfObjects.Write(body, handles);
        var header = new DxfTags();
        DxfHeader.Write(header, handles, contours.Bounds);
        return new ByteText(header.Written.Length + body.Written.Length).Append(header.Written).Append(body.Written).ToArray();
    }
}
