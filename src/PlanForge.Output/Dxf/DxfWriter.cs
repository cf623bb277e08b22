using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Dxf;

/// <summary>
/// Writes cut drawings and whole sheets of stock as DXF in text form: lines, arcs, circles and polylines in millimetres, and
/// nothing else. Lettering becomes single strokes; line types are not written, as a machine cuts along the whole line.
/// </summary>
/// <remarks>
/// Entities stand part by part in the order of the profile. Notes are strokes on a layer that is frozen and, in R2000, not
/// plotted; they are also remarks (group 999) at the head of the file. The extents are those of the work.
/// </remarks>
public static class DxfWriter
{
    /// <summary>The file of a part. The same drawing gives the same bytes.</summary>
    /// <param name="drawing">Strokes and texts, at least one of them; no fills.</param>
    /// <param name="profile">The shop's layers and order.</param>
    /// <param name="version">The version of the format.</param>
    /// <exception cref="ArgumentException">Nothing to cut, a fill, a layer that means no work, or a coordinate that is not finite.</exception>
    public static byte[] Write(CutDrawing drawing, CutProfile profile, DxfVersion version = DxfVersion.R2000)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(profile);
        return Write(CutContours.Of(drawing, profile), profile, version);
    }

    /// <summary>The file of a sheet of stock. The same sheet gives the same bytes.</summary>
    /// <param name="sheet">The sheet with its parts, at least one.</param>
    /// <param name="profile">The shop's layers and order.</param>
    /// <param name="version">The version of the format.</param>
    /// <exception cref="ArgumentException">Nothing to cut, a fill, a layer that means no work, or a coordinate that is not finite.</exception>
    public static byte[] Write(CutSheet sheet, CutProfile profile, DxfVersion version = DxfVersion.R2000)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(profile);
        return Write(CutContours.Of(sheet, profile), profile, version);
    }

    private static byte[] Write(CutContours contours, CutProfile profile, DxfVersion version) =>
        version == DxfVersion.R12 ? WriteR12(contours, profile) : WriteR2000(contours, profile);

    private static byte[] WriteR2000(CutContours contours, CutProfile profile)
    {
        var handles = new DxfHandles();
        var body = new DxfTags();
        var blocks = DxfTables.Write(body, handles, DxfLayers.Used(contours, profile), contours.Bounds);
        DxfBlocks.Write(body, handles, blocks);
        AddEntities(body, new DxfR2000Entities(body, handles, blocks.ModelSpace), contours, profile);
        DxfObjects.Write(body, handles);
        var head = new DxfTags();
        DxfHeader.WriteRemarks(head, contours);
        DxfHeader.Write(head, handles, contours.Bounds);
        return Joined(head, body);
    }

    private static byte[] WriteR12(CutContours contours, CutProfile profile)
    {
        var head = new DxfTags();
        DxfHeader.WriteRemarks(head, contours);
        DxfR12Head.Write(head, DxfLayers.Used(contours, profile), contours.Bounds);
        var body = new DxfTags();
        AddEntities(body, new DxfR12Entities(body), contours, profile);
        body.Add(0, "EOF"u8);
        return Joined(head, body);
    }

    private static void AddEntities(DxfTags body, DxfEntities entities, CutContours contours, CutProfile profile)
    {
        body.Add(0, "SECTION"u8).Add(2, "ENTITIES"u8);
        if (profile.Find(CutOperation.Notes) is { } notes)
        {
            foreach (var path in contours.NotePaths())
            {
                entities.Add(path, notes.Layer);
            }
        }

        foreach (var part in contours.Parts)
        {
            foreach (var (operation, path) in part.Steps)
            {
                entities.Add(path, profile.Find(operation)!.Layer);
            }
        }

        body.Add(0, "ENDSEC"u8);
    }

    private static byte[] Joined(DxfTags head, DxfTags body) =>
        new ByteText(head.Written.Length + body.Written.Length).Append(head.Written).Append(body.Written).ToArray();
}
