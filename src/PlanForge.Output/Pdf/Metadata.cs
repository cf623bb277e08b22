using PlanForge.Drafting.Model;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>
/// What a document says about itself, twice: the information dictionary (ISO 32000-1, 14.3.3) and the same as XMP (ISO 16684-1).
/// Neither holds a date or an id that changes.
/// </summary>
internal static class Metadata
{
    /// <summary>Writes the information dictionary.</summary>
    public static void WriteInformation(PdfFile file, int number, PageSet set, PdfInfo info)
    {
        var text = file.Begin(number).Append("<< /Title "u8).AppendString(set.Title);
        AppendEntry(text, " /Author "u8, info.Author);
        AppendEntry(text, " /Subject "u8, info.Subject);
        AppendEntry(text, " /Keywords "u8, info.Keywords);
        text.Append(" /Producer "u8).AppendString(info.Producer).Append(" >>"u8);
        file.End();
    }

    /// <summary>Writes the XMP packet; uncompressed, so that programs that know nothing of PDF find it.</summary>
    public static void WritePacket(PdfFile file, int number, PageSet set, PdfInfo info)
    {
        // The id is the same in every packet: ISO 16684-1, 7.3.2.
        var text = new ByteText(1024);
        text.Append(
            """
            <?xpacket begin="﻿" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
            <dc:format>application/pdf</dc:format>

            """u8);
        AppendElement(text, "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">"u8, set.Title, "</rdf:li></rdf:Alt></dc:title>\n"u8);
        AppendElement(text, "<dc:language><rdf:Bag><rdf:li>"u8, set.Language, "</rdf:li></rdf:Bag></dc:language>\n"u8);
        AppendElement(text, "<dc:creator><rdf:Seq><rdf:li>"u8, info.Author, "</rdf:li></rdf:Seq></dc:creator>\n"u8);
        AppendElement(text, "<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">"u8, info.Subject, "</rdf:li></rdf:Alt></dc:description>\n"u8);
        AppendElement(text, "<pdf:Keywords>"u8, info.Keywords, "</pdf:Keywords>\n"u8);
        AppendElement(text, "<pdf:Producer>"u8, info.Producer, "</pdf:Producer>\n"u8);
        text.Append("</rdf:Description>\n</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"r\"?>"u8);
        file.WriteStream(number, text.Written, "/Type /Metadata /Subtype /XML "u8, mayPack: false);
    }

    private static void AppendEntry(ByteText text, ReadOnlySpan<byte> key, string value)
    {
        if (value.Length > 0)
        {
            text.Append(key).AppendString(value);
        }
    }

    private static void AppendElement(ByteText text, ReadOnlySpan<byte> before, string value, ReadOnlySpan<byte> after)
    {
        if (value.Length > 0)
        {
            text.Append(before).AppendXml(value).Append(after);
        }
    }
}
