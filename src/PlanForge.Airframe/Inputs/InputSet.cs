using System.Collections.Immutable;

namespace PlanForge.Airframe.Inputs;

/// <summary>The values of a description that something was made from, by their paths.</summary>
/// <remarks>
/// A path stands for the value of that path and for all values within: <c>wing.root.section</c> for a section in whatever form it is
/// given. <c>formers[]</c> stands for the fact which formers there are in which order, <c>retention.dowels{}</c> for the fact that
/// there are dowels; both are values of the description's list.
/// </remarks>
public sealed class InputSet
{
    private readonly Lazy<ImmutableArray<string>> _paths;

    internal InputSet(Func<HashSet<string>> paths) => _paths = new(() => WithoutInner(paths()));

    /// <summary>No inputs.</summary>
    public static InputSet None { get; } = new(() => []);

    /// <summary>The inputs of all of some.</summary>
    public static InputSet OfAll(IEnumerable<InputSet> sets)
    {
        ImmutableArray<InputSet> all = [.. sets];
        return new(() => new(all.SelectMany(set => set.Paths), StringComparer.Ordinal));
    }

    /// <summary>The paths in ordinal order, none within another.</summary>
    public ImmutableArray<string> Paths => _paths.Value;

    /// <summary>A set of some paths, such as were written down of an earlier run.</summary>
    public static InputSet Of(IEnumerable<string> paths)
    {
        var all = new HashSet<string>(paths, StringComparer.Ordinal);
        return new(() => all);
    }

    /// <summary>The inputs of both.</summary>
    public InputSet With(InputSet other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new(() => new HashSet<string>(Paths.Concat(other.Paths), StringComparer.Ordinal));
    }

    /// <summary>True when the value of a path is among the inputs.</summary>
    public bool Covers(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var paths = Paths;
        var index = paths.BinarySearch(path, StringComparer.Ordinal);
        if (index >= 0)
        {
            return true;
        }

        // What holds it is an input that it begins with.
        for (var end = path.Length - 1; end > 0; end--)
        {
            if (path[end] is '.' or '[' or '{' && paths.BinarySearch(path[..end], StringComparer.Ordinal) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>True when both hold the same paths.</summary>
    public bool IsSameAs(InputSet other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return ReferenceEquals(this, other) || Paths.AsSpan().SequenceEqual(other.Paths.AsSpan());
    }

    private static ImmutableArray<string> WithoutInner(HashSet<string> paths)
    {
        var beginnings = paths.GetAlternateLookup<ReadOnlySpan<char>>();
        var kept = ImmutableArray.CreateBuilder<string>(paths.Count);
        foreach (var path in paths)
        {
            var isInner = false;
            for (var end = path.Length - 1; end > 0 && !isInner; end--)
            {
                isInner = path[end] is '.' or '[' or '{' && beginnings.Contains(path.AsSpan(0, end));
            }

            if (!isInner)
            {
                kept.Add(path);
            }
        }

        kept.Sort(StringComparer.Ordinal);
        return kept.ToImmutable();
    }
}
