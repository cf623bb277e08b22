using PlanForge.Drafting.Lettering;
using PlanForge.Geometry;
using PlanForge.Output.Bytes;
using PlanForge.Output.Curves;

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
    private (long X, long Y) _pen;

    /// <summary>Writes a letter out.</summary>
    /// <param name="glyph">The letter; it has strokes.</param>
    /// <param name="size">Height of its capitals, mm.</param>
    /// <param name="angle">Direction of reading from the x axis, radians.</param>
    public LetterStamp(Glyph glyph, double size, double angle)
    {
        Vector2 Turned(Point2 point) => ((point - Point2.Origin) * size).Turned(angle);

        First = Turned(glyph.Strokes[0].Vertices[0].Point);
        var isFirst = true;
        foreach (var stroke in glyph.Strokes)
        {
            if (!isFirst)
            {
                AppendTo("m"u8, Turned(stroke.Vertices[0].Point));
            }

            isFirst = false;
            Append(stroke, Turned);
        }
    }

    /// <summary>From the letter's origin to where its first stroke begins, mm, y up.</summary>
    public Vector2 First { get; }

    /// <summary>Sets the letter down.</summary>
    /// <param name="text">Path data.</param>
    /// <param name="first">Where its first stroke begins, in the picture.</param>
    public void AppendAt(ByteText text, Point2 first) =>
        text.Append("M"u8).Append(first.X, Decimals).Append(" "u8).Append(first.Y, Decimals).Append(_data.Written);

    private void Append(Path2 stroke, Func<Point2, Vector2> turned)
    {
        var start = _pen;
        var vertices = stroke.Vertices;
        for (var i = 0; i < stroke.SegmentCount; i++)
        {
            var isLast = i == vertices.Length - 1;
            var (from, to) = (turned(vertices[i].Point), turned(vertices[isLast ? 0 : i + 1].Point));
            var segment = new Segment2(Point2.Origin + from, Point2.Origin + to, vertices[i].Bulge);
            if (!isLast || !segment.IsFlatterThan(CurveTolerance.Flat))
            {
                Append(segment);
            }
        }

        if (stroke.IsClosed)
        {
            _data.Append("z"u8);
            _pen = start;
        }
    }

    private void Append(Segment2 segment)
    {
        if (segment.IsFlatterThan(CurveTolerance.Flat))
        {
            AppendTo("l"u8, segment.End - Point2.Origin);
        }
        else if (Math.Abs(segment.Bulge) > SvgPath.WidestBulge)
        {
            var (first, second) = segment.Halves();
            Append(first);
            Append(second);
        }
        else
        {
            // With y down, left and right have changed places: a bulge over 0 turns against the clock in the drawing and to the eye.
            _data.Append("a"u8).Append(segment.Radius, Decimals).Append(" "u8).Append(segment.Radius, Decimals);
            AppendTo(segment.Bulge > 0 ? " 0 0 0 "u8 : " 0 0 1 "u8, segment.End - Point2.Origin);
        }
    }

    // Steps are counted from where rounded steps have led, so that no error adds up.
    private void AppendTo(ReadOnlySpan<byte> command, Vector2 place)
    {
        var to = ((long)Math.Round((place.X - First.X) / Unit), (long)Math.Round((First.Y - place.Y) / Unit));
        _data.Append(command).Append((to.Item1 - _pen.X) * Unit, Decimals).Append(" "u8).Append((to.Item2 - _pen.Y) * Unit, Decimals);
        _pen = to;
    }
}
