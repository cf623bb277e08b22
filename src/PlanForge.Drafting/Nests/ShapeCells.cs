namespace PlanForge.Drafting.Nests;

/// <summary>The cells of a square grid that a shape touches, column by column as runs of rows.</summary>
/// <param name="firstColumn">The grid's column of the first column here; the grid begins at the lower left of the bare shape.</param>
/// <param name="columns">The runs of each column, upward; rows from <c>From</c> up to but without <c>To</c>.</param>
internal sealed class ShapeCells(int firstColumn, CellRun[][] columns)
{
    public int FirstColumn => firstColumn;

    public CellRun[][] Columns => columns;

    /// <summary>How many cells there are.</summary>
    public int Count
    {
        get
        {
            var count = 0;
            foreach (var runs in columns)
            {
                foreach (var run in runs)
                {
                    count += run.To - run.From;
                }
            }

            return count;
        }
    }
}

/// <summary>Rows <paramref name="From"/> up to but without <paramref name="To"/>.</summary>
internal readonly record struct CellRun(int From, int To);
