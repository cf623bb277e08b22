namespace PlanForge.Geometry.Deviations;

/// <summary>A stretch of a line with the distances at its ends, which bound those between.</summary>
/// <param name="Line">The stretch, turning through a quarter circle at most.</param>
/// <param name="AtStart">The nearest of the other lines at its start, and the distance, mm.</param>
/// <param name="AtEnd">The same at its end.</param>
internal readonly record struct Stretch(
    Segment2 Line, (Segment2 Segment, double Distance) AtStart, (Segment2 Segment, double Distance) AtEnd)
{
    /// <summary>A bound from below for the distance anywhere on the stretch, mm.</summary>
    public double Least => Math.Max(0, (AtStart.Distance + AtEnd.Distance - Line.Length) / 2);

    /// <summary>A bound from above for the distance anywhere on the stretch, mm, never less than at its ends.</summary>
    /// <remarks>
    /// A distance changes no faster than the place, so between ends a length L apart it is at most half of L more than their mean. And
    /// the distance to a straight line is convex along a straight line, so greatest at the ends: exact where one line runs beside
    /// another. Arcs are taken for their chords there, and what they rise above these is added.
    /// </remarks>
    public double Greatest
    {
        get
        {
            var slow = (AtStart.Distance + AtEnd.Distance + Line.Length) / 2;
            return Math.Min(slow, Math.Min(Beside(AtStart.Segment), Beside(AtEnd.Segment)));
        }
    }

    /// <summary>Both halves, given the nearest line at the middle.</summary>
    public (Stretch First, Stretch Second) Halved((Segment2 Segment, double Distance) atMiddle) =>
        (new(Line.Part(0, 0.5), AtStart, atMiddle), new(Line.Part(0.5, 1), atMiddle, AtEnd));

    /// <summary>Segments in pieces that turn through a quarter circle at most; those without length are left out.</summary>
    public static IEnumerable<Segment2> Pieces(IEnumerable<Segment2> segments)
    {
        foreach (var segment in segments)
        {
            if (segment.Start == segment.End)
            {
                continue;
            }

            var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(segment.Sweep) / (Math.PI / 2)));
            for (var i = 0; i < count; i++)
            {
                yield return segment.Part((double)i / count, (double)(i + 1) / count);
            }
        }
    }

    private double Beside(in Segment2 other)
    {
        var (from, to) = (other.NearestFraction(Line.Start), other.NearestFraction(Line.End));
        var atEnds = Math.Max(other.PointAt(from).DistanceTo(Line.Start), other.PointAt(to).DistanceTo(Line.End));
        return atEnds + Rise(Line, 1) + Rise(other, Math.Abs(to - from));
    }

    // r (1 − cos(a/2)) = 2 r sin²(a/4) for the angle a.
    private static double Rise(in Segment2 segment, double share)
    {
        if (segment.IsLine)
        {
            return 0;
        }

        var sine = Math.Sin(segment.Sweep * share / 4);
        return 2 * segment.Radius * sine * sine;
    }
}
