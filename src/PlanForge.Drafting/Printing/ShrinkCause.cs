using System.Collections.Immutable;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Sheets;

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

        // A page that is enlarged without the wish to shows by itself; what loses a quarter does too.
        return [.. causes.Where(cause => cause.Factor is > 0.6 and < 1.5).OrderByDescending(cause => cause.Factor)];
    }

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
