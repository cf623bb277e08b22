using System.Buffers;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace PlanForge.Output.Compression;

/// <summary>
/// Splits bytes into literals and copies of what stood up to 32 KiB before. Every place is entered in a chain of the places
/// with the same next three bytes, nearest first (RFC 1951, section 4); a copy is held back one byte to see whether a longer
/// one begins there.
/// </summary>
internal ref struct Matcher
{
    /// <summary>Length of the shortest copy.</summary>
    public const int Shortest = 3;

    /// <summary>Length of the longest copy.</summary>
    public const int Longest = 258;

    private const int Window = 1 << 15;

    // Tables are as large as the content asks for: most streams of a plan are short, and clearing large ones for each costs more
    // than packing it.
    private const int LeastHashBits = 9;
    private const int MostHashBits = 15;

    // How many places of a chain are tried: nearly three times as many packed page contents 0.3 % better and took a third longer.
    private const int Patience = 12;

    // A copy this long is taken without looking for a longer one at the next byte.
    private const int LongEnough = 64;

    // Symbols in a block: large enough to spread the cost of its code tables, small enough to follow changing content.
    private const int BlockSymbols = 1 << 15;

    private readonly ReadOnlySpan<byte> _content;
    private readonly int _hashBits;
    private readonly int _placeMask;
    private readonly int[] _newest;
    private readonly int[] _before;
    private readonly uint[] _symbols;
    private readonly int _mostSymbols;
    private int _position;

    /// <summary>Starts at the first byte.</summary>
    public Matcher(ReadOnlySpan<byte> content)
    {
        _content = content;
        _hashBits = Math.Clamp(BitOperations.Log2((uint)content.Length + 1) + 1, LeastHashBits, MostHashBits);
        _newest = ArrayPool<int>.Shared.Rent(1 << _hashBits);
        _newest.AsSpan(0, 1 << _hashBits).Fill(-1);
        var places = Math.Min(Window, (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(1, content.Length)));
        _before = ArrayPool<int>.Shared.Rent(places);
        _placeMask = places - 1;
        _mostSymbols = Math.Min(BlockSymbols, content.Length);
        _symbols = ArrayPool<uint>.Shared.Rent(_mostSymbols);
    }

    /// <summary>Gives the tables back to be used again: they are as large as what is packed, and a plan packs hundreds of streams.</summary>
    public readonly void Dispose()
    {
        ArrayPool<int>.Shared.Return(_newest);
        ArrayPool<int>.Shared.Return(_before);
        ArrayPool<uint>.Shared.Return(_symbols);
    }

    /// <summary>True when all bytes have been split.</summary>
    public readonly bool IsAtEnd => _position == _content.Length;

    /// <summary>
    /// The symbols of the next block, valid until the next call: a byte as it is, a copy as its length times 65536 plus its
    /// distance.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public ReadOnlySpan<uint> Next()
    {
        var count = 0;
        var held = Find(_position, Shortest - 1);
        while (count < _mostSymbols && !IsAtEnd)
        {
            Enter(_position);
            var next = held.Length >= LongEnough ? default : Find(_position + 1, Math.Max(held.Length, Shortest - 1));
            if (held.Length < Shortest || next.Length > held.Length)
            {
                _symbols[count++] = _content[_position++];
                held = next;
                continue;
            }

            _symbols[count++] = ((uint)held.Length << 16) | (uint)held.Distance;
            var end = _position + held.Length;
            while (++_position < end)
            {
                Enter(_position);
            }

            held = Find(_position, Shortest - 1);
        }

        return _symbols.AsSpan(0, count);
    }

    /// <summary>The longest copy that may begin at a place, if it is longer than some length.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private readonly (int Length, int Distance) Find(int at, int longerThan)
    {
        var (length, distance) = (0, 0);
        var limit = Math.Min(Longest, _content.Length - at);
        if (limit <= longerThan)
        {
            return default;
        }

        var here = _content.Slice(at, limit);
        var candidate = _newest[Hash(at)];
        for (var tries = Patience; tries > 0 && candidate >= 0 && at - candidate <= Window; tries--)
        {
            // A copy cannot be longer than the best unless it also agrees in the byte after it.
            if (_content[candidate + longerThan] == here[longerThan])
            {
                var common = here.CommonPrefixLength(_content.Slice(candidate, limit));
                if (common > longerThan)
                {
                    (length, distance, longerThan) = (common, at - candidate, common);
                    if (common == limit)
                    {
                        break;
                    }
                }
            }

            var before = _before[candidate & _placeMask];
            if (before >= candidate)
            {
                break;
            }

            candidate = before;
        }

        return (length, distance);
    }

    private readonly void Enter(int at)
    {
        if (at + Shortest <= _content.Length)
        {
            var hash = Hash(at);
            _before[at & _placeMask] = _newest[hash];
            _newest[hash] = at;
        }
    }

    // Three bytes, multiplied by a large odd number whose upper bits mix them all.
    private readonly int Hash(int at) =>
        (int)((((uint)_content[at] << 16 | (uint)_content[at + 1] << 8 | _content[at + 2]) * 2654435761u) >> (32 - _hashBits));
}
