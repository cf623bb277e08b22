using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Dimensions.Placing;

/// <summary>
/// A distance with its dimension line in place, its text not yet: extension lines, a line with arrows, the text above it
/// (ISO 129-1, from memory).
/// </summary>
internal sealed class DimensionLine
{
    // ISO 129-1: eight times the width of the line from the outline to the extension line and beyond the dimension line.
    private const double Gap = 8 * 0.18;
    private const double Overrun = 8 * 0.18;

    // From the dimension line up to the text: closer and descenders touch the line, farther and the text seems lost.
    private const double TextLift = 0.4;

    // What arrows that stand outside draw of their line.
    private const double OutsideTail = 5;

    // A text between the arrows has at least this much line on both sides of it.
    private const double Beside = 1;

    /// <summary>Puts the line of a dimension in place.</summary>
    /// <param name="dimension">What is measured.</param>
    /// <param name="offset">How far the line stands to the left of <c>From</c> as seen along the direction, mm.</param>
    /// <param name="ink">The text.</param>
    public DimensionLine(PartDimension.Linear dimension, double offset, TextInk ink)
    {
        Ink = ink;
        var along = dimension.Direction.Unit();
        var start = dimension.From + (along.Left * offset);
        var end = start + (along * (dimension.To - dimension.From).Dot(along));
        Extensions = [Extension(dimension.From, start), Extension(dimension.To, end)];
        Angle = ReadableText.AngleAlong(along.Angle);
        Reading = Vector2.FromAngle(Angle);
        (First, Last) = (end - start).Dot(Reading) >= 0 ? (start, end) : (end, start);
        Length = First.DistanceTo(Last);
        HasArrowsInside = Length >= (2 * Arrowhead.Length) + 2;
    }

    /// <summary>The distance a dimension measures, mm.</summary>
    public static double LengthOf(PartDimension.Linear dimension) =>
        Math.Abs((dimension.To - dimension.From).Dot(dimension.Direction.Unit()));

    /// <summary>The text.</summary>
    public TextInk Ink { get; }

    /// <summary>Direction of reading, radians.</summary>
    public double Angle { get; }

    /// <summary>Unit direction of reading, which the line runs in.</summary>
    public Vector2 Reading { get; }

    /// <summary>The tip of the first arrow.</summary>
    public Point2 First { get; }

    /// <summary>The tip of the second arrow.</summary>
    public Point2 Last { get; }

    /// <summary>The measured distance, mm.</summary>
    public double Length { get; }

    /// <summary>False for a narrow distance, at which the arrows stand outside and point inward.</summary>
    public bool HasArrowsInside { get; }

    /// <summary>The extension lines; null where the dimension line runs through the measured point itself.</summary>
    public (Point2 Start, Point2 End)?[] Extensions { get; }

    /// <summary>What the line, its arrows and a text beside them take of a row, from the first tip along the reading, mm.</summary>
    public (double From, double To) Taken
    {
        get
        {
            var tail = HasArrowsInside ? 0 : Tail;
            return Ink.Width + (2 * Beside) <= Length ? (-tail, Length + tail) : (-tail, OutsideAfter + Ink.Width + Beside);
        }
    }

    /// <summary>Where the text may start along the line, from the first tip, best first.</summary>
    public IEnumerable<double> TextStarts()
    {
        const double Step = 2;
        var slack = (Length - Ink.Width) / 2;
        for (var shift = 0.0; slack - shift >= Beside; shift += Step)
        {
            yield return slack + shift;
            if (shift > 0)
            {
                yield return slack - shift;
            }
        }

        yield return OutsideAfter;
        yield return OutsideBefore;
    }

    /// <summary>The start of the baseline for a start along the line.</summary>
    public Point2 TextAt(double start) => First + (Reading * start) + (Reading.Left * ((TextLift * Ink.Height) + Ink.Depth));

    /// <summary>The dimension line, drawn on below a text that stands outside.</summary>
    /// <param name="textStart">Where the text starts along the line; null when it does not stand on it.</param>
    public (Point2 Start, Point2 End) Line(double? textStart)
    {
        var tail = HasArrowsInside ? 0 : Tail;
        var (from, to) = (-tail, Length + tail);
        if (textStart is { } start)
        {
            (from, to) = (Math.Min(from, start), Math.Max(to, start + Ink.Width));
        }

        return (First + (Reading * from), First + (Reading * to));
    }

    /// <summary>The arrow heads.</summary>
    public (Point2 Tip, Vector2 Direction)[] Arrows =>
        HasArrowsInside ? [(First, -Reading), (Last, Reading)] : [(First, Reading), (Last, -Reading)];

    /// <summary>Draws all but the text.</summary>
    public void Draw(Sketch sketch, double? textStart)
    {
        foreach (var extension in Extensions)
        {
            if (extension is { } line)
            {
                sketch.Line(Layer.Dimensions, line.Start, line.End, LineConventions.Thin);
            }
        }

        var (start, end) = Line(textStart);
        sketch.Line(Layer.Dimensions, start, end, LineConventions.Thin);
        foreach (var (tip, direction) in Arrows)
        {
            Arrowhead.Draw(sketch, tip, direction);
        }
    }

    private static double Tail => Arrowhead.Length + OutsideTail;

    private double OutsideAfter => Length + Overrun + 1 + (HasArrowsInside ? 0 : Arrowhead.Length);

    private double OutsideBefore => Length - OutsideAfter - Ink.Width;

    private static (Point2 Start, Point2 End)? Extension(Point2 from, Point2 to)
    {
        var way = to - from;
        if (way.Length <= Gap)
        {
            return null;
        }

        var unit = way.Unit();
        return (from + (unit * Gap), to + (unit * Overrun));
    }
}
