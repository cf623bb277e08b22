using System.Collections.Immutable;

namespace PlanForge.Airframe;

/// <summary>A hash by which a builder tells whether two pieces of paper come from the same values. Equality is by content.</summary>
public readonly struct Fingerprint : IEquatable<Fingerprint>
{
    /// <summary>Figures and letters without I, L, O and U, which are misread for 1, 0 and V (Crockford's base 32, from memory).</summary>
    public const string Signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private readonly ImmutableArray<byte> _bytes;

    /// <summary>Makes a fingerprint from a hash.</summary>
    /// <param name="hash">At least four bytes.</param>
    /// <exception cref="ArgumentException">Fewer than four bytes.</exception>
    public Fingerprint(ReadOnlySpan<byte> hash)
    {
        if (hash.Length < 4)
        {
            throw new ArgumentException("A fingerprint needs at least four bytes.", nameof(hash));
        }

        _bytes = [.. hash];
    }

    /// <summary>Six signs that a person can read off a sheet, such as <c>K7F3-2Q</c>: the first thirty bits.</summary>
    public string Code
    {
        get
        {
            var bits = ((uint)_bytes[0] << 24) | ((uint)_bytes[1] << 16) | ((uint)_bytes[2] << 8) | _bytes[3];
            var signs = new char[7];
            for (var i = 0; i < signs.Length; i++)
            {
                if (i == 4)
                {
                    signs[i] = '-';
                    continue;
                }

                signs[i] = Signs[(int)(bits >> 27)];
                bits <<= 5;
            }

            return new(signs);
        }
    }

    /// <summary>All of it in hexadecimal figures, lower case.</summary>
    public string Hex => Convert.ToHexStringLower(_bytes.AsSpan());

    /// <summary>True when both are the same.</summary>
    public static bool operator ==(Fingerprint first, Fingerprint second) => first.Equals(second);

    /// <summary>True when they differ.</summary>
    public static bool operator !=(Fingerprint first, Fingerprint second) => !first.Equals(second);

    /// <inheritdoc/>
    public bool Equals(Fingerprint other) => _bytes.AsSpan().SequenceEqual(other._bytes.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Fingerprint other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => _bytes.IsDefaultOrEmpty ? 0 : BitConverter.ToInt32(_bytes.AsSpan());
}
