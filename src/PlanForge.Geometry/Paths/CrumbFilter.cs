namespace PlanForge.Geometry;

/// <summary>
/// Takes segments too short for a machine out of closed paths, where the path then strays no farther than a tolerance: they
/// arise where two curves meet all but tangent.
/// </summary>
public static class CrumbFilter
{
    // Points of the old line that are held against the new one, on each of the two segments it replaces.
    private const int Samples = 8;

    /// <summary>The path without its short segments; those that cannot go within the tolerance stay.</summary>
    /// <param name="path">A path; an open one and one of fewer than four segments come back as they are.</param>
    /// <param name="shortest">Segments shorter than this are taken out, mm.</param>
    /// <param name="tolerance">Farthest the path may stray from the old one, mm.</param>
    public static Path2 Clean(Path2 path, double shortest, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (!path.IsClosed)
        {
            return path;
        }

        var segments = new List<Segment2>(path.SegmentCount);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            segments.Add(path.SegmentAt(i));
        }

        for (var i = 0; i < segments.Count && segments.Count > 3;)
        {
            if (segments[i].Length >= shortest || !TryTakeOut(segments, i, tolerance))
            {
                i++;
            }
        }

        return segments.Count == path.SegmentCount
            ? path
            : Path2.Closed(segments.ConvertAll(segment => new PathVertex(segment.Start, segment.Bulge)));
    }

    /// <summary>Lets the neighbour that strays less take the place of a segment as well; false where both stray too far.</summary>
    private static bool TryTakeOut(List<Segment2> segments, int index, double tolerance)
    {
        var (before, after) = ((index + segments.Count - 1) % segments.Count, (index + 1) % segments.Count);
        var (crumb, previous, next) = (segments[index], segments[before], segments[after]);
        var longer = Drawn(previous, previous.Start, crumb.End);
        var earlier = Drawn(next, crumb.Start, next.End);
        var strayBefore = Stray(longer, previous, crumb);
        var strayAfter = Stray(earlier, crumb, next);
        if (Math.Min(strayBefore, strayAfter) > tolerance)
        {
            return false;
        }

        (segments[before], segments[after]) = strayBefore <= strayAfter ? (longer, next) : (previous, earlier);
        segments.RemoveAt(index);
        return true;
    }

    /// <summary>A segment of the same radius between other ends.</summary>
    private static Segment2 Drawn(Segment2 model, Point2 start, Point2 end)
    {
        if (model.IsLine)
        {
            return new(start, end, 0);
        }

        // With the half angle a from sin a = chord / 2r, the bulge is tan(a / 2).
        var half = Math.Asin(Math.Clamp(start.DistanceTo(end) / (2 * model.Radius), 0, 1));
        half = Math.Abs(model.Bulge) > 1 ? Math.PI - half : half;
        return new(start, end, Math.CopySign(Math.Tan(half / 2), model.Bulge));
    }

    private static double Stray(Segment2 drawn, Segment2 first, Segment2 second)
    {
        var stray = 0.0;
        for (var i = 0; i <= Samples; i++)
        {
            var t = (double)i / Samples;
            stray = Math.Max(stray, Math.Max(drawn.DistanceTo(first.PointAt(t)), drawn.DistanceTo(second.PointAt(t))));
        }

        return stray;
    }
}
