using System.Collections.Immutable;
using PlanForge.Drafting.Sheets;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Tiles;

/// <summary>Where everything on the page of a tile stands; all of it inside the margin.</summary>
/// <param name="Paper">The paper as it lies.</param>
/// <param name="Printable">What the printer is sure to print.</param>
/// <param name="Strip">Label strip at the foot: level check bar, name of the tile, page map.</param>
/// <param name="Area">Room for the window on the sheet; around it there is room for ticks and the names of neighbours.</param>
internal sealed record TileLayout(Paper Paper, Bounds2 Printable, Bounds2 Strip, Bounds2 Area)
{
    /// <summary>Height of the label strip, mm.</summary>
    public const double StripHeight = 20;

    /// <summary>Height of the free line at the foot of the strip, mm.</summary>
    public const double FreeLineHeight = 3.6;

    /// <summary>Width of the column with the upright check bar and the left border, mm.</summary>
    public const double ColumnWidth = 10;

    /// <summary>Room for ticks and neighbours' names on the other three sides, mm.</summary>
    public const double Border = 7;

    // Narrower strips hold no bar worth measuring, shorter steps make more joints than drawing.
    private const double LeastStripWidth = 90;
    private const double LeastStep = 30;

    /// <summary>The free line at the foot.</summary>
    public Bounds2 FreeLine => new(Printable.MinX, Printable.MinY, Printable.MaxX, Printable.MinY + FreeLineHeight);

    /// <summary>The layouts that the options allow: paper upright, then across; none when the paper is too small.</summary>
    public static ImmutableArray<TileLayout> For(TileOptions options)
    {
        var upright = options.Paper with
        {
            Width = Math.Min(options.Paper.Width, options.Paper.Height),
            Height = Math.Max(options.Paper.Width, options.Paper.Height),
        };
        var (width, height) = LeastPaper(options);
        return
        [
            .. new[] { upright, upright.Across() }
                .Where(paper => paper.Width >= width && paper.Height >= height)
                .Select(paper => Of(paper, options.Margin)),
        ];
    }

    /// <summary>The least width and height of the paper as it lies, mm.</summary>
    public static (double Width, double Height) LeastPaper(TileOptions options) => (
        (2 * options.Margin) + Math.Max(LeastStripWidth, ColumnWidth + Border + options.Overlap + LeastStep),
        (2 * options.Margin) + StripHeight + (2 * Border) + options.Overlap + LeastStep);

    private static TileLayout Of(Paper paper, double margin)
    {
        var printable = new Bounds2(0, 0, paper.Width, paper.Height).Grown(-margin);
        var strip = printable with { MaxY = printable.MinY + StripHeight };
        var area = new Bounds2(
            printable.MinX + ColumnWidth, strip.MaxY + Border, printable.MaxX - Border, printable.MaxY - Border);
        return new(paper, printable, strip, area);
    }
}
