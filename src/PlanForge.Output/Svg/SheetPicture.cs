using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Svg;

/// <summary>The drawing of a sheet as SVG elements, layer by layer.</summary>
/// <param name="text">Where they go.</param>
/// <param name="frame">From the sheet's coordinates to the picture's.</param>
/// <param name="letters">The letters.</param>
internal sealed class SheetPicture(ByteText text, SvgFrame frame, LetterStamps letters)
{
    /// <summary>Appends the group of a layer, if anything is drawn on it.</summary>
    public void Append(Drawing drawing, Layer layer)
    {
        var isOpen = false;
        foreach (var item in drawing.Items)
        {
            if (item.Layer != layer)
            {
                continue;
            }

            if (!isOpen)
            {
                text.Append("<g id=\""u8).Append(SvgLayers.IdOf(layer))
                    .Append("\" fill=\"none\" stroke=\"#000000\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n"u8);
                isOpen = true;
            }

            switch (item)
            {
                case DrawingItem.Stroke stroke:
                    Append(stroke);
                    break;
                case DrawingItem.Fill fill:
                    Append(fill);
                    break;
                case DrawingItem.Text line:
                    Append(line);
                    break;
            }
        }

        text.Append(isOpen ? "</g>\n"u8 : ""u8);
    }

    private void Append(DrawingItem.Stroke stroke)
    {
        SvgPath.AppendElement(text, stroke.Path, frame);
        AppendWidth(stroke.Style.Width);
        var pattern = stroke.Style.Pattern;
        if (!pattern.IsEmpty)
        {
            text.Append(" stroke-dasharray=\""u8);
            for (var i = 0; i < pattern.Length; i++)
            {
                text.Append(i == 0 ? ""u8 : " "u8).Append(pattern[i], SvgPath.Decimals);
            }

            text.Append("\""u8);
        }

        text.Append("/>\n"u8);
    }

    private void Append(DrawingItem.Fill fill)
    {
        text.Append("<path d=\""u8);
        foreach (var path in fill.Paths)
        {
            SvgPath.Append(text, path, frame);
        }

        var grey = (uint)Math.Round(Math.Clamp(fill.Grey, 0, 1) * 255);
        text.Append("\" stroke=\"none\" fill=\"#"u8).AppendHex(grey, 2).AppendHex(grey, 2).AppendHex(grey, 2).Append("\"/>\n"u8);
    }

    /// <summary>All strokes of a line of lettering in one element: they are one thing to the eye.</summary>
    private void Append(DrawingItem.Text line)
    {
        var glyphs = TextLayout.Of(line.Content).Glyphs;
        if (glyphs.IsEmpty)
        {
            return;
        }

        text.Append("<path d=\""u8);
        foreach (var placed in glyphs)
        {
            var stamp = letters.Of(placed.Glyph, placed.Scale * line.Height, line.Angle);
            stamp.AppendAt(text, frame.Apply(placed.OriginIn(line.At, line.Height, line.Angle) + stamp.First));
        }

        text.Append("\""u8);
        AppendWidth(line.Height * StrokeAlphabet.StrokeWidth);
        text.Append("/>\n"u8);
    }

    private void AppendWidth(double width) => text.Append(" stroke-width=\""u8).Append(width, SvgPath.Decimals).Append("\""u8);
}
