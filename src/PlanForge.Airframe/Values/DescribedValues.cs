using System.Collections.Immutable;

namespace PlanForge.Airframe.Values;

/// <summary>A description as a flat list of values, and the parameters behind them.</summary>
/// <remarks>
/// It holds what the fingerprint is made from, defaults among it: remarks, the order of keys, the spelling of units and parameters
/// that give the same numbers change neither.
/// </remarks>
/// <param name="Values">The values in the order of the format's keys and of the lists; section files last. Paths are unique.</param>
/// <param name="Parameters">The parameters in the order of their names, their paths <c>parameters[NAME]</c>.</param>
public sealed record DescribedValues(ImmutableArray<DescribedValue> Values, ImmutableArray<DescribedValue> Parameters)
{
    /// <summary>No values: those of a description that could not be read.</summary>
    public static DescribedValues None { get; } = new([], []);

    /// <summary>What became of an older description.</summary>
    /// <param name="older">The older description's values.</param>
    public ImmutableArray<ValueChange> Since(DescribedValues older)
    {
        ArgumentNullException.ThrowIfNull(older);
        var before = ByPath(older.Values);
        var after = ByPath(Values);
        Dictionary<string, DescribedValue> parametersBefore = ByPath(older.Parameters), parametersAfter = ByPath(Parameters);
        var changes = ImmutableArray.CreateBuilder<ValueChange>();
        foreach (var value in Values)
        {
            var old = before.GetValueOrDefault(value.Path);
            if (old is null || old.Value != value.Value || old.Kind != value.Kind)
            {
                changes.Add(new(value.Path, old, value, Behind(old, value)));
            }
        }

        foreach (var old in older.Values)
        {
            if (!after.ContainsKey(old.Path))
            {
                changes.Add(new(old.Path, old, null, Behind(old, null)));
            }
        }

        return changes.ToImmutable();

        // Of the parameters that either was computed from, those that changed.
        ImmutableArray<ValueChange> Behind(DescribedValue? old, DescribedValue? now)
        {
            var names = new SortedSet<string>(StringComparer.Ordinal);
            names.UnionWith(old?.Parameters ?? []);
            names.UnionWith(now?.Parameters ?? []);
            var behind = ImmutableArray.CreateBuilder<ValueChange>();
            foreach (var path in names.Select(ParameterPath))
            {
                DescribedValue? was = parametersBefore.GetValueOrDefault(path), now2 = parametersAfter.GetValueOrDefault(path);
                if (was?.Value != now2?.Value)
                {
                    behind.Add(new(path, was, now2, []));
                }
            }

            return behind.ToImmutable();
        }
    }

    internal static string ParameterPath(string name) => $"parameters[{name}]";

    private static Dictionary<string, DescribedValue> ByPath(ImmutableArray<DescribedValue> values)
    {
        var byPath = new Dictionary<string, DescribedValue>(values.Length, StringComparer.Ordinal);
        foreach (var value in values)
        {
            byPath.Add(value.Path, value);
        }

        return byPath;
    }
}

/// <summary>A value that is not what it was.</summary>
/// <param name="Path">Its path.</param>
/// <param name="Before">What it was, or null when it is new.</param>
/// <param name="After">What it is, or null when it is gone.</param>
/// <param name="Parameters">The parameters it was or is computed from whose values changed; for a parameter itself none.</param>
public sealed record ValueChange(string Path, DescribedValue? Before, DescribedValue? After, ImmutableArray<ValueChange> Parameters)
{
    /// <summary>Both for people: <c>92 mm -> 95 mm</c>, with <c>none</c> for what is not there.</summary>
    public string Shown => $"{Before?.Shown ?? "none"} -> {After?.Shown ?? "none"}";
}
