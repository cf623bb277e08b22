using System.Globalization;
using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Svg;

/// <summary>
/// Writes sheets and cut drawings as SVG 1.1 of true size: width and height in millimetres, the view box in the same numbers,
/// no transforms, no text elements, arcs as arcs.
/// </summary>
public static class SvgWriter
{
    // A machine follows the middle of a line, however wide; this one is thin enough to be taken for a path, not an area.
    private const double CutLineWidth = 0.1;

    /// <summary>A picture of a sheet on white paper. The same sheet gives the same bytes.</summary>
    /// <exception cref="ArgumentException">A coordinate that is not finite.</exception>
    public static byte[] Write(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new ByteText(1 << 15);
        Begin(text, sheet.Width, sheet.Height, string.Create(CultureInfo.InvariantCulture, $"{sheet.Number}  {sheet.Title}"));
        text.Append("<rect width=\""u8).Append(sheet.Width, SvgPath.Decimals)
            .Append("\" height=\""u8).Append(sheet.Height, SvgPath.Decimals).Append("\" fill=\"#ffffff\"/>\n"u8);
        var picture = new SheetPicture(text, new SvgFrame(0, sheet.Height));
        for (var layer = 0; layer < SvgLayers.Count; layer++)
        {
            picture.Append(sheet.Drawing, (Layer)layer);
        }

        return End(text);
    }

    /// <summary>A cut file: one path or circle a contour; the upper left corner of the drawing's extent is the origin.</summary>
    /// <param name="drawing">Strokes and texts, at least one of them; no fills.</param>
    /// <exception cref="ArgumentException">Nothing to cut, a fill, or a coordinate that is not finite.</exception>
    public static byte[] WriteCut(CutDrawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var contours = CutContours.Of(drawing);
        var bounds = contours.Bounds;
        var text = new ByteText(1 << 13);
        Begin(text, bounds.Width, bounds.Height, drawing.Name);
        var frame = new SvgFrame(bounds.MinX, bounds.MaxY);
        for (var layer = 0; layer < SvgLayers.Count; layer++)
        {
            AppendContours(text, contours, (Layer)layer, frame);
        }

        return End(text);
    }

    private static void AppendContours(ByteText text, CutContours contours, Layer layer, SvgFrame frame)
    {
        var isOpen = false;
        foreach (var (on, path) in contours.Paths)
        {
            if (on != layer)
            {
                continue;
            }

            if (!isOpen)
            {
                text.Append("<g id=\""u8).Append(SvgLayers.IdOf(layer)).Append("\" fill=\"none\" stroke=\""u8).Append(SvgLayers.ColourOf(layer))
                    .Append("\" stroke-width=\""u8).Append(CutLineWidth, SvgPath.Decimals).Append("\">\n"u8);
                isOpen = true;
            }

            SvgPath.AppendElement(text, path, frame).Append("/>\n"u8);
        }

        text.Append(isOpen ? "</g>\n"u8 : ""u8);
    }

    private static void Begin(ByteText text, double width, double height, string title)
    {
        text.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\""u8);
        text.Append(width, SvgPath.Decimals).Append("mm\" height=\""u8).Append(height, SvgPath.Decimals).Append("mm\" viewBox=\"0 0 "u8);
        text.Append(width, SvgPath.Decimals).Append(" "u8).Append(height, SvgPath.Decimals).Append("\">\n<title>"u8);
        text.AppendXml(title).Append("</title>\n"u8);
    }

    private static byte[] End(ByteText text) => text.Append("</svg>\n"u8).ToArray();
}
