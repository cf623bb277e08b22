using System.Numerics;

namespace PlanForge.Drafting.Nests;

/// <summary>The runs of a shape as the search wants them: those that tell most first.</summary>
internal sealed class ShapeRuns
{
    // Columns looked at before all runs are.
    private const int Probes = 15;

    private readonly SearchRun[] _runs;
    private readonly LongestRun[] _longest;

    public ShapeRuns(ShapeCells cells)
    {
        var runs = new List<SearchRun>();
        var longest = new List<LongestRun>();

        // Columns in the order middle, quarters, eighths, ...: neighbours say nearly the same.
        for (var step = (int)BitOperations.RoundUpToPowerOf2((uint)cells.Columns.Length + 1); step > 1; step /= 2)
        {
            for (var column = step / 2; column <= cells.Columns.Length; column += step)
            {
                var rows = 0;
                foreach (var run in cells.Columns[column - 1])
                {
                    rows = Math.Max(rows, run.To - run.From);
                    var level = BitOperations.Log2((uint)(run.To - run.From));
                    runs.Add(new(column - 1, level, run.From, run.To - (1 << level)));
                }

                if (longest.Count < Probes)
                {
                    longest.Add(new(column - 1, rows));
                }
            }
        }

        (_runs, _longest) = ([.. runs], [.. longest]);
    }

    /// <summary>All runs.</summary>
    public ReadOnlySpan<SearchRun> Runs => _runs;

    /// <summary>The longest run of some columns.</summary>
    public ReadOnlySpan<LongestRun> Longest => _longest;
}

/// <summary>A run of rows as two overlapping stretches of 2^level rows.</summary>
/// <param name="Column">Its column in the shape.</param>
/// <param name="Level">The level.</param>
/// <param name="Low">Where the lower stretch begins.</param>
/// <param name="High">Where the upper stretch begins.</param>
internal readonly record struct SearchRun(int Column, int Level, int Low, int High);

/// <summary>The longest run of a column.</summary>
/// <param name="Column">The column in the shape.</param>
/// <param name="Rows">How long it is.</param>
internal readonly record struct LongestRun(int Column, int Rows);
