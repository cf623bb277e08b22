using System.IO.Compression;

namespace PlanForge.Output.Pdf;

/// <summary>Compression of streams (FlateDecode: RFC 1950).</summary>
internal static class Flate
{
    /// <summary>Packs bytes into a zlib stream, checksum included.</summary>
    public static byte[] Pack(ReadOnlySpan<byte> content)
    {
        var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal))
        {
            zlib.Write(content);
        }

        return packed.ToArray();
    }
}
