using PlanForge.Output.Compression;

namespace PlanForge.Output.Pdf;

/// <summary>The bytes of a stream as they stand in a file.</summary>
/// <param name="Bytes">The bytes.</param>
/// <param name="IsPacked">True when they are compressed.</param>
internal readonly record struct PackedStream(ReadOnlyMemory<byte> Bytes, bool IsPacked)
{
    // Packing saves nothing worth the work on less: glyphs are a hundred bytes or so each.
    private const int ShortestPacked = 512;

    /// <summary>Compresses a stream unless it is short.</summary>
    public static PackedStream Of(ReadOnlySpan<byte> content) =>
        content.Length >= ShortestPacked ? new(Flate.Pack(content).ToArray(), true) : new(content.ToArray(), false);
}
