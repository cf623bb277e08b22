using System.Collections.Immutable;

namespace PlanForge.Parts;

/// <summary>Compares parts by what they hold, to the last bit.</summary>
internal static class PartContent
{
    /// <summary>True when two parts are the same.</summary>
    public static bool IsSame(Part one, Part other) => ReferenceEquals(one, other) || (HasSameLists(one, other)

        // All else is compared by the record itself, whatever it may hold one day.
        && (other with
        {
            Lines = one.Lines,
            Labels = one.Labels,
            Dimensions = one.Dimensions,
            Tables = one.Tables,
            Notes = one.Notes,
            Figures = one.Figures,
            Fitted = one.Fitted,
            Pieces = one.Pieces,

            // What it was made from is no content: the same part may have come about otherwise.
            Inputs = one.Inputs,
        }).Equals(one));

    private static bool HasSameLists(Part one, Part other) =>
        AreSame(one.Lines, other.Lines, static (a, b) => a.Use == b.Use && a.Path.IsSameAs(b.Path))
        && AreSame(one.Labels, other.Labels, static (a, b) => a.Equals(b))
        && AreSame(one.Dimensions, other.Dimensions, static (a, b) => a.Equals(b))
        && AreSame(one.Tables, other.Tables, IsSame)
        && AreSame(one.Notes, other.Notes, static (a, b) => a == b)
        && AreSame(one.Figures, other.Figures, static (a, b) => a.Equals(b))
        && one.Fitted.HasValue == other.Fitted.HasValue
        && AreSame(one.Fitted ?? [], other.Fitted ?? [], static (a, b) => a.IsSameAs(b))
        && AreSame(one.Pieces, other.Pieces, static (a, b) => a.Name == b.Name && a.Outline.IsSameAs(b.Outline));

    private static bool IsSame(PartTable one, PartTable other) =>
        AreSame(one.Header, other.Header, static (a, b) => a == b)
        && AreSame(one.Rows, other.Rows, static (a, b) => AreSame(a, b, static (x, y) => x == y))
        && (other with { Header = one.Header, Rows = one.Rows }).Equals(one);

    private static bool AreSame<T>(ImmutableArray<T> one, ImmutableArray<T> other, Func<T, T, bool> isSame)
    {
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
