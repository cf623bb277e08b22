using PlanForge.Geometry;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>Reads the data of a path: all commands of SVG 1.1, chapter 8.3 (from memory).</summary>
/// <param name="outline">Takes the pieces.</param>
/// <param name="finish">Called at the end of each part of the path; true when it is closed.</param>
/// <param name="placeOf">The place in the file of a place in the data.</param>
internal sealed class SvgPathReader(SvgOutline outline, Action<bool> finish, Func<int, TextPlace> placeOf)
{
    private Point2 _first;
    private Point2 _current;
    private Point2 _control;
    private char _before;

    /// <summary>Reads all of the data.</summary>
    /// <returns>What is wrong, or null; what stands before the fault was read.</returns>
    public (int Position, string Text)? Read(string data)
    {
        var numbers = new SvgNumbers(data);
        numbers.SkipSpace();
        _before = ' ';
        while (!numbers.IsAtEnd)
        {
            var (position, command) = (numbers.Position, numbers.Next);
            if (!char.IsAsciiLetter(command) || !"MLHVCSQTAZ".Contains(char.ToUpperInvariant(command), StringComparison.Ordinal))
            {
                return Fault(position, $"{Words.Quote(data.AsSpan(position, 1))} is no command of a path; they are M L H V C S Q T A Z, large or small");
            }

            if (_before == ' ' && command is not ('M' or 'm'))
            {
                return Fault(position, "a path has to begin with M or m");
            }

            numbers.Skip();
            if (command is 'Z' or 'z')
            {
                Close(placeOf(position));
                numbers.SkipSpace();
                continue;
            }

            if (ReadArguments(ref numbers, command) is { } fault)
            {
                return Fault(fault, $"command {command} lacks a number here{(command is 'A' or 'a' ? ", or a flag that is 0 or 1" : "")}");
            }
        }

        finish(false);
        return null;
    }

    private (int, string)? Fault(int position, string text)
    {
        finish(false);
        return (position, text);
    }

    // One command may be followed by several sets of numbers; after a move the later ones are lines.
    private int? ReadArguments(ref SvgNumbers numbers, char command)
    {
        Span<double> values = stackalloc double[7];
        numbers.SkipSpace();
        do
        {
            var at = placeOf(numbers.Position);
            var kind = char.ToUpperInvariant(command);
            var count = kind switch { 'H' or 'V' => 1, 'C' => 6, 'S' or 'Q' => 4, 'A' => 7, _ => 2 };
            for (var i = 0; i < count; i++)
            {
                if (!(kind == 'A' && i is (3 or 4) ? numbers.TryFlag(out values[i]) : numbers.TryNumber(out values[i])))
                {
                    return numbers.Position;
                }

                numbers.SkipComma();
            }

            Draw(kind, char.IsAsciiLetterLower(command) ? _current - Point2.Origin : default, values, at);
            command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
        }
        while (!numbers.IsAtEnd && !char.IsAsciiLetter(numbers.Next) && outline.Segments.Count <= CutFile.MostSegments);

        return null;
    }

    private void Draw(char kind, Vector2 origin, ReadOnlySpan<double> v, TextPlace at)
    {
        var from = _current;
        var control = from;
        switch (kind)
        {
            case 'M':
                finish(false);
                outline.Begin();
                _first = _current = new Point2(v[0], v[1]) + origin;
                break;
            case 'L':
                LineTo(new Point2(v[0], v[1]) + origin, at);
                break;
            case 'H':
                LineTo(new(v[0] + origin.X, from.Y), at);
                break;
            case 'V':
                LineTo(new(from.X, v[0] + origin.Y), at);
                break;
            case 'C':
                control = new Point2(v[2], v[3]) + origin;
                CubicTo(new Point2(v[0], v[1]) + origin, control, new Point2(v[4], v[5]) + origin, at);
                break;
            case 'S':
                control = new Point2(v[0], v[1]) + origin;
                CubicTo(Mirrored('C', 'S'), control, new Point2(v[2], v[3]) + origin, at);
                break;
            case 'Q':
                control = new Point2(v[0], v[1]) + origin;
                QuadraticTo(control, new Point2(v[2], v[3]) + origin, at);
                break;
            case 'T':
                control = Mirrored('Q', 'T');
                QuadraticTo(control, new Point2(v[0], v[1]) + origin, at);
                break;
            default:
                _current = new Point2(v[5], v[6]) + origin;
                SvgArc.Add(outline, from, _current, new(v[0], v[1]), v[2], v[3] == 1, v[4] == 1, at);
                break;
        }

        (_control, _before) = (control, kind);
    }

    private Point2 Mirrored(char kind, char other) => _before == kind || _before == other ? _control.Towards(_current, 2) : _current;

    private void LineTo(Point2 to, TextPlace at)
    {
        outline.AddLine(_current, to, at);
        _current = to;
    }

    private void CubicTo(Point2 first, Point2 second, Point2 to, TextPlace at)
    {
        outline.AddCubic(_current, first, second, to, at);
        _current = to;
    }

    // A quadratic is the cubic with controls two thirds of the way to its own.
    private void QuadraticTo(Point2 control, Point2 to, TextPlace at) =>
        CubicTo(_current.Towards(control, 2.0 / 3), to.Towards(control, 2.0 / 3), to, at);

    private void Close(TextPlace at)
    {
        if (_current != _first)
        {
            outline.AddLine(_current, _first, at);
        }

        finish(true);
        outline.Begin();
        (_current, _before) = (_first, 'Z');
    }
}
