using System.Numerics;

namespace PlanForge.Output.Compression;

/// <summary>A block of deflate with codes of its own (RFC 1951, 3.2.7).</summary>
internal static class DeflateBlock
{
    private const int EndOfBlock = 256;
    private const int LengthSymbols = 286;
    private const int DistanceSymbols = 30;
    private const int LongestCode = 15;
    private const int LongestLengthCode = 7;
    private const int SymbolBits = 5;
    private const int SymbolMask = (1 << SymbolBits) - 1;

    // Code lengths are written in this order, so that the rare ones at the end can be left out.
    private static ReadOnlySpan<byte> LengthOrder => [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];

    /// <summary>Writes symbols as <see cref="Matcher.Next"/> gives them.</summary>
    public static void Write(BitText bits, ReadOnlySpan<uint> symbols, bool isLast)
    {
        var literals = new int[LengthSymbols];
        var distances = new int[DistanceSymbols];
        literals[EndOfBlock] = 1;
        foreach (var symbol in symbols)
        {
            if (symbol < 256)
            {
                literals[symbol]++;
            }
            else
            {
                literals[LengthSymbol((int)(symbol >> 16)).Symbol]++;
                distances[DistanceSymbol((int)(symbol & 0xFFFF)).Symbol]++;
            }
        }

        var literalCode = new HuffmanCode(literals, LongestCode);
        var distanceCode = new HuffmanCode(distances, LongestCode);
        bits.Append(isLast ? 1u : 0u, 1);
        bits.Append(2, 2);
        WriteCodes(bits, literalCode, distanceCode);
        foreach (var symbol in symbols)
        {
            if (symbol < 256)
            {
                literalCode.Append(bits, (int)symbol);
                continue;
            }

            var length = LengthSymbol((int)(symbol >> 16));
            literalCode.Append(bits, length.Symbol);
            bits.Append((uint)length.Extra, length.ExtraBits);
            var distance = DistanceSymbol((int)(symbol & 0xFFFF));
            distanceCode.Append(bits, distance.Symbol);
            bits.Append((uint)distance.Extra, distance.ExtraBits);
        }

        literalCode.Append(bits, EndOfBlock);
    }

    /// <summary>Lengths 3 to 10 have a symbol each, then four symbols share each doubling; 258 has its own (3.2.5).</summary>
    private static (int Symbol, int Extra, int ExtraBits) LengthSymbol(int length)
    {
        if (length == Matcher.Longest)
        {
            return (285, 0, 0);
        }

        var (step, extra, bits) = Stepped(length - Matcher.Shortest, stepsPerDoubling: 4);
        return (257 + step, extra, bits);
    }

    /// <summary>Distances 1 to 4 have a symbol each, then two symbols share each doubling (3.2.5).</summary>
    private static (int Symbol, int Extra, int ExtraBits) DistanceSymbol(int distance) => Stepped(distance - 1, stepsPerDoubling: 2);

    private static (int Step, int Extra, int ExtraBits) Stepped(int value, int stepsPerDoubling)
    {
        if (value < 2 * stepsPerDoubling)
        {
            return (value, 0, 0);
        }

        var bits = BitOperations.Log2((uint)(value / stepsPerDoubling));
        return ((bits * stepsPerDoubling) + (value >> bits), value & ((1 << bits) - 1), bits);
    }

    /// <summary>Writes both codes by their lengths, runs of equal lengths shortened, themselves in a small code.</summary>
    private static void WriteCodes(BitText bits, HuffmanCode literals, HuffmanCode distances)
    {
        var literalCount = Math.Max(257, UsedCount(literals.Lengths));
        var distanceCount = Math.Max(1, UsedCount(distances.Lengths));
        byte[] lengths = [.. literals.Lengths.AsSpan(0, literalCount), .. distances.Lengths.AsSpan(0, distanceCount)];
        var runs = Runs(lengths);
        var frequencies = new int[LengthOrder.Length];
        foreach (var run in runs)
        {
            frequencies[run & SymbolMask]++;
        }

        var code = new HuffmanCode(frequencies, LongestLengthCode);
        var used = LengthOrder.Length;
        while (used > 4 && code.Lengths[LengthOrder[used - 1]] == 0)
        {
            used--;
        }

        bits.Append((uint)literalCount - 257, 5);
        bits.Append((uint)distanceCount - 1, 5);
        bits.Append((uint)used - 4, 4);
        foreach (var symbol in LengthOrder[..used])
        {
            bits.Append(code.Lengths[symbol], 3);
        }

        foreach (var run in runs)
        {
            var symbol = run & SymbolMask;
            code.Append(bits, symbol);
            bits.Append((uint)(run >> SymbolBits), ExtraBits(symbol));
        }
    }

    /// <summary>
    /// Symbol 16 repeats the last length 3 to 6 times; 17 and 18 stand for 3 to 10 and 11 to 138 zeros. Each result is a symbol
    /// with the number that follows it above.
    /// </summary>
    private static List<int> Runs(ReadOnlySpan<byte> lengths)
    {
        var runs = new List<int>(lengths.Length);
        for (var i = 0; i < lengths.Length;)
        {
            int value = lengths[i];
            var end = i + 1;
            while (end < lengths.Length && lengths[end] == value)
            {
                end++;
            }

            if (value != 0)
            {
                runs.Add(value);
                i++;
            }

            while (end - i >= 3)
            {
                var count = Math.Min(end - i, value != 0 ? 6 : 138);
                runs.Add(value != 0 ? Run(16, count - 3) : count <= 10 ? Run(17, count - 3) : Run(18, count - 11));
                i += count;
            }

            for (; i < end; i++)
            {
                runs.Add(value);
            }
        }

        return runs;
    }

    private static int Run(int symbol, int extra) => (extra << SymbolBits) | symbol;

    private static int ExtraBits(int symbol) => symbol switch
    {
        16 => 2,
        17 => 3,
        18 => 7,
        _ => 0,
    };

    private static int UsedCount(ReadOnlySpan<byte> lengths) => lengths.LastIndexOfAnyExcept((byte)0) + 1;
}
