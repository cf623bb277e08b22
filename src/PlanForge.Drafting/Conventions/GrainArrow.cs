using PlanForge.Drafting.Dimensions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;

namespace PlanForge.Drafting.Conventions;

/// <summary>The sign for the direction of the grain: a long line with a half arrow head at each end and the word <c>grain</c>.</summary>
internal static class GrainArrow
{
    private const string Word = "grain";
    private const double BarbLength = 4;
    private const double BarbWidth = 1.2;

    // From the line up to the word, in heights: its g reaches 0.35 down, and stays clear.
    private const double TextLift = 0.55;
    private static readonly LineStyle Style = new(LineType.Continuous, 0.25);

    /// <summary>Draws the sign with its middle at the origin.</summary>
    /// <param name="angle">Direction of the grain, radians; either way along it is the same.</param>
    /// <param name="length">Length of the line, mm.</param>
    /// <param name="height">Height of the word's capitals, mm.</param>
    public static Sketch Draw(double angle, double length, double height)
    {
        var sketch = new Sketch();
        var reading = ReadableText.AngleAlong(angle);
        var along = Vector2.FromAngle(reading);
        var half = along * (length / 2);
        var barb = (along * -BarbLength) + (along.Left * BarbWidth);
        sketch.Stroke(
            Layer.Notes,
            Path2.Polyline(Point2.Origin - half - barb, Point2.Origin - half, Point2.Origin + half, Point2.Origin + half + barb),
            Style);
        var width = StrokeAlphabet.WidthOf(Word, height);
        sketch.Text(Layer.Notes, Word, Point2.Origin - (along * (width / 2)) + (along.Left * (TextLift * height)), height, reading);
        return sketch;
    }
}
