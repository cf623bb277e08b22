using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Model;

/// <summary>One page of a printable document: a drawing of its own and windows on sheets, all at true size.</summary>
/// <param name="Label">What viewers show for its number: <c>1</c>, <c>1-A2</c>, <c>i</c>.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Width">Paper width, mm.</param>
/// <param name="Height">Paper height, mm.</param>
/// <param name="Drawing">What is drawn over the windows; the origin is the paper's lower left corner.</param>
/// <param name="Windows">The parts of sheets that it shows.</param>
/// <param name="Bookmarks">Where each part or view is on the page, in reading order.</param>
/// <param name="ScaledViews">The views on the page that are not at true size; all else is.</param>
public sealed record Page(
    string Label,
    string Title,
    double Width,
    double Height,
    Drawing Drawing,
    ImmutableArray<SheetWindow> Windows,
    ImmutableArray<Bookmark> Bookmarks,
    ImmutableArray<ScaledView> ScaledViews)
{
    // ISO 5457: the frame stands 20 mm from the filing edge, and a grid takes 5 of them (see SheetFrame); printers lose up to 6 mm.
    private const double FilingEdge = 20;
    private const double Grid = 5;
    private const double Edge = 10;
    private const double Unprintable = 6;

    /// <summary>What its bookmark stands under; neighbouring pages with the same words here share one entry. Empty for none.</summary>
    public string Chapter { get; init; } = "";

    /// <summary>Free room near an edge for one line of lettering, at least 3.5 mm high: level, or upright where it is higher than wide.</summary>
    public required Bounds2 FreeLine { get; init; }

    /// <summary>The sheet that the page is, when it shows nothing else through its windows; null for a page of another kind.</summary>
    public Sheet? WholeSheet => Windows is [{ Sheet: var sheet, Move: var move } window]
        && move == default && window.Shown == new Bounds2(0, 0, Width, Height) && sheet.Width == Width && sheet.Height == Height
            ? sheet
            : null;

    /// <summary>A sheet as a page: one window on the whole of it.</summary>
    public static Page Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(
            Measures.Measure.Number(sheet.Number, 0),
            sheet.Title,
            sheet.Width,
            sheet.Height,
            new([]),
            [new(sheet, new(0, 0, sheet.Width, sheet.Height), default)],
            sheet.Bookmarks,
            sheet.ScaledViews)
        {
            FreeLine = new(Unprintable, Edge, FilingEdge - Grid - 1, sheet.Height - Edge),
        };
    }
}

/// <summary>A rectangle of a sheet, shown on a page at true size and cut off at its edges.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Shown">The rectangle, in the sheet's coordinates.</param>
/// <param name="Move">From the sheet's coordinates to the page's.</param>
public sealed record SheetWindow(Sheet Sheet, Bounds2 Shown, Vector2 Move)
{
    /// <summary>The rectangle in the page's coordinates.</summary>
    public Bounds2 Place => Shown.MovedBy(Move);
}
