using System.Collections.Immutable;

namespace PlanForge.Geometry;

/// <summary>Compares lists entry by entry, where entries have no equality of their own that would do.</summary>
public static class ListContent
{
    /// <summary>True when two lists are as long and alike in each place.</summary>
    public static bool IsSameAs<T>(this ImmutableArray<T> one, ImmutableArray<T> other, Func<T, T, bool> isSame)
    {
        ArgumentNullException.ThrowIfNull(isSame);
        if (one.Length != other.Length)
        {
            return false;
        }

        for (var i = 0; i < one.Length; i++)
        {
            if (!isSame(one[i], other[i]))
            {
                return false;
            }
        }

        return true;
    }
}
