using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Parts;
using PlanForge.Parts.Wording;

namespace PlanForge.Drafting.Nests;

/// <summary>Collects what is to be said about parts and their stock.</summary>
/// <param name="stocks">All stock; at least one.</param>
/// <param name="unit">The unit lengths are shown in.</param>
internal sealed class NestFindings(ImmutableArray<StockDescription> stocks, DisplayUnit unit)
{
    // Common practice, no source: a slot this much too wide or narrow no longer fits.
    private const double NotableDifference = 0.3;
    private const double Rounding = 1e-9;

    private readonly MeasureText _text = new(unit);
    private readonly ImmutableArray<Diagnostic>.Builder _all = ImmutableArray.CreateBuilder<Diagnostic>();

    public ImmutableArray<Diagnostic> All => _all.ToImmutable();

    /// <summary>Warns of parts without stock, and of stock much thicker or thinner than its parts.</summary>
    public void Check(StockMatch match)
    {
        if (match.Stocks.IsEmpty)
        {
            var first = match.Parts[0];
            _all.Add(Diagnostic.Warning(
                stocks[0].At,
                first.Material.AsSpan().Trim().IsEmpty
                    ? $"parts without a `material` are not laid out on stock: {Titles(match.Parts)}"
                    : $"no stock is {first.Material.Trim()} of {Length(first.Thickness)} within {Length(StockMatch.GreatestDifference)}; "
                        + $"not laid out: {Titles(match.Parts)}"));
            return;
        }

        var stock = match.Stocks[0];
        for (var i = 0; i < match.Parts.Length; i++)
        {
            var thickness = match.Parts[i].Thickness;
            if (Math.Abs(stock.Thickness - thickness) > NotableDifference + Rounding
                && !match.Parts.Take(i).Any(part => part.Thickness == thickness))
            {
                var titles = Titles([.. match.Parts.Where(part => part.Thickness == thickness)]);
                _all.Add(Diagnostic.Warning(
                    stock.At, $"`{stock.Name}` is {Length(stock.Thickness)} thick and takes parts of {Length(thickness)}: {titles}"));
            }
        }
    }

    /// <summary>Reports a part that no sheet of its stock can hold.</summary>
    public void TooLarge(PartShape shape, StockDescription stock)
    {
        var turn = shape.Turns.MinBy(turned => turned.Width * turned.Height)!;
        var grain = shape.Part.GrainAngle is null ? "" : " with its grain along the sheet";
        _all.Add(Diagnostic.Error(
            stock.At,
            $"{shape.Part.Title} fits no sheet of `{stock.Name}`: with margins it needs "
                + $"{_text.Fine(Up(turn.Height + (2 * stock.Margin)))} x {_text.FineWithUnit(Up(turn.Width + (2 * stock.Margin)))}{grain}"));
    }

    /// <summary>Warns of stock of which there is less than was laid out.</summary>
    public void Count(IEnumerable<NestedSheet> sheets)
    {
        foreach (var group in sheets.Where(sheet => !sheet.IsRemnant).GroupBy(sheet => sheet.Stock))
        {
            if (group.Key.OnHand is { } onHand && group.Count() is var needed && needed > onHand)
            {
                _all.Add(Diagnostic.Warning(
                    group.Key.At, FormattableString.Invariant($"{needed} sheets of `{group.Key.Name}` are needed, and {onHand} on hand")));
            }
        }
    }

    private static string Titles(ImmutableArray<Part> parts) => string.Join(", ", parts.Select(part => part.Title));

    private string Length(double length) => _text.FineWithUnit(length);

    // A size asked for must be enough as it is written.
    private static double Up(double length) => Math.Ceiling((length - Rounding) * 10) / 10;
}
