using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Arrangement;

/// <summary>Counts what a drafter would move: texts over texts, and lines and arrow heads through texts.</summary>
internal static class TextClashes
{
    // A line that only grazes the edge of a text's room does not touch its letters, mm.
    private const double Graze = 0.2;

    private const double ChordTolerance = 0.05;

    /// <summary>The number of clashing pairs.</summary>
    public static int Count(IReadOnlyCollection<DrawingItem> items)
    {
        var texts = new List<Bounds2>();
        foreach (var item in items)
        {
            if (item is DrawingItem.Text text)
            {
                texts.Add(TextExtents.Of(text).Grown(-Graze));
            }
        }

        var count = 0;
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                count += texts[i].Touches(texts[j]) ? 1 : 0;
            }
        }

        foreach (var item in items)
        {
            var bounds = item is DrawingItem.Text ? Bounds2.Empty : ItemExtents.Of(item);
            foreach (var text in texts)
            {
                if (text.Touches(bounds) && (item is not DrawingItem.Stroke stroke || Passes(stroke.Path, text)))
                {
                    count++;
                }
            }
        }

        return count;
    }

    private static bool Passes(Path2 path, Bounds2 box)
    {
        var points = path.Flattened(ChordTolerance);
        for (var i = 0; i < points.Length - (path.IsClosed ? 0 : 1); i++)
        {
            if (Passes(points[i], points[(i + 1) % points.Length], box))
            {
                return true;
            }
        }

        return false;
    }

    // A segment passes a rectangle when their bounds meet and the rectangle's corners do not all lie on one side of it.
    private static bool Passes(Point2 a, Point2 b, Bounds2 box)
    {
        if (!Bounds2.Around(a, b).Touches(box))
        {
            return false;
        }

        var way = b - a;
        int left = 0, right = 0;
        foreach (var corner in (ReadOnlySpan<Point2>)[new(box.MinX, box.MinY), new(box.MaxX, box.MinY), new(box.MaxX, box.MaxY), new(box.MinX, box.MaxY)])
        {
            var side = way.Cross(corner - a);
            left += side > 0 ? 1 : 0;
            right += side < 0 ? 1 : 0;
        }

        return left < 4 && right < 4;
    }
}
