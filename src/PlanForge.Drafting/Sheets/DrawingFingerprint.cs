using PlanForge.Airframe;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Sheets;

/// <summary>
/// The fingerprint of a sheet: of what is drawn of each part or view on it, wherever on the paper it stands. Frame, title block and notes
/// do not count: a sheet whose number or revision letter alone is new need not be printed again.
/// </summary>
internal static class DrawingFingerprint
{
    /// <summary>The fingerprint of what is on a sheet.</summary>
    /// <param name="drawings">The drawings on it.</param>
    /// <param name="kept">What is kept from earlier runs.</param>
    public static Fingerprint Of(IEnumerable<PlacedDrawing> drawings, KeptDrawings kept)
    {
        var prints = drawings.Select(drawing => Of(drawing.Item, kept).Hex).ToList();
        prints.Sort(StringComparer.Ordinal);
        var builder = new FingerprintBuilder();
        foreach (var print in prints)
        {
            builder.Add(print);
        }

        return builder.ToFingerprint();
    }

    private static Fingerprint Of(SheetItem item, KeptDrawings kept)
    {
        var corner = new Point2(item.Bounds.MinX, item.Bounds.MinY);
        return kept.Fingerprints.Of((new(item.List), corner, item.Scale), () =>
        {
            var builder = new FingerprintBuilder();
            builder.Add(item.Scale);
            foreach (var drawn in item.Items)
            {
                Add(builder, drawn, corner);
            }

            return builder.ToFingerprint();
        });
    }

    private static void Add(FingerprintBuilder builder, DrawingItem item, Point2 corner)
    {
        builder.Add((long)item.Layer);
        switch (item)
        {
            case DrawingItem.Stroke stroke:
                builder.Add((long)stroke.Style.Type);
                Add(builder, stroke.Path, corner);
                break;
            case DrawingItem.Fill fill:
                foreach (var path in fill.Paths)
                {
                    Add(builder, path, corner);
                }

                break;
            case DrawingItem.Text text:
                builder.Add(text.Content);
                Add(builder, text.At, corner);
                break;
        }
    }

    private static void Add(FingerprintBuilder builder, Path2 path, Point2 corner)
    {
        builder.Add(path.IsClosed ? -path.Vertices.Length : path.Vertices.Length);
        foreach (var vertex in path.Vertices)
        {
            Add(builder, vertex.Point, corner);
            builder.Add(vertex.Bulge);
        }
    }

    private static void Add(FingerprintBuilder builder, Point2 point, Point2 corner)
    {
        builder.Add(point.X - corner.X);
        builder.Add(point.Y - corner.Y);
    }
}
