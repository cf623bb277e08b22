using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>A sheet and how it is cut into tiles.</summary>
internal sealed class TiledSheet
{
    /// <summary>How far outside the sheet's corners the crosses for measuring stand, mm each way.</summary>
    public const double CrossDistance = 4;

    private readonly bool[,] _isKept;

    /// <summary>Cuts a sheet up.</summary>
    public TiledSheet(Sheet sheet, TileLayout layout, double overlap)
    {
        (Sheet, Layout) = (sheet, layout);
        Grid = new(sheet.Width, sheet.Height, layout.Area, overlap);
        _isKept = TileInk.In(sheet.Drawing, Grid);
        for (var row = 0; row < Grid.Rows; row++)
        {
            for (var column = 0; column < Grid.Columns; column++)
            {
                Count += _isKept[row, column] ? 1 : 0;
            }
        }

        if (Count == 0)
        {
            // A sheet must not vanish, even one that shows nothing but its frame.
            (_isKept[0, 0], Count) = (true, 1);
        }
    }

    /// <summary>The sheet.</summary>
    public Sheet Sheet { get; }

    /// <summary>The page of each tile.</summary>
    public TileLayout Layout { get; }

    /// <summary>Its windows.</summary>
    public TileGrid Grid { get; }

    /// <summary>How many tiles are printed.</summary>
    public int Count { get; }

    /// <summary>True when some tile shows nothing and is left out.</summary>
    public bool HasGaps => Count < Grid.Rows * Grid.Columns;

    /// <summary>True when a tile is printed; false too for a place outside the grid.</summary>
    public bool IsKept(int row, int column) => IsTile(row, column) && _isKept[row, column];

    /// <summary>True when there is such a place in the grid.</summary>
    public bool IsTile(int row, int column) => row >= 0 && row < Grid.Rows && column >= 0 && column < Grid.Columns;

    /// <summary>The distance between opposite crosses, mm, or null when each diagonal has an end on a tile that is left out.</summary>
    public double? Diagonal
    {
        get
        {
            var (bottom, right) = (Grid.Rows - 1, Grid.Columns - 1);
            return (IsKept(0, 0) && IsKept(bottom, right)) || (IsKept(bottom, 0) && IsKept(0, right))
                ? new Vector2(Sheet.Width + (2 * CrossDistance), Sheet.Height + (2 * CrossDistance)).Length
                : null;
        }
    }

    /// <summary>The paper on which a sheet goes whole as it is, or null when it must be cut up.</summary>
    public static Paper? WholeOn(Sheet sheet, Paper paper)
    {
        // Papers are known to a hundredth of a millimetre.
        const double Rounding = 0.01;
        var (shorter, longer) = (Math.Min(paper.Width, paper.Height), Math.Max(paper.Width, paper.Height));
        if (sheet.Width <= shorter + Rounding && sheet.Height <= longer + Rounding)
        {
            return paper with { Width = shorter, Height = longer };
        }

        return sheet.Width <= longer + Rounding && sheet.Height <= shorter + Rounding ? paper.Across() : null;
    }
}
