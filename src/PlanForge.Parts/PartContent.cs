using PlanForge.Geometry;

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
        one.Lines.IsSameAs(other.Lines, static (a, b) => a.Use == b.Use && a.Path.IsSameAs(b.Path))
        && one.Labels.AsSpan().SequenceEqual(other.Labels.AsSpan())
        && one.Dimensions.AsSpan().SequenceEqual(other.Dimensions.AsSpan())
        && one.Tables.IsSameAs(other.Tables, IsSame)
        && one.Notes.AsSpan().SequenceEqual(other.Notes.AsSpan())
        && one.Figures.AsSpan().SequenceEqual(other.Figures.AsSpan())
        && one.Fitted.HasValue == other.Fitted.HasValue
        && (one.Fitted ?? []).IsSameAs(other.Fitted ?? [], static (a, b) => a.IsSameAs(b))
        && one.Pieces.IsSameAs(other.Pieces, static (a, b) => a.Name == b.Name && a.Outline.IsSameAs(b.Outline));

    private static bool IsSame(PartTable one, PartTable other) =>
        one.Header.AsSpan().SequenceEqual(other.Header.AsSpan())
        && one.Rows.IsSameAs(other.Rows, static (a, b) => a.AsSpan().SequenceEqual(b.AsSpan()))
        && (other with { Header = one.Header, Rows = one.Rows }).Equals(one);
}
