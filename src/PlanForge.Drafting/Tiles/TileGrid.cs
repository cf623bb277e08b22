using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Measures;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>
/// A sheet cut into windows of one size, in rows from the top and columns from the left. Neighbours share exactly the overlap;
/// their joint line is the middle of it.
/// </summary>
internal sealed record TileGrid
{
    // A window that is too small by no more than this still holds a sheet, mm.
    private const double Rounding = 1e-6;

    /// <summary>The fewest windows that cover a sheet.</summary>
    /// <param name="width">Width of the sheet, mm.</param>
    /// <param name="height">Height of the sheet, mm.</param>
    /// <param name="area">The greatest window.</param>
    /// <param name="overlap">What neighbours share, mm.</param>
    public TileGrid(double width, double height, Bounds2 area, double overlap)
    {
        (Width, Height, Overlap) = (width, height, overlap);
        Columns = Count(width, area.Width, overlap);
        Rows = Count(height, area.Height, overlap);
        WindowWidth = (width + ((Columns - 1) * overlap)) / Columns;
        WindowHeight = (height + ((Rows - 1) * overlap)) / Rows;
    }

    /// <summary>Width of the sheet, mm.</summary>
    public double Width { get; }

    /// <summary>Height of the sheet, mm.</summary>
    public double Height { get; }

    /// <summary>What neighbours share, mm.</summary>
    public double Overlap { get; }

    /// <summary>How many columns there are.</summary>
    public int Columns { get; }

    /// <summary>How many rows there are.</summary>
    public int Rows { get; }

    /// <summary>Width of every window, mm.</summary>
    public double WindowWidth { get; }

    /// <summary>Height of every window, mm.</summary>
    public double WindowHeight { get; }

    /// <summary>From a column's window to the next one's, mm.</summary>
    public double StepAcross => WindowWidth - Overlap;

    /// <summary>From a row's window to the one below, mm.</summary>
    public double StepDown => WindowHeight - Overlap;

    /// <summary>What a tile shows, in the sheet's coordinates.</summary>
    public Bounds2 WindowOf(int row, int column)
    {
        var (left, top) = (column * StepAcross, Height - (row * StepDown));
        return new(left, top - WindowHeight, left + WindowWidth, top);
    }

    /// <summary>What is left of it between the joint lines.</summary>
    public Bounds2 ShareOf(int row, int column)
    {
        var (window, half) = (WindowOf(row, column), Overlap / 2);
        return new(
            column == 0 ? 0 : window.MinX + half,
            row == Rows - 1 ? 0 : window.MinY + half,
            column == Columns - 1 ? Width : window.MaxX - half,
            row == 0 ? Height : window.MaxY - half);
    }

    /// <summary>The name of a tile: A1, A2, B1.</summary>
    public static string NameOf(int row, int column) => LettersOf(row) + Measure.Number(column + 1, 0);

    private static string LettersOf(int row) =>
        (row >= ReferenceLetters.All.Length ? LettersOf((row / ReferenceLetters.All.Length) - 1) : "") + ReferenceLetters.All[row % ReferenceLetters.All.Length];

    private static int Count(double length, double window, double overlap) =>
        Math.Max(1, (int)Math.Ceiling((length - overlap - Rounding) / (window - overlap)));
}
