namespace PlanForge.Geometry.Deviations;

/// <summary>Finds the place of some lines that is farthest from others, by branch and bound.</summary>
internal static class FarthestPlace
{
    /// <summary>The place; its distance is at most the tolerance less than the greatest.</summary>
    /// <exception cref="ArgumentException">No segment has a length.</exception>
    public static Deviation Find(IEnumerable<Segment2> from, LineIndex to, double tolerance)
    {
        var queue = new PriorityQueue<Stretch, double>();
        var (best, at, nearest) = (-1.0, Point2.Origin, default(Segment2));
        foreach (var piece in Stretch.Pieces(from))
        {
            var stretch = new Stretch(piece, Look(piece.Start), Look(piece.End));
            queue.Enqueue(stretch, -stretch.Greatest);
        }

        while (queue.TryDequeue(out var stretch, out var bound) && -bound > best + tolerance)
        {
            foreach (var half in Both(stretch.Halved(Look(stretch.Line.PointAt(0.5)))))
            {
                if (half.Greatest is var greatest && greatest > best + tolerance)
                {
                    queue.Enqueue(half, -greatest);
                }
            }
        }

        return best >= 0
            ? new(best, at, nearest.PointAt(nearest.NearestFraction(at)))
            : throw new ArgumentException("There is no line of some length to look along.", nameof(from));

        (Segment2 Segment, double Distance) Look(Point2 point)
        {
            var found = to.Nearest(point);
            if (found.Distance > best)
            {
                (best, at, nearest) = (found.Distance, point, found.Segment);
            }

            return found;
        }
    }

    private static ReadOnlySpan<Stretch> Both((Stretch First, Stretch Second) halves) => new[] { halves.First, halves.Second };
}
