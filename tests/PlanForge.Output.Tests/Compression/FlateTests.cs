using System.IO.Compression;
using System.Text;
using CsCheck;
using PlanForge.Output.Compression;

namespace PlanForge.Output.Tests.Compression;

// Truth: the zlib of the framework must unpack what ours packed, checksum included.
public sealed class FlateTests
{
    [Fact]
    public void Random_bytes_come_back() =>
        Gen.Byte.Array[0, 3000].Sample(ComesBack, iter: 300);

    [Fact]
    public void Repetitive_bytes_come_back() =>
        Gen.Byte[0, 3].Array[0, 5000].Sample(ComesBack, iter: 300);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(258)]
    [InlineData(259)]
    [InlineData(100_000)]
    public void A_single_byte_repeated_comes_back(int count) => Assert.True(ComesBack(new byte[count]));

    [Fact]
    public void Copies_reach_back_a_whole_window_and_no_farther()
    {
        foreach (var gap in (int[])[32_767, 32_768, 32_769])
        {
            var content = new byte[gap + 300];
            for (var i = 0; i < 256; i++)
            {
                content[i] = content[gap + i] = (byte)i;
            }

            Assert.True(ComesBack(content));
        }
    }

    [Fact]
    public void Skewed_frequencies_that_ask_for_too_long_codes_come_back()
    {
        // Fibonacci frequencies make the deepest Huffman trees: 24 symbols would need codes of 23 bits.
        var content = new List<byte>();
        var (count, next) = (1, 1);
        for (byte symbol = 0; symbol < 24; symbol++)
        {
            for (var i = 0; i < count; i++)
            {
                content.Insert(i * 7919 % (content.Count + 1), symbol);
            }

            (count, next) = (next, count + next);
        }

        Assert.True(ComesBack([.. content]));
    }

    [Fact]
    public void Content_streams_pack_about_as_well_as_with_the_framework()
    {
        var text = new StringBuilder();
        var random = new Random(1);
        for (var i = 0; i < 30_000; i++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{random.Next(100_000) / 100.0} {random.Next(100_000) / 100.0} l\n");
        }

        var content = Encoding.ASCII.GetBytes(text.ToString());
        Assert.True(ComesBack(content));
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zlib.Write(content);
        }

        Assert.InRange(Flate.Pack(content).Length, 0, packed.Length * 1.06);
    }

    private static bool ComesBack(byte[] content)
    {
        using var packed = new MemoryStream(Flate.Pack(content).ToArray());
        using var zlib = new ZLibStream(packed, CompressionMode.Decompress);
        using var unpacked = new MemoryStream();
        zlib.CopyTo(unpacked);
        return unpacked.ToArray().AsSpan().SequenceEqual(content);
    }
}
