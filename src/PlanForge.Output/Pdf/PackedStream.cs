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

/// <summary>The content of a stream as a key: equal bytes are equal keys.</summary>
internal sealed class StreamContent : IEquatable<StreamContent>
{
    private readonly byte[] _bytes;
    private readonly int _hash;

    public StreamContent(ReadOnlySpan<byte> bytes)
    {
        _bytes = bytes.ToArray();
        var hash = new HashCode();
        hash.AddBytes(bytes);
        _hash = hash.ToHashCode();
    }

    public ReadOnlySpan<byte> Bytes => _bytes;

    public bool Equals(StreamContent? other) => other is not null && _hash == other._hash && _bytes.AsSpan().SequenceEqual(other._bytes);

    public override bool Equals(object? obj) => Equals(obj as StreamContent);

    public override int GetHashCode() => _hash;
}
