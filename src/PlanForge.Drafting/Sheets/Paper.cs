using System.Collections.Immutable;
using PlanForge.Drafting.Measures;

namespace PlanForge.Drafting.Sheets;

/// <summary>A size of paper.</summary>
/// <remarks>
/// ISO 216 sizes in millimetres and American sizes in inches of exactly 25.4 mm (shared/check-values.md section 4). Points are
/// derived from these, never the other way.
/// </remarks>
/// <param name="Name">Its usual name.</param>
/// <param name="Width">Width as it lies, mm.</param>
/// <param name="Height">Height as it lies, mm.</param>
public sealed record Paper(string Name, double Width, double Height)
{
    /// <summary>All sizes, upright, small to large within each series.</summary>
    public static ImmutableArray<Paper> All { get; } =
    [
        new("A4", 210, 297), new("A3", 297, 420), new("A2", 420, 594), new("A1", 594, 841), new("A0", 841, 1189),
        new("Letter", 8.5 * Measure.Inch, 11 * Measure.Inch),
        new("Legal", 8.5 * Measure.Inch, 14 * Measure.Inch),
        new("Tabloid", 11 * Measure.Inch, 17 * Measure.Inch),
    ];

    /// <summary>The ISO sizes, upright, small to large: what a part that is too large for the wanted paper is drawn on.</summary>
    internal static ReadOnlySpan<Paper> Iso => All.AsSpan()[..5];

    /// <summary>The paper of a name, upright, whatever the case of the letters; null for an unknown name.</summary>
    public static Paper? Find(string name)
    {
        foreach (var paper in All)
        {
            if (string.Equals(paper.Name, name, StringComparison.OrdinalIgnoreCase))
            {
                return paper;
            }
        }

        return null;
    }

    /// <summary>The same paper with the long side across.</summary>
    public Paper Across() => new(Name, Math.Max(Width, Height), Math.Min(Width, Height));
}
