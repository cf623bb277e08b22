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
    // What no figure shows to a builder, and far more than the noise of the solvers.
    private const double LeastLength = 5e-3;
    private const double LeastAngle = 1e-4;
    private const double LeastArea = 0.1;
    private const double LeastNumber = 1e-6;

    /// <summary>The figures that differ by 0.005 mm, 0.1 mm², 0.0001 rad or more, in the order of now; those that are gone follow.</summary>
    public static ImmutableArray<FigureChange> Between(ImmutableArray<Figure> old, ImmutableArray<Figure> now)
    {
        var before = new Dictionary<string, Figure>(StringComparer.Ordinal);
        foreach (var figure in old)
        {
            before[figure.Key] = figure;
        }

        var changes = ImmutableArray.CreateBuilder<FigureChange>();
        foreach (var figure in now)
        {
            var had = before.Remove(figure.Key, out var was);
            if (!had || was.Quantity != figure.Quantity || Math.Abs(was.Value - figure.Value) >= LeastOf(figure.Quantity))
            {
                changes.Add(new(figure.Key, figure.Label, figure.Quantity, had ? was.Value : null, figure.Value));
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

    private static double LeastOf(FigureQuantity quantity) => quantity switch
    {
        FigureQuantity.Length => LeastLength,
        FigureQuantity.Angle => LeastAngle,
        FigureQuantity.Area => LeastArea,
        _ => LeastNumber,
    };
}
