using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>Takes the pieces of one path in user units and keeps lines and arcs in mm; other curves are taken apart into chords.</summary>
/// <param name="matrix">From user units to mm.</param>
internal sealed class SvgOutline(SvgMatrix matrix)
{
    // Greatest distance of a chord from its curve, mm: half of what counts as the same place.
    private const double ChordTolerance = 0.005;

    // Chords of one curve; more than a curve of a metre needs, few enough for a file that is nothing but curves.
    private const int MostChords = 250;

    // Relative difference of radii up to which an ellipse is a circle: what numbers of six digits lose.
    private const double Alike = 1e-5;

    /// <summary>The pieces so far.</summary>
    public List<FileSegment> Segments { get; } = [];

    /// <summary>True once a Bézier was taken apart.</summary>
    public bool HasBezier { get; private set; }

    /// <summary>True once an arc of an ellipse was taken apart.</summary>
    public bool HasEllipse { get; private set; }

    /// <summary>Forgets the pieces, to begin the next path.</summary>
    public void Begin() => Segments.Clear();

    public void AddLine(Point2 from, Point2 to, TextPlace at) => Segments.Add(new(new(matrix.Apply(from), matrix.Apply(to), 0), at));

    public void AddCubic(Point2 start, Point2 first, Point2 second, Point2 end, TextPlace at)
    {
        HasBezier = true;
        var (a, b, c, d) = (matrix.Apply(start), matrix.Apply(first), matrix.Apply(second), matrix.Apply(end));

        // A chord over 1/n of the parameter misses the curve by no more than 6 m / (8 n²), m the greatest second difference.
        var second2 = Math.Max(((c - b) - (b - a)).Length, ((d - c) - (c - b)).Length);
        var count = (int)Math.Clamp(Math.Ceiling(Math.Sqrt(0.75 * second2 / ChordTolerance)), 1, MostChords);
        var from = a;
        for (var i = 1; i <= count; i++)
        {
            var t = (double)i / count;
            var s = 1 - t;
            var to = i == count ? d : a + ((b - a) * (3 * s * s * t)) + ((c - a) * (3 * s * t * t)) + ((d - a) * (t * t * t));
            Segments.Add(new(new(from, to, 0), at, IsChord: true));
            from = to;
        }
    }

    /// <summary>An arc of an ellipse from angle to angle of its own parameter.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radii">Its half axes, over 0.</param>
    /// <param name="axis">Direction of the first axis, radians.</param>
    /// <param name="from">Where it begins, radians.</param>
    /// <param name="sweep">How far it turns, radians.</param>
    /// <param name="ends">Its ends as the file gives them.</param>
    /// <param name="at">Where it stands in the file.</param>
    public void AddArc(Point2 centre, Vector2 radii, double axis, double from, double sweep, (Point2 Start, Point2 End) ends, TextPlace at)
    {
        var isCircle = Math.Abs(radii.X - radii.Y) <= Alike * radii.X && matrix.KeepsCircles;
        var size = Math.Sqrt(Math.Abs(matrix.Determinant)) * Math.Max(radii.X, radii.Y);
        HasEllipse |= !isCircle;

        // A sagitta over the angle a is r (1 − cos(a/2)), about r a²/8.
        var count = isCircle
            ? (int)Math.Ceiling(Math.Abs(sweep) / Math.PI)
            : (int)Math.Clamp(Math.Ceiling(Math.Abs(sweep) / Math.Sqrt(8 * ChordTolerance / Math.Max(size, ChordTolerance))), 4, MostChords);
        count = Math.Max(1, count);
        var bulge = isCircle ? Math.Tan(sweep / count / 4) * Math.Sign(matrix.Determinant) : 0;
        var last = matrix.Apply(ends.Start);
        for (var i = 1; i <= count; i++)
        {
            var (sin, cos) = Math.SinCos(from + (sweep * i / count));
            var offset = new Vector2(cos * radii.X, sin * radii.Y);
            var to = matrix.Apply(i == count ? ends.End : centre + offset.Turned(axis));
            Segments.Add(new(new(last, to, bulge), at, IsChord: !isCircle));
            last = to;
        }
    }
}
