using System.Collections.Immutable;
using PlanForge.Drafting.Measures;

namespace PlanForge.Drafting.Sheets;

/// <summary>A size of paper.</summary>
/// <remarks>
/// ISO 216 sizes in millimetres and American sizes in inches of exactly 25.4 mm (shared/check-values.md section 4). Points are
/// derived from these, never the other way. A roll is as high as it is wide and as long as a sheet needs.
/// </remarks>
/// <param name="Name">Its usual name.</param>
/// <param name="Width">Width as it lies, mm; of a roll the greatest length of a sheet.</param>
/// <param name="Height">Height as it lies, mm.</param>
/// <param name="IsRoll">True for a roll, which lies across and is cut to length.</param>
public sealed record Paper(string Name, double Width, double Height, bool IsRoll = false)
{
    /// <summary>A longer sheet is split, mm: a page of a PDF may be 5080 mm long.</summary>
    public const double LongestSheet = 5000;

    /// <summary>All cut sizes, upright, small to large within each series.</summary>
    public static ImmutableArray<Paper> All { get; } =
    [
        new("A4", 210, 297), new("A3", 297, 420), new("A2", 420, 594), new("A1", 594, 841), new("A0", 841, 1189),
        new("Letter", 8.5 * Measure.Inch, 11 * Measure.Inch),
        new("Legal", 8.5 * Measure.Inch, 14 * Measure.Inch),
        new("Tabloid", 11 * Measure.Inch, 17 * Measure.Inch),
        new("ANSI C", 17 * Measure.Inch, 22 * Measure.Inch),
        new("ANSI D", 22 * Measure.Inch, 34 * Measure.Inch),
        new("ANSI E", 34 * Measure.Inch, 44 * Measure.Inch),
    ];

    /// <summary>The rolls by their width: 24 and 36 in rounded to what printers' lists call 610 and 914 mm.</summary>
    public static ImmutableArray<Paper> Rolls { get; } =
        [Roll("roll 594", 594), Roll("roll 610", 24 * Measure.Inch), Roll("roll 841", 841), Roll("roll 914", 36 * Measure.Inch)];

    /// <summary>The paper of a name, upright, whatever the case of the letters; null for an unknown name.</summary>
    public static Paper? Find(string name)
    {
        foreach (var paper in (ReadOnlySpan<ImmutableArray<Paper>>)[All, Rolls])
        {
            foreach (var one in paper)
            {
                if (string.Equals(one.Name, name, StringComparison.OrdinalIgnoreCase))
                {
                    return one;
                }
            }
        }

        return null;
    }

    /// <summary>The paper that a description names or measures, upright.</summary>
    /// <param name="described">A known name, or both edges.</param>
    /// <exception cref="ArgumentException">The name is unknown.</exception>
    public static Paper Of(Airframe.PaperDescription described)
    {
        ArgumentNullException.ThrowIfNull(described);
        return described is { Width: { } width, Height: { } height }
            ? new(described.Name, Math.Min(width, height), Math.Max(width, height))
            : Find(described.Name) ?? throw new ArgumentException($"There is no paper named '{described.Name}'.", nameof(described));
    }

    /// <summary>The same paper with the long side across.</summary>
    public Paper Across() => this with { Width = Math.Max(Width, Height), Height = Math.Min(Width, Height) };

    private static Paper Roll(string name, double width) => new(name, LongestSheet, width, IsRoll: true);
}
