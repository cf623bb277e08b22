using PlanForge.Airframe;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Drafting.Sheets;

namespace PlanForge.Drafting.Tiles;

/// <summary>How sheets are cut into pages for a small printer.</summary>
/// <param name="Paper">What the printer takes; either way round.</param>
/// <param name="Margin">What it may leave unprinted on each side, mm, 0 or more. Printers lose 4 to 6 mm.</param>
/// <param name="Overlap">How much of the drawing neighbours share, mm, 0 or more.</param>
public sealed record TileOptions(Paper Paper, double Margin = TileOptions.DefaultMargin, double Overlap = TileOptions.DefaultOverlap)
{
    /// <summary>The margin when none is asked for, mm.</summary>
    public const double DefaultMargin = 10;

    /// <summary>The overlap when none is asked for, mm.</summary>
    public const double DefaultOverlap = 10;

    /// <summary>What a description asks for.</summary>
    /// <exception cref="ArgumentException">The name of the paper is unknown.</exception>
    public static TileOptions Of(TileDescription tile)
    {
        ArgumentNullException.ThrowIfNull(tile);
        return new(Paper.Of(tile.Paper), tile.Margin, tile.Overlap);
    }

    /// <summary>What is wrong with the options, or null: one sentence without a full stop that says what would be right.</summary>
    public string? Fault()
    {
        if (!(Margin >= 0 && Overlap >= 0))
        {
            return "the margin and the overlap of tiles are 0 mm or more";
        }

        if (TileLayout.For(this).Length > 0)
        {
            return null;
        }

        var (width, height) = TileLayout.LeastPaper(this);
        return $"{Paper.Name} is too small for tiles with a margin of {Measure.Number(Margin, 1)} mm and an overlap of {Measure.Number(Overlap, 1)} mm; "
            + $"they need paper of {Measure.Number(width, 1)} × {Measure.Number(height, 1)} mm or more";
    }
}

/// <summary>Sheets as tiles.</summary>
/// <param name="Pages">The pages, or null when the options are at fault.</param>
/// <param name="Fault">What is wrong, or null: one sentence without a full stop.</param>
public sealed record TilePlanResult(PageSet? Pages, string? Fault);
