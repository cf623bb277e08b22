using System.Collections.Immutable;

namespace PlanForge.Parts.Changes;

/// <summary>What differs between the parts of two states of a design: what moved, and what has to be made again.</summary>
/// <param name="Figures">Figures that changed, in the order of the later state; those it lacks come last.</param>
/// <param name="Changed">Ids of parts that are in both and differ, in the order of the later state.</param>
/// <param name="Added">Ids of parts that only the later state has, in its order.</param>
/// <param name="Gone">Ids of parts that only the earlier state has, in its order.</param>
public sealed record WhatMoved(
    ImmutableArray<MovedFigure> Figures, ImmutableArray<string> Changed, ImmutableArray<string> Added, ImmutableArray<string> Gone)
{
    /// <summary>Compares two states.</summary>
    /// <param name="before">The earlier one, without errors.</param>
    /// <param name="after">The later one, without errors.</param>
    public static WhatMoved Between(PartList before, PartList after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var parts = before.Parts.ToDictionary(part => part.Id, StringComparer.Ordinal);
        var known = after.Parts.Select(part => part.Id).ToHashSet(StringComparer.Ordinal);
        return new(
            FiguresBetween(before.Figures, after.Figures),
            [.. after.Parts.Where(part => parts.TryGetValue(part.Id, out var old) && !PartComparison.AreAlike(old, part)).Select(part => part.Id)],
            [.. after.Parts.Where(part => !parts.ContainsKey(part.Id)).Select(part => part.Id)],
            [.. before.Parts.Where(part => !known.Contains(part.Id)).Select(part => part.Id)]);
    }

    private static ImmutableArray<MovedFigure> FiguresBetween(ImmutableArray<Figure> before, ImmutableArray<Figure> after)
    {
        var moved = ImmutableArray.CreateBuilder<MovedFigure>();
        var old = new Dictionary<string, Figure>(StringComparer.Ordinal);
        foreach (var figure in before)
        {
            old.TryAdd(figure.Key, figure);
        }

        foreach (var figure in after)
        {
            if (!old.Remove(figure.Key, out var was))
            {
                moved.Add(new(figure, null, figure.Value));
            }
            else if (Math.Abs(figure.Value - was.Value) > Noise(figure.Quantity))
            {
                moved.Add(new(figure, was.Value, figure.Value));
            }
        }

        moved.AddRange(before.Where(figure => old.ContainsKey(figure.Key)).Select(figure => new MovedFigure(figure, figure.Value, null)));
        return moved.ToImmutable();
    }

    // Curves are solved to 1e-6 mm, and areas hold that over the length of an outline.
    private static double Noise(FigureQuantity quantity) => quantity switch
    {
        FigureQuantity.Length => 1e-5,
        FigureQuantity.Area => 1e-2,
        _ => 1e-7,
    };
}

/// <summary>A figure that changed.</summary>
/// <param name="Figure">Its key, label and quantity.</param>
/// <param name="Before">Its earlier value in the figure's own unit, or null where there was none.</param>
/// <param name="After">Its later value, or null where there is none.</param>
public readonly record struct MovedFigure(Figure Figure, double? Before, double? After);
