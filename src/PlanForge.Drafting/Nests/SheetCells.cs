using System.Numerics;
using System.Runtime.CompilerServices;

namespace PlanForge.Drafting.Nests;

/// <summary>The taken cells of a sheet inside its margins, and the search for a place among them.</summary>
/// <remarks>
/// Columns stand along the sheet's length, rows across it are bits. Level k of a column has a bit wherever one of the 2^k rows
/// from there upward is taken; so two words tell for 64 rows at once whether a run of any length begins on free rows there.
/// </remarks>
internal sealed class SheetCells
{
    private readonly int _columns;
    private readonly int _rows;
    private readonly int _words;

    // Words a column, two more than its rows need: shifted reads go beyond the end without asking.
    private readonly int _stride;
    private readonly ulong[][] _levels;

    // The longest stretch of free rows of each column.
    private readonly int[] _free;
    private readonly ulong[] _blocked;
    private int _touched;

    public SheetCells(int columns, int rows)
    {
        (_columns, _rows) = (columns, rows);
        _words = (rows + 63) / 64;
        _stride = _words + 2;
        _levels = new ulong[BitOperations.Log2((uint)rows) + 1][];
        for (var level = 0; level < _levels.Length; level++)
        {
            _levels[level] = new ulong[columns * _stride];
        }

        _free = new int[columns];
        Array.Fill(_free, rows);
        _blocked = new ulong[_words];
    }

    /// <summary>Frees all cells.</summary>
    public void Clear()
    {
        foreach (var level in _levels)
        {
            level.AsSpan(0, _touched * _stride).Clear();
        }

        _free.AsSpan(0, _touched).Fill(_rows);
        _touched = 0;
    }

    /// <summary>The first free place: the leftmost column, there the lowest row; null when there is none.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="columns">How many columns it may begin at.</param>
    /// <param name="rows">How many rows it may begin at.</param>
    /// <param name="from">The first column to try.</param>
    /// <param name="before">The column at which it is too late.</param>
    public (int Column, int Row)? Find(ShapeRuns shape, int columns, int rows, int from, int before)
    {
        var words = (rows + 63) / 64;
        var beyond = rows % 64 == 0 ? 0 : ulong.MaxValue << (rows % 64);
        var blocked = _blocked.AsSpan(0, words);
        for (var column = from; column < Math.Min(columns, before); column++)
        {
            if (!MayHaveRoom(shape, column))
            {
                continue;
            }

            blocked.Clear();
            blocked[^1] = beyond;
            if (HasRoom(shape, column, blocked))
            {
                return (column, BitRows.Next(blocked, 0, false));
            }
        }

        return null;
    }

    /// <summary>Takes the cells of a shape whose lower left corner stands in a cell; what lies outside of the sheet is left out.</summary>
    public void Take(ShapeCells shape, int column, int row)
    {
        for (var i = 0; i < shape.Columns.Length; i++)
        {
            var at = column + shape.FirstColumn + i;
            if (at < 0 || at >= _columns || shape.Columns[i].Length == 0)
            {
                continue;
            }

            foreach (var run in shape.Columns[i])
            {
                var (from, to) = (Math.Max(0, run.From + row), Math.Min(_rows, run.To + row));
                if (from < to)
                {
                    BitRows.Set(_levels[0].AsSpan(at * _stride, _words), from, to);
                }
            }

            Raise(at);
            _free[at] = LongestFree(at);
            _touched = Math.Max(_touched, at + 1);
        }
    }

    private int LongestFree(int column)
    {
        var bits = _levels[0].AsSpan(column * _stride, _words);
        var longest = 0;
        for (var from = BitRows.Next(bits, 0, false); from < _rows;)
        {
            var to = Math.Min(_rows, BitRows.Next(bits, from, true));
            longest = Math.Max(longest, to - from);
            from = BitRows.Next(bits, to, false);
        }

        return longest;
    }

    // Cheap, and true only of few columns once a sheet is nearly full.
    private bool MayHaveRoom(ShapeRuns shape, int column)
    {
        foreach (ref readonly var run in shape.Longest)
        {
            if (_free[column + run.Column] < run.Rows)
            {
                return false;
            }
        }

        return true;
    }

    private void Raise(int column)
    {
        for (var level = 1; level < _levels.Length; level++)
        {
            var half = 1 << (level - 1);
            var (word, bit) = (half >> 6, half & 63);
            var lower = _levels[level - 1].AsSpan(column * _stride, _stride);
            var upper = _levels[level].AsSpan(column * _stride, _words);
            if (word > 0)
            {
                for (var i = 0; i < upper.Length; i++)
                {
                    upper[i] = lower[i] | (i + word < lower.Length ? lower[i + word] : 0);
                }

                continue;
            }

            for (var i = 0; i < upper.Length; i++)
            {
                upper[i] = lower[i] | (lower[i] >> bit) | (lower[i + 1] << (64 - bit));
            }
        }
    }

    private bool HasRoom(ShapeRuns shape, int column, Span<ulong> blocked)
    {
        foreach (ref readonly var run in shape.Runs)
        {
            var taken = _levels[run.Level].AsSpan((column + run.Column) * _stride, _stride);
            var all = ulong.MaxValue;
            var (low, lowBit, high, highBit) = (run.Low >> 6, run.Low & 63, run.High >> 6, run.High & 63);
            for (var i = 0; i < blocked.Length; i++)
            {
                var rows = blocked[i] | Shifted(taken, i + low, lowBit) | Shifted(taken, i + high, highBit);
                blocked[i] = rows;
                all &= rows;
            }

            if (all == ulong.MaxValue)
            {
                return false;
            }
        }

        return true;
    }

    // Columns end in words without rows: what is beyond the last but one is nothing. A shift by 64 would be one by 0, hence two.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ulong Shifted(ReadOnlySpan<ulong> words, int word, int bit) =>
        word + 1 < words.Length ? (words[word] >> bit) | (words[word + 1] << 1 << (63 - bit)) : 0;
}
