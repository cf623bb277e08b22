namespace PlanForge.Drafting.Nests;

/// <summary>Looks for the order in which parts laid out one after the other need the least stock.</summary>
/// <remarks>
/// Large parts first, by three measures of large; then small changes to the best order so far: a part moved to another place
/// of it, two exchanged, or one given another turn. What is as tight is kept too, since it may lead further. The changes come
/// from a generator with a fixed start: the same parts give the same nest, and more effort begins with the same tries.
/// </remarks>
internal sealed class OrderSearch(Filling filling, PartShape[] items)
{
    private readonly ChangeGenerator _chance = new();

    /// <summary>The best layout found.</summary>
    /// <param name="effort">How many layouts to try, at least 1.</param>
    public Layout Best(int effort)
    {
        var order = By(static shape => shape.Area);
        var best = filling.Lay(order, 0, null);
        var tried = 1;
        foreach (var measure in (ReadOnlySpan<Func<PartShape, double>>)[Longest, Shortest])
        {
            if (tried < effort && !filling.IsBest(best) && By(measure) is var other && filling.Lay(other, 0, null) is var layout && layout.CompareTo(best) < 0)
            {
                (order, best) = (other, layout);
            }

            tried++;
        }

        // The walk goes by how far from the start all parts lie: that falls with every gap closed, also where the last sheet does
        // not yet show it. What it passes that uses the least stock is kept.
        var current = best;
        for (; tried < effort && !filling.IsBest(best); tried++)
        {
            var changed = (Turn[])order.Clone();
            var known = Change(changed);
            var layout = filling.Lay(changed, known, current);
            if (layout.Moment <= current.Moment)
            {
                (order, current) = (changed, layout);
            }

            if (layout.CompareTo(best) < 0)
            {
                best = layout;
            }
        }

        return best;
    }

    private static double Longest(PartShape shape) => Math.Max(shape.Turns[0].Width, shape.Turns[0].Height);

    private static double Shortest(PartShape shape) => Math.Min(shape.Turns[0].Width, shape.Turns[0].Height);

    // Equals stay in the order of the parts.
    private Turn[] By(Func<PartShape, double> measure)
    {
        var order = new Turn[items.Length];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = new(i, -1);
        }

        Array.Sort(order, (a, b) => measure(items[b.Item]).CompareTo(measure(items[a.Item])) is var larger && larger != 0
            ? larger
            : a.Item.CompareTo(b.Item));
        return order;
    }

    /// <summary>Changes an order, and tells how many at its start stayed.</summary>
    private int Change(Turn[] order)
    {
        var (a, b) = (_chance.Below(order.Length), _chance.Below(order.Length));
        switch (_chance.Below(3))
        {
            case 0:
                (order[a], order[b]) = (order[b], order[a]);
                return Math.Min(a, b);
            case 1:
                var moved = order[a];
                Array.Copy(order, a < b ? a + 1 : b, order, a < b ? a : b + 1, Math.Abs(a - b));
                order[b] = moved;
                return Math.Min(a, b);
            default:
                var turns = items[order[a].Item].Turns.Length;
                order[a] = order[a] with { Angle = _chance.Below(turns + 1) - 1 };
                return a;
        }
    }
}
