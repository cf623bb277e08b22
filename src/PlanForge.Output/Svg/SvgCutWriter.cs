using PlanForge.Drafting.Cutting;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Svg;

/// <summary>
/// Writes cut drawings and whole sheets of stock as SVG 1.1 of true size: one path or circle a contour, each operation in its
/// colour, in the order of the profile, part by part. Notes are in the description of the file, never drawn.
/// </summary>
public static class SvgCutWriter
{
    // A machine follows the middle of a line, however wide; this one is thin enough to be taken for a path, not an area.
    private const double LineWidth = 0.1;

    /// <summary>The file of a part; the upper left corner of the work's extent is the origin.</summary>
    /// <param name="drawing">Strokes and texts, at least one of them; no fills.</param>
    /// <param name="profile">The shop's colours and order.</param>
    /// <exception cref="ArgumentException">Nothing to cut, a fill, a layer that means no work, or a coordinate that is not finite.</exception>
    public static byte[] Write(CutDrawing drawing, CutProfile profile)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(profile);
        var contours = CutContours.Of(drawing, profile);
        var text = Begin(contours, profile, contours.Bounds);
        AppendOperations(text, contours.Parts[0], profile, new(contours.Bounds.MinX, contours.Bounds.MaxY), "");
        return SvgWriter.End(text);
    }

    /// <summary>The file of a sheet of stock, as large as the sheet; a group for each part.</summary>
    /// <param name="sheet">The sheet with its parts, at least one.</param>
    /// <param name="profile">The shop's colours and order.</param>
    /// <exception cref="ArgumentException">Nothing to cut, a fill, a layer that means no work, or a coordinate that is not finite.</exception>
    public static byte[] Write(CutSheet sheet, CutProfile profile)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(profile);
        var contours = CutContours.Of(sheet, profile);
        var text = Begin(contours, profile, contours.Stock!.Value);
        for (var i = 0; i < contours.Parts.Length; i++)
        {
            var id = FormattableString.Invariant($"part-{i + 1}");
            text.Append("<g id=\""u8).AppendXml(id).Append("\">\n<title>"u8).AppendXml(contours.Parts[i].Name).Append("</title>\n"u8);
            AppendOperations(text, contours.Parts[i], profile, new(0, sheet.Height), id + "-");
            text.Append("</g>\n"u8);
        }

        return SvgWriter.End(text);
    }

    private static ByteText Begin(CutContours contours, CutProfile profile, Bounds2 area)
    {
        var text = new ByteText(1 << 13);
        SvgWriter.Begin(text, area.Width, area.Height, contours.Title);
        if (profile.Find(CutOperation.Notes) is not null && !contours.Notes.IsEmpty)
        {
            text.Append("<desc>"u8).AppendXml(string.Join("; ", contours.Notes)).Append("</desc>\n"u8);
        }

        return text;
    }

    private static void AppendOperations(ByteText text, CutPart part, CutProfile profile, SvgFrame frame, string prefix)
    {
        foreach (var style in profile.Operations)
        {
            var isOpen = false;
            foreach (var (operation, path) in part.Steps)
            {
                if (operation != style.Operation)
                {
                    continue;
                }

                if (!isOpen)
                {
                    text.Append("<g id=\""u8).AppendXml(prefix).Append(IdOf(operation)).Append("\" fill=\"none\" stroke=\"#"u8)
                        .AppendHex((uint)style.Stroke, 6).Append("\" stroke-width=\""u8).Append(LineWidth, SvgPath.Decimals).Append("\">\n"u8);
                    isOpen = true;
                }

                SvgPath.AppendElement(text, path, frame).Append("/>\n"u8);
            }

            text.Append(isOpen ? "</g>\n"u8 : ""u8);
        }
    }

    private static ReadOnlySpan<byte> IdOf(CutOperation operation) => operation switch
    {
        CutOperation.Engrave => "engrave"u8,
        CutOperation.Score => "score"u8,
        CutOperation.CutInside => "cut-inside"u8,
        _ => "cut-outside"u8,
    };
}
