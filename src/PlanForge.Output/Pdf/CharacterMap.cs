using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>The map from a font's codes back to Unicode, by which text is searched and copied (ISO 32000-1, 9.10.3).</summary>
internal static class CharacterMap
{
    // The most entries one block of such a map may hold.
    private const int BlockSize = 100;

    private const char Replacement = '\uFFFD';

    /// <summary>The map of a font whose codes 1, 2, 3 and so on stand for these signs.</summary>
    public static ReadOnlySpan<byte> Of(ReadOnlySpan<string> signs)
    {
        var text = new ByteText();
        text.Append(
            """
            /CIDInit /ProcSet findresource begin
            12 dict begin
            begincmap
            /CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
            /CMapName /Adobe-Identity-UCS def
            /CMapType 2 def
            1 begincodespacerange
            <00> <FF>
            endcodespacerange

            """u8);
        for (var from = 0; from < signs.Length; from += BlockSize)
        {
            var to = Math.Min(from + BlockSize, signs.Length);
            text.Append(to - from).Append(" beginbfchar\n"u8);
            for (var i = from; i < to; i++)
            {
                text.Append("<"u8).AppendHex((uint)i + 1, digits: 2).Append("> <"u8);
                foreach (var character in signs[i])
                {
                    // Half of a surrogate pair is no character by itself.
                    text.AppendHex(char.IsSurrogate(character) ? Replacement : character, digits: 4);
                }

                text.Append(">\n"u8);
            }

            text.Append("endbfchar\n"u8);
        }

        return text.Append(
            """
            endcmap
            CMapName currentdict /CMap defineresource pop
            end
            end

            """u8).Written;
    }
}
