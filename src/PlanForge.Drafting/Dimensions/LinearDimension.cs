using PlanForge.Airframe;
using PlanForge.Drafting.Conventions;
using PlanForge.Drafting.Lettering;
using PlanForge.Drafting.Measures;
using PlanForge.Drafting.Model;
using PlanForge.Geometry;
using PlanForge.Parts;

namespace PlanForge.Drafting.Dimensions;

/// <summary>Draws a distance: extension lines, dimension line with arrows, text above it (ISO 129-1, from memory).</summary>
internal static class LinearDimension
{
    // ISO 129-1: eight times the width of the line from the outline to the extension line and beyond the dimension line.
    private const double Gap = 8 * 0.18;
    private const double Overrun = 8 * 0.18;

    // From the dimension line up to the text: closer and descenders touch the line, farther and the text seems lost.
    private const double TextLift = 0.4;

    // What arrows that stand outside draw of their line.
    private const double OutsideTail = 5;

    /// <summary>Draws a dimension and returns the room its text takes.</summary>
    public static Bounds2 Draw(Sketch sketch, PartDimension.Linear dimension, DisplayUnit unit, double height)
    {
        var along = dimension.Direction.Unit();
        var left = along.Left;
        var start = dimension.From + (left * dimension.Offset);
        var measured = (dimension.To - dimension.From).Dot(along);
        var end = start + (along * measured);
        DrawExtension(sketch, dimension.From, start);
        DrawExtension(sketch, dimension.To, end);

        // From here on the line runs in the direction of reading.
        var angle = ReadableText.AngleAlong(along.Angle);
        var reading = Vector2.FromAngle(angle);
        var (first, last) = (end - start).Dot(reading) >= 0 ? (start, end) : (end, start);
        var length = Math.Abs(measured);
        var text = dimension.Text ?? Measure.Length(length, unit);
        var width = StrokeAlphabet.WidthOf(text, height);
        var isRoomy = length >= (2 * Arrowhead.Length) + 2;
        var isTextInside = length >= width + 2;

        var lineStart = isRoomy ? first : first - (reading * (Arrowhead.Length + OutsideTail));
        var lineEnd = isRoomy ? last : last + (reading * (Arrowhead.Length + OutsideTail));
        var textStart = isTextInside
            ? first + (reading * ((length - width) / 2))
            : last + (reading * (Overrun + 1 + (isRoomy ? 0 : Arrowhead.Length)));
        if (!isTextInside)
        {
            lineEnd = textStart + (reading * width);
        }

        sketch.Line(Layer.Dimensions, lineStart, lineEnd, LineConventions.Thin);
        Arrowhead.Draw(sketch, first, isRoomy ? -reading : reading);
        Arrowhead.Draw(sketch, last, isRoomy ? reading : -reading);
        var lift = (TextLift + DepthOf(text)) * height;
        return sketch.Text(Layer.Dimensions, text, textStart + (reading.Left * lift), height, angle);
    }

    private static void DrawExtension(Sketch sketch, Point2 from, Point2 to)
    {
        var way = to - from;
        if (way.Length > Gap)
        {
            var unit = way.Unit();
            sketch.Line(Layer.Dimensions, from + (unit * Gap), to + (unit * Overrun), LineConventions.Thin);
        }
    }

    // Fractions and tails reach below the baseline: the text is lifted so that they keep clear of the line as well.
    private static double DepthOf(string text)
    {
        var extents = TextExtents.Of(text, default, 1, 0);
        return extents.IsEmpty ? 0 : Math.Max(0, -extents.MinY - (StrokeAlphabet.StrokeWidth / 2));
    }
}
