using System.Globalization;
using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Svg;

/// <summary>
/// Writes sheets as SVG 1.1 of true size: width and height in millimetres, the view box in the same numbers,
/// no transforms, no text elements, arcs as arcs.
/// </summary>
public static class SvgWriter
{
    /// <summary>A picture of a sheet on white paper. The same sheet gives the same bytes.</summary>
    /// <exception cref="ArgumentException">A coordinate that is not finite.</exception>
    public static byte[] Write(Sheet sheet) => Write(sheet, new());

    /// <summary>The same, where letters are written out once for several pictures.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="letters">The letters of the pictures before it.</param>
    /// <exception cref="ArgumentException">A coordinate that is not finite.</exception>
    public static byte[] Write(Sheet sheet, LetterStamps letters)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(letters);
        var text = new ByteText(1 << 15);
        Begin(text, sheet.Width, sheet.Height, string.Create(CultureInfo.InvariantCulture, $"{sheet.Number}  {sheet.Title}"));
        text.Append("<rect width=\""u8).Append(sheet.Width, SvgPath.Decimals)
            .Append("\" height=\""u8).Append(sheet.Height, SvgPath.Decimals).Append("\" fill=\"#ffffff\"/>\n"u8);
        var picture = new SheetPicture(text, new SvgFrame(0, sheet.Height), letters);
        for (var layer = 0; layer < SvgLayers.Count; layer++)
        {
            picture.Append(sheet.Drawing, (Layer)layer);
        }

        return End(text);
    }

    internal static void Begin(ByteText text, double width, double height, string title)
    {
        text.Append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\""u8);
        text.Append(width, SvgPath.Decimals).Append("mm\" height=\""u8).Append(height, SvgPath.Decimals).Append("mm\" viewBox=\"0 0 "u8);
        text.Append(width, SvgPath.Decimals).Append(" "u8).Append(height, SvgPath.Decimals).Append("\">\n<title>"u8);
        text.AppendXml(title).Append("</title>\n"u8);
    }

    internal static byte[] End(ByteText text) => text.Append("</svg>\n"u8).ToArray();
}
