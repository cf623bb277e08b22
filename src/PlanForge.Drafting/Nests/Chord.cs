using PlanForge.Geometry;

namespace PlanForge.Drafting.Nests;

/// <summary>A straight piece of a contour, and how far the contour strays from it.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Stray">Greatest distance of the contour from it, mm; 0 for a line.</param>
internal readonly record struct Chord(Point2 Start, Point2 End, double Stray)
{
    // Chords may cut this much off an arc, mm. It widens gaps by as much; a tenth of it would only cost time.
    private const double Tolerance = 0.05;

    /// <summary>The chords of closed contours.</summary>
    public static Chord[] Of(IEnumerable<Path2> contours)
    {
        var chords = new List<Chord>();
        foreach (var contour in contours)
        {
            foreach (var segment in contour.Segments)
            {
                Add(chords, segment);
            }
        }

        return [.. chords];
    }

    /// <summary>The chord turned and moved.</summary>
    public Chord Placed(in Placement2 placement) => new(placement.Apply(Start), placement.Apply(End), Stray);

    private static void Add(List<Chord> chords, in Segment2 segment)
    {
        if (segment.IsLine)
        {
            chords.Add(new(segment.Start, segment.End, 0));
            return;
        }

        // The sagitta over the angle a is 2 r sin²(a/4).
        var (radius, sweep) = (segment.Radius, Math.Abs(segment.Sweep));
        var step = 4 * Math.Asin(Math.Min(1, Math.Sqrt(Tolerance / (2 * radius))));
        var pieces = Math.Max(1, (int)Math.Ceiling(sweep / step));
        var sine = Math.Sin(sweep / pieces / 4);
        var stray = 2 * radius * sine * sine;
        var from = segment.Start;
        for (var i = 1; i <= pieces; i++)
        {
            var to = segment.PointAt((double)i / pieces);
            chords.Add(new(from, to, stray));
            from = to;
        }
    }
}
