using System.Buffers.Binary;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Compression;

/// <summary>
/// Packs bytes into a zlib stream (RFC 1950). The framework can do so too, but what it gives depends on the version of the
/// native library it happens to find, and the same sheets must give the same bytes anywhere, any day.
/// </summary>
internal static class Flate
{
    // Deflate with a window of 32 KiB, no preset dictionary, default level; together a multiple of 31.
    private static ReadOnlySpan<byte> Header => [0x78, 0x9C];

    /// <summary>Packs bytes, checksum included.</summary>
    public static ReadOnlySpan<byte> Pack(ReadOnlySpan<byte> content)
    {
        var packed = new ByteText((content.Length / 2) + 64);
        packed.Append(Header);
        var bits = new BitText(packed);
        using var matcher = new Matcher(content);
        do
        {
            var symbols = matcher.Next();
            DeflateBlock.Write(bits, symbols, isLast: matcher.IsAtEnd);
        }
        while (!matcher.IsAtEnd);

        bits.Flush();
        Span<byte> checksum = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(checksum, Adler32(content));
        return packed.Append(checksum).Written;
    }

    /// <summary>The checksum of RFC 1950, section 8.</summary>
    private static uint Adler32(ReadOnlySpan<byte> content)
    {
        const uint Modulus = 65521;

        // The most steps after which the second sum still fits 32 bits.
        const int Stride = 5552;
        uint sum = 1, sumOfSums = 0;
        while (!content.IsEmpty)
        {
            var stretch = content[..Math.Min(Stride, content.Length)];
            foreach (var value in stretch)
            {
                sum += value;
                sumOfSums += sum;
            }

            sum %= Modulus;
            sumOfSums %= Modulus;
            content = content[stretch.Length..];
        }

        return (sumOfSums << 16) | sum;
    }
}
