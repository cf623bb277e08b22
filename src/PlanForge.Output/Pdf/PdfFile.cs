using System.Security.Cryptography;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>The file structure of PDF 1.7 (ISO 32000-1, 7.5): numbered objects, the table of where they start, the trailer.</summary>
internal sealed class PdfFile
{
    private readonly ByteText _text = new(1 << 16);
    private readonly List<int> _offsets = [];

    /// <summary>Starts a file; the second line's bytes over 127 tell programs that it is not plain text.</summary>
    public PdfFile() => _text.Append("%PDF-1.7\n%"u8).Append([0xE2, 0xE3, 0xCF, 0xD3]).Append("\n"u8);

    /// <summary>Gives a number to an object that is written later, so that others can refer to it.</summary>
    public int Reserve()
    {
        _offsets.Add(0);
        return _offsets.Count;
    }

    /// <summary>Begins an object: its value is to be appended to the result, then <see cref="End"/> called.</summary>
    public ByteText Begin(int number)
    {
        _offsets[number - 1] = _text.Length;
        return _text.Append(number).Append(" 0 obj\n"u8);
    }

    /// <summary>Ends the object begun last.</summary>
    public void End() => _text.Append("\nendobj\n"u8);

    /// <summary>Writes a whole stream object, compressed unless it is short.</summary>
    /// <param name="number">Its reserved number.</param>
    /// <param name="content">What it holds before compression.</param>
    /// <param name="entries">Entries of its dictionary besides length and filter, each followed by a blank.</param>
    /// <param name="mayPack">False for a stream that must be readable as it stands.</param>
    public void WriteStream(int number, ReadOnlySpan<byte> content, ReadOnlySpan<byte> entries = default, bool mayPack = true) =>
        WriteStream(number, mayPack ? PackedStream.Of(content) : new(content.ToArray(), false), entries);

    /// <summary>Writes a whole stream object.</summary>
    /// <param name="number">Its reserved number.</param>
    /// <param name="stream">What it holds.</param>
    /// <param name="entries">Entries of its dictionary besides length and filter, each followed by a blank.</param>
    public void WriteStream(int number, PackedStream stream, ReadOnlySpan<byte> entries = default)
    {
        Begin(number).Append("<< "u8).Append(entries).Append(stream.IsPacked ? "/Filter /FlateDecode /Length "u8 : "/Length "u8)
            .Append(stream.Bytes.Length).Append(" >>\nstream\n"u8).Append(stream.Bytes.Span).Append("\nendstream"u8);
        End();
    }

    /// <summary>Closes the file with a document id that is a hash of all that was written.</summary>
    /// <param name="catalog">Number of the catalog.</param>
    /// <param name="info">Number of the information dictionary.</param>
    public byte[] Finish(int catalog, int info)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(_text.Written, hash);
        var start = _text.Length;
        _text.Append("xref\n0 "u8).Append(_offsets.Count + 1).Append("\n0000000000 65535 f \n"u8);
        foreach (var offset in _offsets)
        {
            AppendTenDigits(offset);
            _text.Append(" 00000 n \n"u8);
        }

        _text.Append("trailer\n<< /Size "u8).Append(_offsets.Count + 1);
        _text.Append(" /Root "u8).AppendReference(catalog).Append(" /Info "u8).AppendReference(info).Append(" /ID ["u8);
        AppendId(hash[..16]);
        AppendId(hash[..16]);
        _text.Append("] >>\nstartxref\n"u8).Append(start).Append("\n%%EOF\n"u8);
        return _text.ToArray();
    }

    private void AppendTenDigits(int number)
    {
        for (var place = 1_000_000_000; place > 0; place /= 10)
        {
            _text.Append((byte)('0' + (number / place % 10)));
        }
    }

    private void AppendId(ReadOnlySpan<byte> id)
    {
        _text.Append("<"u8);
        foreach (var value in id)
        {
            _text.AppendHex(value, digits: 2);
        }

        _text.Append(">"u8);
    }
}
