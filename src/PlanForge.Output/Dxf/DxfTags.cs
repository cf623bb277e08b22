using PlanForge.Geometry;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Dxf;

/// <summary>The lines of a DXF file: pairs of a group code and a value. Lines end in CR LF, as the oldest readers expect.</summary>
internal sealed class DxfTags
{
    // A millionth of a millimetre; bulges and angles need more, or long flat arcs would move.
    private const int LengthDecimals = 6;
    private const int RatioDecimals = 10;

    private readonly ByteText _text = new(1 << 14);

    /// <summary>What has been written so far.</summary>
    public ReadOnlySpan<byte> Written => _text.Written;

    /// <summary>A text value.</summary>
    public DxfTags Add(int code, ReadOnlySpan<byte> value)
    {
        AppendCode(code).Append(value);
        return EndLine();
    }

    /// <summary>A text value of ASCII characters.</summary>
    public DxfTags Add(int code, string ascii)
    {
        AppendCode(code);
        foreach (var character in ascii)
        {
            _text.Append((byte)character);
        }

        return EndLine();
    }

    /// <summary>An integer.</summary>
    public DxfTags Add(int code, int value)
    {
        AppendCode(code).Append(value);
        return EndLine();
    }

    /// <summary>A length in millimetres.</summary>
    public DxfTags AddLength(int code, double value)
    {
        AppendCode(code).Append(value, LengthDecimals);
        return EndLine();
    }

    /// <summary>A bulge, or an angle in degrees.</summary>
    public DxfTags AddRatio(int code, double value)
    {
        AppendCode(code).Append(value, RatioDecimals);
        return EndLine();
    }

    /// <summary>A point: x under the code, y under the code plus ten.</summary>
    public DxfTags AddPoint(int code, Point2 point) => AddLength(code, point.X).AddLength(code + 10, point.Y);

    /// <summary>A point of the plane z = 0 as three numbers.</summary>
    public DxfTags AddPoint3(int code, Point2 point) => AddPoint(code, point).AddLength(code + 20, 0);

    /// <summary>A handle: the object's own (5) or that of another.</summary>
    public DxfTags AddHandle(int code, uint handle)
    {
        AppendCode(code).AppendHex(handle);
        return EndLine();
    }

    private ByteText AppendCode(int code) => _text.Append(code).Append("\r\n"u8);

    private DxfTags EndLine()
    {
        _text.Append("\r\n"u8);
        return this;
    }
}
