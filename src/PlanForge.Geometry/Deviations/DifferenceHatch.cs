using PlanForge.Geometry.Regions;

namespace PlanForge.Geometry.Deviations;

/// <summary>Parallel lines over what only one of two shapes covers.</summary>
public static class DifferenceHatch
{
    /// <summary>The lines, from one side to the other.</summary>
    /// <param name="old">The contours of the one shape; points inside an odd number of them are material.</param>
    /// <param name="now">Those of the other.</param>
    /// <param name="spacing">The distance between the lines, mm, over 0.</param>
    /// <param name="angle">Their direction from the x axis, radians.</param>
    /// <param name="least">Shorter lines are left out, mm.</param>
    public static IEnumerable<Segment2> Of(IReadOnlyList<Path2> old, IReadOnlyList<Path2> now, double spacing, double angle, double least)
    {
        ArgumentNullException.ThrowIfNull(old);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing);
        List<Path2> all = [.. old, .. now];
        var along = Vector2.FromAngle(angle);
        var bounds = all.Aggregate(Bounds2.Empty, (sum, path) => sum.Joined(path.Bounds)).Grown(spacing);
        if (bounds.IsEmpty)
        {
            yield break;
        }

        // Lines stand at whole multiples of the spacing from the origin, so that neighbouring drawings fit together.
        var corners = new Point2[] { new(bounds.MinX, bounds.MinY), new(bounds.MaxX, bounds.MinY), new(bounds.MaxX, bounds.MaxY), new(bounds.MinX, bounds.MaxY) };
        var (from, to) = (corners.Min(Across), corners.Max(Across));
        var (start, end) = (corners.Min(Along), corners.Max(Along));
        for (var number = Math.Ceiling(from / spacing); number * spacing <= to; number++)
        {
            var foot = Point2.Origin + (along.Left * (number * spacing));
            foreach (var piece in Pieces(new(foot + (along * start), foot + (along * end), 0), all, least))
            {
                yield return piece;
            }
        }

        double Across(Point2 point) => (point - Point2.Origin).Dot(along.Left);

        double Along(Point2 point) => (point - Point2.Origin).Dot(along);
    }

    private static IEnumerable<Segment2> Pieces(Segment2 line, List<Path2> contours, double least)
    {
        var box = line.Bounds;
        var places = new List<double>();
        foreach (var contour in contours)
        {
            foreach (var segment in contour.Segments)
            {
                if (segment.Start != segment.End && segment.Bounds.Grown(Region2.SnapDistance).Touches(box))
                {
                    places.AddRange(SegmentPair.SharedPoints(line, segment, Region2.SnapDistance).Select(line.NearestFraction));
                }
            }
        }

        // Between two places the line runs within or without, whatever touches and shared ends there are among them.
        places.Sort();
        for (var i = 1; i < places.Count; i++)
        {
            var piece = line.Part(places[i - 1], places[i]);
            if (piece.Length >= Math.Max(least, Region2.SnapDistance) && (contours.Sum(contour => Winding.Around(contour, piece.PointAt(0.5))) & 1) != 0)
            {
                yield return piece;
            }
        }
    }
}
