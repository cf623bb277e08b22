using PlanForge.Geometry;

namespace PlanForge.Drafting.Model;

/// <summary>Compares sheets by what they hold, to the last bit.</summary>
internal static class SheetContent
{
    /// <summary>True when two sheets are the same.</summary>
    public static bool IsSame(Sheet one, Sheet other) => ReferenceEquals(one, other)
        || (one.Drawing.Items.IsSameAs(other.Drawing.Items, IsSame)
            && one.Parts.AsSpan().SequenceEqual(other.Parts.AsSpan())
            && one.Bookmarks.AsSpan().SequenceEqual(other.Bookmarks.AsSpan())
            && one.ScaledViews.AsSpan().SequenceEqual(other.ScaledViews.AsSpan())

            // All else is compared by the record itself, whatever it may hold one day.
            && (other with
            {
                Drawing = one.Drawing,
                Parts = one.Parts,
                Bookmarks = one.Bookmarks,
                ScaledViews = one.ScaledViews,

                // What it was made from is no content, as with parts.
                Inputs = one.Inputs,
                OwnInputs = one.OwnInputs,
                FrameInputs = one.FrameInputs,
                PlacingInputs = one.PlacingInputs,
            }).Equals(one));

    private static bool IsSame(DrawingItem one, DrawingItem other) => ReferenceEquals(one, other) || (one, other) switch
    {
        (DrawingItem.Stroke a, DrawingItem.Stroke b) => a.Layer == b.Layer && a.Style == b.Style && a.Path.IsSameAs(b.Path),
        (DrawingItem.Fill a, DrawingItem.Fill b) => a.Layer == b.Layer && a.Grey.Equals(b.Grey) && a.Paths.IsSameAs(b.Paths, static (x, y) => x.IsSameAs(y)),
        (DrawingItem.Text a, DrawingItem.Text b) => a.Equals(b),
        _ => false,
    };
}
