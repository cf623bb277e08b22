using System.Collections.Immutable;

namespace PlanForge.Parts.Comparison;

/// <summary>A figure before and after.</summary>
/// <param name="Key">Its path of words.</param>
/// <param name="Label">What a builder calls it.</param>
/// <param name="Quantity">What kind of number it is.</param>
/// <param name="Old">Its value before, or null when there was none.</param>
/// <param name="New">Its value now, or null when there is none.</param>
public readonly record struct FigureChange(string Key, string Label, FigureQuantity Quantity, double? Old, double? New)
{
    /// <summary>The figures that differ by as much as shows, in the order of now; those that are gone follow.</summary>
    public static ImmutableArray<FigureChange> Between(ImmutableArray<Figure> old, ImmutableArray<Figure> now) => Between(old, now, LeastChange.Shown);

    /// <summary>The figures that differ by some least amount, in the order of now; those that are gone follow.</summary>
    public static ImmutableArray<FigureChange> Between(ImmutableArray<Figure> old, ImmutableArray<Figure> now, LeastChange least)
    {
        ArgumentNullException.ThrowIfNull(least);
        var before = new Dictionary<string, Figure>(StringComparer.Ordinal);
        foreach (var figure in old)
        {
            before[figure.Key] = figure;
        }

        var changes = ImmutableArray.CreateBuilder<FigureChange>();
        foreach (var figure in now)
        {
            before.Remove(figure.Key, out var was);
            if (was is null || was.Quantity != figure.Quantity || Math.Abs(was.Value - figure.Value) >= least.Of(figure.Quantity))
            {
                changes.Add(new(figure.Key, figure.Label, figure.Quantity, was?.Value, figure.Value));
            }
        }

        foreach (var figure in old)
        {
            if (before.ContainsKey(figure.Key))
            {
                changes.Add(new(figure.Key, figure.Label, figure.Quantity, figure.Value, null));
            }
        }

        return changes.DrainToImmutable();
    }
}

/// <summary>Differences of figures from which on they are told.</summary>
/// <param name="Length">Of lengths, mm.</param>
/// <param name="Angle">Of angles, radians.</param>
/// <param name="Area">Of areas, mm².</param>
/// <param name="Number">Of plain numbers.</param>
public sealed record LeastChange(double Length, double Angle, double Area, double Number)
{
    /// <summary>What no figure shows to a builder is less than this; far more than the noise of the solvers.</summary>
    public static LeastChange Shown { get; } = new(5e-3, 1e-4, 0.1, 1e-6);

    /// <summary>Anything but the noise of the solvers: curves are solved to 1e-6 mm, and areas hold that over the length of an outline.</summary>
    public static LeastChange Any { get; } = new(1e-5, 1e-7, 1e-2, 1e-7);

    /// <summary>The least difference for a kind of figure.</summary>
    public double Of(FigureQuantity quantity) => quantity switch
    {
        FigureQuantity.Length => Length,
        FigureQuantity.Angle => Angle,
        FigureQuantity.Area => Area,
        _ => Number,
    };
}
