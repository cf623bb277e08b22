using System.Collections.Immutable;
using PlanForge.Drafting.Lettering;
using PlanForge.Geometry;
using PlanForge.Output.Bytes;

namespace PlanForge.Output.Svg;

/// <summary>
/// A letter of one size and direction as path data that follows a move to where its first stroke begins, in relative coordinates: it
/// is written out once and set down wherever the letter stands.
/// </summary>
internal sealed class LetterStamp
{
    // Lettering is read, not measured, and most of the file: a thousandth of a millimetre is enough.
    private const int Decimals = 3;
    private const double Unit = 1e-3;

    private readonly ByteText _data = new(64);

    /// <summary>Writes a letter out.</summary>
    /// <param name="glyph">The letter; it has strokes.</param>
    /// <param name="size">Height of its capitals, mm.</param>
    /// <param name="angle">Direction of reading from the x axis, radians.</param>
    public LetterStamp(Glyph glyph, double size, double angle)
    {
        var strokes = ImmutableArray.CreateBuilder<Path2>(glyph.Strokes.Length);
        new PlacedGlyph(default, glyph, Point2.Origin, 1).AddStrokes(Point2.Origin, size, angle, strokes);
        First = strokes[0].Start - Point2.Origin;
        var frame = new SvgFrame(0, 0);
        var pen = new StepPen(_data, frame.Apply(strokes[0].Start));
        foreach (var stroke in strokes)
        {
            SvgPath.Draw(stroke, frame, pen);
        }
    }

    /// <summary>From the letter's origin to where its first stroke begins, mm, y up.</summary>
    public Vector2 First { get; }

    /// <summary>Sets the letter down.</summary>
    /// <param name="text">Path data.</param>
    /// <param name="first">Where its first stroke begins, in the picture.</param>
    public void AppendAt(ByteText text, Point2 first) =>
        text.Append("M"u8).Append(first.X, Decimals).Append(" "u8).Append(first.Y, Decimals).Append(_data.Written);

    /// <summary>
    /// Writes steps from where rounded steps have led, so that no error adds up. The first move is left to whoever sets the letter down.
    /// </summary>
    private sealed class StepPen(ByteText data, Point2 origin) : ISvgPen
    {
        private (long X, long Y) _at;
        private (long X, long Y) _start;
        private bool _isSetDown;

        public void MoveTo(Point2 point)
        {
            if (_isSetDown)
            {
                Step("m"u8, point);
            }

            (_start, _isSetDown) = (_at, true);
        }

        public void LineTo(Point2 point) => Step("l"u8, point);

        public void ArcTo(double radius, bool isClockwise, Point2 point)
        {
            data.Append("a"u8).Append(radius, Decimals).Append(" "u8).Append(radius, Decimals);
            Step(SvgPath.ArcFlags(isClockwise), point);
        }

        public void Close()
        {
            data.Append("z"u8);
            _at = _start;
        }

        private void Step(ReadOnlySpan<byte> command, Point2 point)
        {
            var to = (X: (long)Math.Round((point.X - origin.X) / Unit), Y: (long)Math.Round((point.Y - origin.Y) / Unit));
            data.Append(command).Append((to.X - _at.X) * Unit, Decimals).Append(" "u8).Append((to.Y - _at.Y) * Unit, Decimals);
            _at = to;
        }
    }
}
