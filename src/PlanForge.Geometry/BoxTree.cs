namespace PlanForge.Geometry;

/// <summary>Finds those of many upright rectangles that touch a given one. Immutable; a query costs about the logarithm of their number and what it finds.</summary>
public sealed class BoxTree
{
    // Boxes in a leaf: fewer make a deeper tree, more are looked at in vain.
    private const int LeafSize = 8;

    private readonly Bounds2[] _boxes;
    private readonly int[] _order;
    private readonly List<Node> _nodes = [];

    /// <summary>A tree over some boxes, which are known by their place in the list.</summary>
    public BoxTree(Bounds2[] boxes)
    {
        ArgumentNullException.ThrowIfNull(boxes);
        _boxes = boxes;
        _order = new int[boxes.Length];
        for (var i = 0; i < _order.Length; i++)
        {
            _order[i] = i;
        }

        if (boxes.Length > 0)
        {
            Build(0, boxes.Length, new double[boxes.Length]);
        }
    }

    /// <summary>Calls for each box that touches a given one, in an order that depends on the boxes alone.</summary>
    /// <param name="box">The rectangle to touch.</param>
    /// <param name="found">Takes the number of a box; false ends the search.</param>
    public void Find(in Bounds2 box, Func<int, bool> found)
    {
        ArgumentNullException.ThrowIfNull(found);
        if (_nodes.Count > 0)
        {
            Find(0, box, found);
        }
    }

    /// <summary>What lies nearest to a point, of things that each have a box around them.</summary>
    /// <param name="point">The point.</param>
    /// <param name="distance">The distance from the point to the thing with the number of a box, mm; never less than to the box.</param>
    /// <returns>The number of the nearest thing's box, and its distance; −1 and infinity when there is none.</returns>
    public (int Number, double Distance) Nearest(Point2 point, Func<int, double> distance)
    {
        ArgumentNullException.ThrowIfNull(distance);
        var best = (Number: -1, Distance: double.PositiveInfinity);
        if (_nodes.Count > 0)
        {
            Nearest(0, point, distance, ref best);
        }

        return best;
    }

    private void Nearest(int index, Point2 point, Func<int, double> distance, ref (int Number, double Distance) best)
    {
        var node = _nodes[index];
        if (node.Bounds.DistanceTo(point) >= best.Distance)
        {
            return;
        }

        if (node.Second >= 0)
        {
            // The nearer half first: then the other one can often be left out.
            var isFirstNearer = _nodes[index + 1].Bounds.DistanceTo(point) <= _nodes[node.Second].Bounds.DistanceTo(point);
            Nearest(isFirstNearer ? index + 1 : node.Second, point, distance, ref best);
            Nearest(isFirstNearer ? node.Second : index + 1, point, distance, ref best);
            return;
        }

        for (var i = node.First; i < node.First + node.Count; i++)
        {
            if (_boxes[_order[i]].DistanceTo(point) < best.Distance && distance(_order[i]) is var found && found < best.Distance)
            {
                best = (_order[i], found);
            }
        }
    }

    private bool Find(int index, in Bounds2 box, Func<int, bool> found)
    {
        var node = _nodes[index];
        if (!node.Bounds.Touches(box))
        {
            return true;
        }

        if (node.Second >= 0)
        {
            return Find(index + 1, box, found) && Find(node.Second, box, found);
        }

        for (var i = node.First; i < node.First + node.Count; i++)
        {
            if (_boxes[_order[i]].Touches(box) && !found(_order[i]))
            {
                return false;
            }
        }

        return true;
    }

    // Halves by number along the longer side, so the depth is the logarithm of the number. A first child follows its parent.
    private void Build(int first, int count, double[] keys)
    {
        var bounds = Bounds2.Empty;
        for (var i = first; i < first + count; i++)
        {
            bounds = bounds.Joined(_boxes[_order[i]]);
        }

        var index = _nodes.Count;
        _nodes.Add(new(bounds, first, count, -1));
        if (count <= LeafSize)
        {
            return;
        }

        for (var i = first; i < first + count; i++)
        {
            var box = _boxes[_order[i]];
            keys[i] = bounds.Width >= bounds.Height ? box.MinX + box.MaxX : box.MinY + box.MaxY;
        }

        Array.Sort(keys, _order, first, count);
        var half = count / 2;
        Build(first, half, keys);
        _nodes[index] = new(bounds, first, count, _nodes.Count);
        Build(first + half, count - half, keys);
    }

    private readonly record struct Node(Bounds2 Bounds, int First, int Count, int Second);
}
