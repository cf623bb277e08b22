using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Parts;

namespace PlanForge.Drafting.Nests;

/// <summary>Parts that are cut from the same stock: one material, one measured thickness.</summary>
/// <remarks>
/// A stock's thickness is measured, a part's is what its description says: sheets of 3 mm measure 2.7 to 3.4 mm. So the nearest
/// thickness of the material is taken, where it is near enough.
/// </remarks>
/// <param name="Stocks">The stocks, all equally thick, in the order of the description; none where no stock will do.</param>
/// <param name="Parts">The parts, in their order; without stock all of one thickness.</param>
internal sealed record StockMatch(ImmutableArray<StockDescription> Stocks, ImmutableArray<Part> Parts)
{
    /// <summary>A part is not cut from stock that differs by more than this, mm: the next size of sheet begins there.</summary>
    public const double GreatestDifference = 0.5;

    // Apart from what conversion between units leaves.
    private const double Rounding = 1e-9;

    /// <summary>Finds the stock of every part that is cut, in the order in which parts first need it.</summary>
    public static List<StockMatch> Of(IEnumerable<Part> parts, IReadOnlyList<StockDescription> stocks)
    {
        var matches = new List<StockMatch>();
        foreach (var part in parts)
        {
            if (part.Making != Making.Cut)
            {
                continue;
            }

            var nearest = Nearest(part, stocks);
            var known = matches.FindIndex(match => match.Takes(part, nearest));
            if (known < 0)
            {
                matches.Add(new(nearest is { } thickness ? AllOf(part, thickness, stocks) : [], [part]));
            }
            else
            {
                matches[known] = matches[known] with { Parts = matches[known].Parts.Add(part) };
            }
        }

        return matches;
    }

    private bool Takes(Part part, double? nearest) => Key(Parts[0].Material) == Key(part.Material)
        && (nearest is { } thickness
            ? !Stocks.IsEmpty && Stocks[0].Thickness == thickness
            : Stocks.IsEmpty && Parts[0].Thickness == part.Thickness);

    private static ImmutableArray<StockDescription> AllOf(Part part, double thickness, IReadOnlyList<StockDescription> stocks) =>
        [.. stocks.Where(stock => stock.Thickness == thickness && stock.IsOf(part.Material))];

    /// <summary>The thickness of the nearest stock that is near enough, the first of equals, or null.</summary>
    private static double? Nearest(Part part, IReadOnlyList<StockDescription> stocks)
    {
        double? nearest = null;
        var least = GreatestDifference + (2 * Rounding);
        foreach (var stock in stocks)
        {
            if (stock.IsOf(part.Material) && Math.Abs(stock.Thickness - part.Thickness) is var difference && difference < least - Rounding)
            {
                (nearest, least) = (stock.Thickness, difference);
            }
        }

        return nearest;
    }

    private static string Key(string material) => material.Trim().ToUpperInvariant();
}
