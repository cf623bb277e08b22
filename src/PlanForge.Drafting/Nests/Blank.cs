using PlanForge.Airframe;

namespace PlanForge.Drafting.Nests;

/// <summary>A kind of sheet that parts can be laid out on: whole sheets of a stock, or one remnant.</summary>
/// <param name="Stock">The stock.</param>
/// <param name="Number">The remnant's number, from 1; 0 for whole sheets.</param>
/// <param name="Width">Size across the grain, mm.</param>
/// <param name="Length">Size along the grain, mm.</param>
/// <param name="Count">How many there are; null for as many as are needed.</param>
internal sealed record Blank(StockDescription Stock, int Number, double Width, double Length, int? Count)
{
    public bool IsRemnant => Number > 0;

    /// <summary>The room inside the margins across the grain, mm.</summary>
    public double RoomAcross => Width - (2 * Stock.Margin);

    /// <summary>The room inside the margins along the grain, mm.</summary>
    public double RoomAlong => Length - (2 * Stock.Margin);

    /// <summary>The sheets of some stocks in the order they are used: remnants, sheets that are counted, then the others.</summary>
    public static Blank[] Of(IReadOnlyList<StockDescription> stocks)
    {
        var blanks = new List<Blank>();
        foreach (var stock in stocks)
        {
            for (var i = 0; i < stock.Remnants.Length; i++)
            {
                blanks.Add(new(stock, i + 1, stock.Remnants[i].Width, stock.Remnants[i].Length, 1));
            }
        }

        blanks.AddRange(stocks.Where(stock => stock.OnHand is not null).Select(Whole));
        blanks.AddRange(stocks.Where(stock => stock.OnHand is null).Select(Whole));
        return [.. blanks];
    }

    /// <summary>True when a shape fits on it in some turn, alone.</summary>
    public bool Fits(PartShape shape)
    {
        foreach (var turn in shape.Turns)
        {
            if (turn.Width <= RoomAlong + Rasterizer.Slack && turn.Height <= RoomAcross + Rasterizer.Slack)
            {
                return true;
            }
        }

        return false;
    }

    private static Blank Whole(StockDescription stock) => new(stock, 0, stock.Width, stock.Length, stock.OnHand);
}
