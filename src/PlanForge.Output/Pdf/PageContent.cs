using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

namespace PlanForge.Output.Pdf;

/// <summary>A drawing as a content stream. One matrix takes millimetres to points; all else is millimetres.</summary>
internal sealed class PageContent
{
    /// <summary>Of millimetres: 1e-5 mm is 3e-5 pt.</summary>
    public const int Decimals = 5;

    // Nine leave the end of a text half a metre long right to a millionth of a millimetre.
    private const int TurnDecimals = 9;

    private readonly ByteText _text = new(1 << 15);
    private readonly Repertoire _signs;
    private readonly PdfPath _path;
    private Layer? _layer;
    private LineStyle? _style;
    private double _grey;

    private PageContent(Repertoire signs)
    {
        _signs = signs;
        _path = new(_text, Decimals, CurveTolerance.Bezier);
    }

    /// <summary>The content stream that goes before a whole sheet's: from here on all is millimetres.</summary>
    public static ReadOnlySpan<byte> BeforeSheet(PageFrame frame) => frame.AppendMatrix(new ByteText(128)).Append(" q\n"u8).Written;

    /// <summary>The content stream that goes after a whole sheet's: the page's own drawing, in the state that was before the sheet.</summary>
    public static ReadOnlySpan<byte> AfterSheet(Drawing drawing, Repertoire signs)
    {
        var content = new PageContent(signs);
        content._text.Append("Q\n"u8);
        return content.Draw(drawing);
    }

    /// <summary>The content stream of a page: its windows on sheets, then its own drawing over them.</summary>
    public static ReadOnlySpan<byte> OfPage(Page page, PageFrame frame, SheetForms forms, Repertoire signs)
    {
        var content = new PageContent(signs);
        frame.AppendMatrix(content._text).Append("\n"u8);
        foreach (var window in page.Windows)
        {
            content.Show(window, forms);
        }

        return content.Draw(page.Drawing);
    }

    /// <summary>The content stream of a form whose space is millimetres.</summary>
    public static ReadOnlySpan<byte> OfForm(Drawing drawing, Repertoire signs) => new PageContent(signs).Draw(drawing);

    /// <summary>Cuts off what lies outside a window and draws the sheet behind it.</summary>
    private void Show(SheetWindow window, SheetForms forms)
    {
        var place = window.Place;
        _text.Append("q "u8);
        foreach (var number in (ReadOnlySpan<double>)[place.MinX, place.MinY, place.Width, place.Height])
        {
            _text.Append(number, Decimals).Append(" "u8);
        }

        _text.Append("re W n 1 0 0 1 "u8).Append(window.Move.X, Decimals).Append(" "u8).Append(window.Move.Y, Decimals).Append(" cm "u8);
        forms.AppendResourceName(_text, window.Sheet).Append(" Do Q\n"u8);
    }

    private ReadOnlySpan<byte> Draw(Drawing drawing)
    {
        _text.Append(drawing.Items.IsEmpty ? ""u8 : "1 J 1 j\n"u8);
        foreach (var item in drawing.Items)
        {
            Enter(item.Layer);
            switch (item)
            {
                case DrawingItem.Stroke stroke:
                    Draw(stroke);
                    break;
                case DrawingItem.Fill fill:
                    Draw(fill);
                    break;
                case DrawingItem.Text text:
                    Draw(text);
                    break;
            }
        }

        Enter(null);
        return _text.Written;
    }

    private void Enter(Layer? layer)
    {
        if (layer == _layer)
        {
            return;
        }

        if (_layer is not null)
        {
            _text.Append("EMC\n"u8);
        }

        if (layer is { } entered)
        {
            LayerGroups.AppendResourceName(_text.Append("/OC "u8), entered).Append(" BDC\n"u8);
        }

        _layer = layer;
    }

    private void Draw(DrawingItem.Stroke stroke)
    {
        if (_style != stroke.Style)
        {
            Use(stroke.Style);
        }

        _path.Append(stroke.Path);
        _text.Append("S\n"u8);
    }

    /// <summary>Sets pen and dashes; with round ends the lengths of a pattern are the way of the pen (ISO 128-20, from memory).</summary>
    private void Use(LineStyle style)
    {
        var pattern = style.Pattern;
        _text.Append(style.Width, Decimals).Append(" w ["u8);
        for (var i = 0; i < pattern.Length; i++)
        {
            _text.Append(i == 0 ? ""u8 : " "u8).Append(pattern[i], Decimals);
        }

        _text.Append("] 0 d\n"u8);
        _style = style;
    }

    private void Draw(DrawingItem.Fill fill)
    {
        if (fill.Grey != _grey)
        {
            _text.Append(fill.Grey, Decimals).Append(" g\n"u8);
            _grey = fill.Grey;
        }

        foreach (var path in fill.Paths)
        {
            _path.Append(path);
        }

        _text.Append("f\n"u8);
    }

    private void Draw(DrawingItem.Text text)
    {
        if (text.Content.Length == 0)
        {
            return;
        }

        var (sin, cos) = Math.SinCos(text.Angle);
        _text.Append("BT "u8);
        foreach (var entry in (ReadOnlySpan<double>)[cos, sin, -sin, cos])
        {
            _text.Append(entry, TurnDecimals).Append(" "u8);
        }

        _text.Append(text.At.X, Decimals).Append(" "u8).Append(text.At.Y, Decimals).Append(" Tm\n"u8);
        var current = -1;
        foreach (var sign in Signs.Of(text.Content))
        {
            var (font, code) = _signs.Find(text.Content, sign);
            if (font != current)
            {
                _text.Append(current < 0 ? ""u8 : "> Tj "u8);
                _signs.AppendResourceName(_text, font).Append(" "u8).Append(text.Height, Decimals).Append(" Tf <"u8);
                current = font;
            }

            _text.AppendHex((uint)code, digits: 2);
        }

        _text.Append("> Tj ET\n"u8);
    }
}
