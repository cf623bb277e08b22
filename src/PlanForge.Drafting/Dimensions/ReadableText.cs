using PlanForge.Drafting.Lettering;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Dimensions;

/// <summary>A text placed so that it reads from below or from the right of the sheet (ISO 129-1, from memory).</summary>
/// <param name="At">Start of the baseline.</param>
/// <param name="Angle">Direction of reading, radians in (−90°, 90°].</param>
internal readonly record struct ReadableText(Point2 At, double Angle)
{
    // An angle this near to straight down still counts as straight up; rounding of turned parts stays far below it.
    private const double Slack = 1e-6;

    /// <summary>The direction of reading along a line that may be travelled either way, radians in (−90°, 90°].</summary>
    public static double AngleAlong(double radians)
    {
        var angle = Math.IEEERemainder(radians, Math.PI);
        return angle <= (-Math.PI / 2) + Slack ? angle + Math.PI : angle;
    }

    /// <summary>Places a text by its anchor; one that would stand on its head is turned over within the room it takes.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="at">The place it belongs to.</param>
    /// <param name="anchor">Which point of the text lies there.</param>
    /// <param name="angle">Wanted direction of reading, radians.</param>
    /// <param name="height">Height of capitals, mm.</param>
    public static ReadableText Place(string text, Point2 at, Anchor anchor, double angle, double height)
    {
        var along = Vector2.FromAngle(angle);
        var width = StrokeAlphabet.WidthOf(text, height);
        var start = anchor switch
        {
            Anchor.Start => at,
            Anchor.End => at - (along * width),
            _ => at - (along * (width / 2)) - (along.Left * (height / 2)),
        };
        var readable = AngleAlong(angle);
        var isOver = Math.Cos(readable - angle) < 0;
        return isOver ? new(start + (along * width) + (along.Left * height), readable) : new(start, readable);
    }
}
