using System.Collections.Immutable;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Model;

/// <summary>Collects the items of a drawing while it is made, and the room they take.</summary>
internal sealed class Sketch
{
    private readonly ImmutableArray<DrawingItem>.Builder _items = ImmutableArray.CreateBuilder<DrawingItem>();

    /// <summary>The smallest upright rectangle around the ink so far; empty before the first item.</summary>
    public Bounds2 Bounds { get; private set; } = Bounds2.Empty;

    /// <summary>What was drawn so far, in order.</summary>
    public ImmutableArray<DrawingItem> Items => _items.ToImmutable();

    public void Stroke(Layer layer, Path2 path, LineStyle style) => Add(new DrawingItem.Stroke(layer, path, style));

    public void Line(Layer layer, Point2 start, Point2 end, LineStyle style) =>
        Stroke(layer, Path2.Open([new(start), new(end)]), style);

    public void Fill(Layer layer, Path2 area) => Add(new DrawingItem.Fill(layer, [area], 0));

    /// <summary>Letters a text and returns the room it takes.</summary>
    public Bounds2 Text(Layer layer, string content, Point2 at, double height, double angle = 0)
    {
        var text = new DrawingItem.Text(layer, content, at, height, angle);
        var extents = Lettering.TextExtents.Of(text);
        _items.Add(text);
        Bounds = Bounds.Joined(extents);
        return extents;
    }

    /// <summary>Adds another sketch as it stands.</summary>
    public void Add(Sketch other)
    {
        _items.AddRange(other._items);
        Include(other.Bounds, default);
    }

    /// <summary>Adds another sketch, moved.</summary>
    public void Add(Sketch other, Vector2 move)
    {
        foreach (var item in other._items)
        {
            _items.Add(Moved(item, move));
        }

        Include(other.Bounds, move);
    }

    /// <summary>Adds finished items, moved already, with known bounds before that.</summary>
    public void Add(ImmutableArray<DrawingItem> moved, Bounds2 bounds, Vector2 move)
    {
        _items.AddRange(moved);
        Include(bounds, move);
    }

    /// <summary>Finished items, moved.</summary>
    public static ImmutableArray<DrawingItem> Moved(ImmutableArray<DrawingItem> items, Vector2 move)
    {
        var moved = ImmutableArray.CreateBuilder<DrawingItem>(items.Length);
        foreach (var item in items)
        {
            moved.Add(Moved(item, move));
        }

        return moved.MoveToImmutable();
    }

    private static DrawingItem Moved(DrawingItem item, Vector2 move)
    {
        switch (item)
        {
            case DrawingItem.Stroke stroke:
                return new DrawingItem.Stroke(stroke.Layer, Moved(stroke.Path, move), stroke.Style);
            case DrawingItem.Text text:
                return new DrawingItem.Text(text.Layer, text.Content, text.At + move, text.Height, text.Angle);
            case DrawingItem.Fill fill:
                var paths = ImmutableArray.CreateBuilder<Path2>(fill.Paths.Length);
                foreach (var path in fill.Paths)
                {
                    paths.Add(Moved(path, move));
                }

                return new DrawingItem.Fill(fill.Layer, paths.MoveToImmutable(), fill.Grey);
            default:
                throw new ArgumentOutOfRangeException(nameof(item), item, "An item is a stroke, a fill or a text.");
        }
    }

    private static Path2 Moved(Path2 path, Vector2 move) => path.Placed(Placement2.MovedBy(move));

    private void Add(DrawingItem item)
    {
        _items.Add(item);
        Bounds = Bounds.Joined(ItemExtents.Of(item));
    }

    private void Include(Bounds2 bounds, Vector2 move)
    {
        if (!bounds.IsEmpty)
        {
            Bounds = Bounds.Joined(bounds.MovedBy(move));
        }
    }
}
