using System.Buffers;
using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace PlanForge.Airframe;

/// <summary>Collects the numbers and texts that make up a thing, then takes their fingerprint. Their order counts.</summary>
public sealed class FingerprintBuilder
{
    // A tenth of a micron: far below anything drawn or cut, far above the last digits that another machine may round otherwise.
    private const double Step = 1e-4;

    private readonly ArrayBufferWriter<byte> _bytes = new();

    /// <summary>Adds a whole number.</summary>
    public void Add(long number)
    {
        BinaryPrimitives.WriteInt64LittleEndian(_bytes.GetSpan(sizeof(long)), number);
        _bytes.Advance(sizeof(long));
    }

    /// <summary>Adds a length, mm, or another number of its size, to the nearest ten-thousandth.</summary>
    public void Add(double length) => Add((long)Math.Round(length / Step));

    /// <summary>Adds a text; two texts never run together.</summary>
    public void Add(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Add((long)text.Length);
        Encoding.UTF8.GetBytes(text, _bytes);
    }

    /// <summary>Adds a fingerprint.</summary>
    public void Add(Fingerprint fingerprint) => Add(fingerprint.Hex);

    /// <summary>The fingerprint of all that was added: SHA-256 of it.</summary>
    public Fingerprint ToFingerprint()
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(_bytes.WrittenSpan, hash);
        return new(hash);
    }
}
