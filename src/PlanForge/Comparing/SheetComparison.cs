using System.Collections.Immutable;
using PlanForge.Folders;

namespace PlanForge.Comparing;

/// <summary>Whether a sheet of the new design must be printed.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Was">The old sheet with the same drawing on it, which is kept; null when it must be printed.</param>
internal sealed record SheetComparison(DrawnSheet Sheet, DrawnSheet? Was)
{
    /// <summary>All sheets of the new design, in order.</summary>
    public static ImmutableArray<SheetComparison> Between(ImmutableArray<DrawnSheet> old, ImmutableArray<DrawnSheet> now) =>
        [.. now.Select(sheet => new SheetComparison(sheet, old.FirstOrDefault(was => was.Fingerprint == sheet.Fingerprint)))];
}
