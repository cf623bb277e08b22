namespace PlanForge.Output.Compression;

/// <summary>A prefix code in the canonical form of RFC 1951, 3.2.2: the lengths of the codes alone determine it.</summary>
internal sealed class HuffmanCode
{
    private readonly uint[] _codes;

    /// <summary>The code that writes symbols of given frequencies shortest, with no code longer than a limit.</summary>
    /// <param name="frequencies">How often each symbol occurs; those that never do get no code.</param>
    /// <param name="longest">Longest code in bits: 7 or 15.</param>
    public HuffmanCode(ReadOnlySpan<int> frequencies, int longest)
    {
        Lengths = new byte[frequencies.Length];
        var weights = frequencies.ToArray();
        while (!TryFindLengths(weights, longest))
        {
            // Rare symbols draw nearer to the frequent ones until the tree is flat enough; the cost is far below a percent.
            for (var symbol = 0; symbol < weights.Length; symbol++)
            {
                weights[symbol] = (weights[symbol] + 1) / 2;
            }
        }

        _codes = CodesOf(Lengths, longest);
    }

    /// <summary>Length of each symbol's code in bits, 0 for symbols without.</summary>
    public byte[] Lengths { get; }

    /// <summary>Appends a symbol's code.</summary>
    public void Append(BitText bits, int symbol) => bits.Append(_codes[symbol], Lengths[symbol]);

    /// <summary>
    /// Huffman's construction: the two lightest trees are joined until one is left. Leaves are sorted by weight and joined trees
    /// arise in order of weight, so the lightest is always at the head of one of two queues.
    /// </summary>
    private bool TryFindLengths(ReadOnlySpan<int> weights, int longest)
    {
        var symbols = Sorted(weights);
        if (symbols.Length < 2)
        {
            foreach (var symbol in symbols)
            {
                Lengths[symbol] = 1;
            }

            return true;
        }

        var leaves = symbols.Length;
        var parents = new int[(2 * leaves) - 1];
        var sums = new int[(2 * leaves) - 1];
        for (var i = 0; i < leaves; i++)
        {
            sums[i] = weights[symbols[i]];
        }

        var (leaf, tree) = (0, leaves);
        for (var joined = leaves; joined < sums.Length; joined++)
        {
            for (var half = 0; half < 2; half++)
            {
                var lightest = leaf < leaves && (tree == joined || sums[leaf] <= sums[tree]) ? leaf++ : tree++;
                sums[joined] += sums[lightest];
                parents[lightest] = joined;
            }
        }

        var depths = new int[sums.Length];
        for (var i = sums.Length - 2; i >= 0; i--)
        {
            depths[i] = depths[parents[i]] + 1;
            if (depths[i] > longest)
            {
                return false;
            }
        }

        for (var i = 0; i < leaves; i++)
        {
            Lengths[symbols[i]] = (byte)depths[i];
        }

        return true;
    }

    /// <summary>The symbols that occur, rarest first, equals in their own order.</summary>
    private static int[] Sorted(ReadOnlySpan<int> weights)
    {
        // Weight above, symbol below: a block has far fewer than 2^22 symbols, so both fit.
        const int SymbolBits = 9;
        var count = weights.Length - weights.Count(0);
        var keys = new int[count];
        for (var symbol = weights.Length - 1; symbol >= 0; symbol--)
        {
            if (weights[symbol] > 0)
            {
                keys[--count] = (weights[symbol] << SymbolBits) | symbol;
            }
        }

        Array.Sort(keys);
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] &= (1 << SymbolBits) - 1;
        }

        return keys;
    }

    /// <summary>Codes of a length follow each other in the order of symbols; written highest bit first, so stored reversed.</summary>
    private static uint[] CodesOf(ReadOnlySpan<byte> lengths, int longest)
    {
        var counts = new int[longest + 1];
        foreach (var length in lengths)
        {
            counts[length]++;
        }

        counts[0] = 0;
        var next = new uint[longest + 1];
        for (var length = 1; length <= longest; length++)
        {
            next[length] = (next[length - 1] + (uint)counts[length - 1]) << 1;
        }

        var codes = new uint[lengths.Length];
        for (var symbol = 0; symbol < codes.Length; symbol++)
        {
            if (lengths[symbol] > 0)
            {
                codes[symbol] = Reversed(next[lengths[symbol]]++, lengths[symbol]);
            }
        }

        return codes;
    }

    private static uint Reversed(uint code, int length)
    {
        uint reversed = 0;
        for (var bit = 0; bit < length; bit++)
        {
            reversed = (reversed << 1) | ((code >> bit) & 1);
        }

        return reversed;
    }
}
