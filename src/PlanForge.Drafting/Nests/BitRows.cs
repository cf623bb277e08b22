using System.Numerics;

namespace PlanForge.Drafting.Nests;

/// <summary>Rows of cells as bits, 64 a word, the lowest first.</summary>
internal static class BitRows
{
    /// <summary>Sets rows <paramref name="from"/> up to but without <paramref name="to"/>.</summary>
    public static void Set(Span<ulong> bits, int from, int to)
    {
        var (first, last) = (from >> 6, (to - 1) >> 6);
        var low = ulong.MaxValue << (from & 63);
        var high = ulong.MaxValue >> (63 - ((to - 1) & 63));
        if (first == last)
        {
            bits[first] |= low & high;
            return;
        }

        bits[first] |= low;
        bits[(first + 1)..last].Fill(ulong.MaxValue);
        bits[last] |= high;
    }

    /// <summary>The next row at or above <paramref name="from"/> that is set (or clear); beyond the last row when there is none.</summary>
    public static int Next(ReadOnlySpan<ulong> bits, int from, bool isSet)
    {
        for (var word = from >> 6; word < bits.Length; word++)
        {
            var wanted = isSet ? bits[word] : ~bits[word];
            if (word == from >> 6)
            {
                wanted &= ulong.MaxValue << (from & 63);
            }

            if (wanted != 0)
            {
                return (word << 6) + BitOperations.TrailingZeroCount(wanted);
            }
        }

        return bits.Length << 6;
    }
}
