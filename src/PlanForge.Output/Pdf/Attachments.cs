using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>The files a document was made from, embedded and named as its source (ISO 32000-1, 7.11.4; ISO 32000-2, 14.13).</summary>
internal sealed class Attachments
{
    private readonly PdfAttachment[] _files;
    private readonly int[] _numbers;

    /// <summary>Reserves a file specification for each.</summary>
    public Attachments(PdfFile file, PdfInfo info)
    {
        // A name tree is in the order of its keys.
        _files = [.. info.Attachments.OrderBy(attachment => attachment.Name, StringComparer.Ordinal)];
        _numbers = [.. _files.Select(_ => file.Reserve())];
    }

    /// <summary>Appends the catalog's entries.</summary>
    public void AppendCatalogEntries(ByteText text)
    {
        if (_files.Length == 0)
        {
            return;
        }

        text.Append("\n/AF "u8).AppendReferences(_numbers).Append(" /Names << /EmbeddedFiles << /Names ["u8);
        for (var i = 0; i < _files.Length; i++)
        {
            text.Append(" "u8).AppendString(_files[i].Name).Append(" "u8).AppendReference(_numbers[i]);
        }

        text.Append(" ] >> >>"u8);
    }

    /// <summary>Writes the files and their specifications.</summary>
    public void Write(PdfFile file, KeptPages kept)
    {
        for (var i = 0; i < _files.Length; i++)
        {
            var content = file.Reserve();
            file.WriteStream(content, kept.Packed(_files[i].Content.Span), Entries(_files[i]).Written);
            file.Begin(_numbers[i]).Append("<< /Type /Filespec /F "u8).AppendString(_files[i].Name)
                .Append(" /UF "u8).AppendString(_files[i].Name)
                .Append(" /AFRelationship /Source /EF << /F "u8).AppendReference(content)
                .Append(" /UF "u8).AppendReference(content).Append(" >> >>"u8);
            file.End();
        }
    }

    [SuppressMessage("Security", "CA5351", Justification = "The format asks for MD5 as a checksum (ISO 32000-1, Table 46); it protects nothing.")]
    private static ByteText Entries(PdfAttachment attachment)
    {
        Span<byte> hash = stackalloc byte[MD5.HashSizeInBytes];
        MD5.HashData(attachment.Content.Span, hash);
        var text = new ByteText(256).Append("/Type /EmbeddedFile /Subtype "u8).AppendName(attachment.MediaType)
            .Append(" /Params << /Size "u8).Append(attachment.Content.Length).Append(" /CheckSum <"u8);
        foreach (var value in hash)
        {
            text.AppendHex(value, digits: 2);
        }

        return text.Append("> >> "u8);
    }
}
