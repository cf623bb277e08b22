using PlanForge.Drafting.Model;

namespace PlanForge.Drafting.Tests.Dimensions.Placing;

/// <summary>Finds texts on texts, texts on arrow heads and texts struck through by lines, pair by pair.</summary>
internal static class Overlaps
{
    public static IEnumerable<string> OfTexts(IReadOnlyCollection<DrawingItem> items)
    {
        var texts = items.OfType<DrawingItem.Text>().ToList();
        var boxes = texts.ConvertAll(InkBox.Of);
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (boxes[i].Overlaps(boxes[j]))
                {
                    yield return $"'{texts[i].Content}' on '{texts[j].Content}'";
                }
            }

            foreach (var arrow in items.OfType<DrawingItem.Fill>())
            {
                if (boxes[i].Overlaps(InkBox.Of(arrow)))
                {
                    yield return $"'{texts[i].Content}' on an arrow";
                }
            }
        }
    }

    /// <summary>Texts that more than a trace of a line passes through.</summary>
    public static IEnumerable<string> OfLines(IReadOnlyCollection<DrawingItem> items)
    {
        const double Trace = 0.2;
        var strokes = items.OfType<DrawingItem.Stroke>().ToList();
        foreach (var text in items.OfType<DrawingItem.Text>())
        {
            var box = InkBox.Of(text);
            foreach (var stroke in strokes)
            {
                if (!ItemExtents.Of(stroke).Touches(InkBox.BoundsOf(box)))
                {
                    continue;
                }

                var points = stroke.Path.Flattened(0.05);
                for (var i = 0; i < points.Length - (stroke.Path.IsClosed ? 0 : 1); i++)
                {
                    if (box.LengthInside(points[i], points[(i + 1) % points.Length]) > Trace)
                    {
                        yield return $"'{text.Content}' on a line of {stroke.Layer}";
                    }
                }
            }
        }
    }
}
