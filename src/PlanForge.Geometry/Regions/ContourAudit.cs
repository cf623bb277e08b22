using System.Collections.Immutable;

namespace PlanForge.Geometry.Regions;

/// <summary>Checks that a path can be cut: closed, simple, each line once.</summary>
public static class ContourAudit
{
    /// <summary>All faults of a path, by segment; none for a sound contour. Distances are judged by <see cref="Region2.SnapDistance"/>.</summary>
    public static ImmutableArray<ContourFault> Find(Path2 path)
    {
        var faults = new List<ContourFault>();
        if (!path.IsClosed)
        {
            faults.Add(new(ContourFaultKind.Open, path.End, path.SegmentCount - 1));
        }

        // The segments that have length, in order of travel.
        var indices = new List<int>(path.SegmentCount);
        for (var i = 0; i < path.SegmentCount; i++)
        {
            var segment = path.SegmentAt(i);
            if (segment.Start.DistanceTo(segment.End) <= Region2.SnapDistance && Math.Abs(segment.Bulge) <= 1)
            {
                faults.Add(new(ContourFaultKind.ZeroLengthSegment, segment.Start, i));
            }
            else
            {
                indices.Add(i);
            }
        }

        var (lows, bounds) = (new double[indices.Count], new Bounds2[indices.Count]);
        for (var i = 0; i < lows.Length; i++)
        {
            bounds[i] = path.SegmentAt(indices[i]).Bounds.Grown(Region2.SnapDistance);
            lows[i] = bounds[i].MinX;
        }

        var order = Ascending.Order(lows);
        for (var i = 0; i < order.Length; i++)
        {
            for (var j = i + 1; j < order.Length && lows[j] <= bounds[order[i]].MaxX; j++)
            {
                if (bounds[order[i]].Touches(bounds[order[j]]))
                {
                    AddFaults(path, indices, Math.Min(order[i], order[j]), Math.Max(order[i], order[j]), faults);
                }
            }
        }

        faults.Sort((a, b) => (a.Segment, a.OtherSegment ?? -1).CompareTo((b.Segment, b.OtherSegment ?? -1)));
        return [.. faults];
    }

    private static void AddFaults(Path2 path, List<int> indices, int first, int second, List<ContourFault> faults)
    {
        var (i, j) = (indices[first], indices[second]);
        var (a, b) = (path.SegmentAt(i), path.SegmentAt(j));
        var shared = PathCrossings.SharedPoints(a, b, Region2.SnapDistance);
        if (SharedStretch(a, b, shared) is { } middle)
        {
            faults.Add(new(ContourFaultKind.DuplicateEdge, middle, i, j));
            return;
        }

        var (follows, closes) = (second == first + 1, path.IsClosed && first == 0 && second == indices.Count - 1);
        foreach (var point in shared)
        {
            var isJoint = (follows && IsSame(point, a.End)) || (closes && IsSame(point, a.Start));
            if (!isJoint && !faults.Exists(known => known.Kind == ContourFaultKind.SelfCrossing && IsSame(known.At, point)))
            {
                faults.Add(new(ContourFaultKind.SelfCrossing, point, i, j));
            }
        }
    }

    // Segments that share two points, and the middle between these along one of them, share the stretch.
    private static Point2? SharedStretch(in Segment2 a, in Segment2 b, List<Point2> shared)
    {
        for (var i = 0; i < shared.Count; i++)
        {
            for (var j = i + 1; j < shared.Count; j++)
            {
                if (!IsSame(shared[i], shared[j]))
                {
                    var middle = a.PointAt((a.NearestFraction(shared[i]) + a.NearestFraction(shared[j])) / 2);
                    if (b.DistanceTo(middle) <= Region2.SnapDistance)
                    {
                        return middle;
                    }
                }
            }
        }

        return null;
    }

    private static bool IsSame(Point2 a, Point2 b) => a.DistanceTo(b) <= 2 * Region2.SnapDistance;
}
