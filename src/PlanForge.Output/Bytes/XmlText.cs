using System.Text;

namespace PlanForge.Output.Bytes;

/// <summary>Text inside XML elements.</summary>
internal static class XmlText
{
    /// <summary>Appends a text as UTF-8, markup escaped; what XML 1.0 cannot hold becomes the replacement character.</summary>
    public static ByteText AppendXml(this ByteText text, string value)
    {
        Span<byte> encoded = stackalloc byte[4];
        foreach (var rune in value.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&':
                    text.Append("&amp;"u8);
                    break;
                case '<':
                    text.Append("&lt;"u8);
                    break;
                case '>':
                    text.Append("&gt;"u8);
                    break;
                default:
                    var shown = IsAllowed(rune.Value) ? rune : Rune.ReplacementChar;
                    text.Append(encoded[..shown.EncodeToUtf8(encoded)]);
                    break;
            }
        }

        return text;
    }

    private static bool IsAllowed(int value) => value is >= 0x20 and not (0xFFFE or 0xFFFF);
}
