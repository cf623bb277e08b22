using System.Collections.Immutable;
using System.Globalization;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Sheets;
using PlanForge.Parts;

namespace PlanForge.Drafting.Printing;

/// <summary>What a print dialog may have done to a page that came out too small or too large.</summary>
/// <param name="Factor">Printed over true length.</param>
/// <param name="Words">What was done: no capital, no full stop.</param>
public sealed record ShrinkCause(double Factor, string Words)
{
    // Nearer than this to a known factor a measured one is explained by it: half the step between the closest two.
    private const double Nearness = 0.004;

    /// <summary>The causes for pages of a paper, from the least loss to the greatest.</summary>
    /// <remarks>
    /// A page fitted into margins m keeps (w − 2m) / w of its shorter side w: A4 97.1 % for 3 mm, 96.0 % for 4.2 mm; fitted on
    /// other paper it keeps the lesser ratio of the sides: A4 on Letter 94.1 % (shared/practice.md gives these as typical).
    /// </remarks>
    public static ImmutableArray<ShrinkCause> For(Paper paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        var (shorter, longer) = (Math.Min(paper.Width, paper.Height), Math.Max(paper.Width, paper.Height));
        var causes = new List<ShrinkCause>();
        foreach (var (margin, words) in (ReadOnlySpan<(double, string)>)
            [(3, "3 mm"), (4.2, "4.2 mm"), (5, "5 mm"), (Measure.Inch / 4, "1⁄4 in (6.4 mm)")])
        {
            causes.Add(new((shorter - (2 * margin)) / shorter, $"{paper.Name} shrunk into margins of {words}"));
        }

        foreach (var name in (ReadOnlySpan<string>)["A4", "A3", "Letter", "Tabloid"])
        {
            if (!string.Equals(name, paper.Name, StringComparison.OrdinalIgnoreCase) && Paper.Find(name) is { } other)
            {
                causes.Add(new(Math.Min(other.Width / shorter, other.Height / longer), $"{paper.Name} fitted on {other.Name}"));
            }
        }

        // A page blown up to a larger paper shows by itself.
        return [.. causes.Where(cause => cause.Factor is > 0.5 and < 1.1).OrderByDescending(cause => cause.Factor)];
    }

    /// <summary>What a bar of 100 mm measures after each of them, as a table.</summary>
    internal static PartTable TableFor(Paper paper) => new(
        "",
        ["A 100 mm bar measures", "Likely cause"],
        [
            ["99 to 101 mm", "scan or feed of the printer, or moist paper: see planforge help calibrate"],
            .. For(paper).Select(cause => (ImmutableArray<string>)
                [string.Create(CultureInfo.InvariantCulture, $"{cause.Factor * CheckBars.MetricLength:F1} mm"), cause.Words + ": print again at 100 %"]),
        ]);

    /// <summary>The cause nearest to a measured factor, or null when none is near.</summary>
    public static ShrinkCause? Nearest(Paper paper, double factor)
    {
        ShrinkCause? nearest = null;
        foreach (var cause in For(paper))
        {
            if (Math.Abs(cause.Factor - factor) <= Math.Min(Nearness, nearest is null ? Nearness : Math.Abs(nearest.Factor - factor)))
            {
                nearest = cause;
            }
        }

        return nearest;
    }
}
