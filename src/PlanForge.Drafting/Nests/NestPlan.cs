using System.Collections.Immutable;
using PlanForge.Airframe;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Parts;

namespace PlanForge.Drafting.Nests;

/// <summary>All parts that are cut, laid out on sheets of stock: nests.</summary>
/// <remarks>
/// Parts of one stock stay apart by its spacing, and inside its margin; grain lies along the sheet; nothing is mirrored.
/// Small parts may lie in the openings of larger ones. Remnants are used first, then sheets that are counted, then others.
/// The same input gives the same plan.
/// </remarks>
/// <param name="Sheets">The sheets that hold parts: stock by stock in the order parts first need it, remnants before whole sheets.</param>
/// <param name="Findings">An error for parts larger than their stock; warnings for parts without stock and stock that falls short.</param>
public sealed record NestPlan(ImmutableArray<NestedSheet> Sheets, ImmutableArray<Diagnostic> Findings)
{
    /// <summary>Lays out parts.</summary>
    /// <param name="parts">The parts; those that are only printed are left out.</param>
    /// <param name="stocks">The sheets there are. Without any, nothing is laid out and nothing said.</param>
    /// <param name="unit">The unit lengths are shown in.</param>
    /// <param name="options">How to lay out.</param>
    /// <param name="kept">What is kept from earlier runs; null for nothing.</param>
    /// <exception cref="ArgumentException">A part that is cut has no closed cut line.</exception>
    public static NestPlan Of(
        ImmutableArray<Part> parts, ImmutableArray<StockDescription> stocks, DisplayUnit unit, NestOptions options, KeptDrawings? kept = null)
    {
        ArgumentNullException.ThrowIfNull(options);
        if (stocks.IsEmpty)
        {
            return new([], []);
        }

        kept ??= new();
        var sheets = ImmutableArray.CreateBuilder<NestedSheet>();
        var findings = new NestFindings(stocks, unit);

        // One stock's parts are laid out beside another's; what comes of it is taken in order.
        var laying = StockMatch.Of(parts, stocks).Select(match => (Match: match, Laid: match.Stocks.IsEmpty ? null : Task.Run(() => Lay(match)))).ToList();
        foreach (var (match, task) in laying)
        {
            findings.Check(match);
            if (task?.GetAwaiter().GetResult() is { } laid)
            {
                sheets.AddRange(laid.Sheets);
                foreach (var shape in laid.TooLarge)
                {
                    findings.TooLarge(shape, match.Stocks[0]);
                }
            }
        }

        findings.Count(sheets);
        return new(sheets.ToImmutable(), findings.All);

        LaidStock Lay(StockMatch match) => kept.Nests.Of(new(match.Stocks, match.Parts, options), () => StockNest.Lay(match, options, kept));
    }
}
