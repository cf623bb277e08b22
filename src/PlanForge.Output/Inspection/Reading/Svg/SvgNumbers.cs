using System.Globalization;

namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>Reads the numbers of an attribute one after the other, parted by white space or single commas.</summary>
internal ref struct SvgNumbers(ReadOnlySpan<char> text)
{
    private readonly ReadOnlySpan<char> _text = text;

    /// <summary>Where reading goes on.</summary>
    public int Position { get; private set; }

    public readonly bool IsAtEnd => Position >= _text.Length;

    public readonly char Next => _text[Position];

    public void Skip() => Position++;

    /// <summary>Passes white space.</summary>
    public void SkipSpace()
    {
        while (!IsAtEnd && Next is ' ' or '\t' or '\n' or '\r' or '\f')
        {
            Position++;
        }
    }

    /// <summary>Passes white space and one comma.</summary>
    public void SkipComma()
    {
        SkipSpace();
        if (!IsAtEnd && Next == ',')
        {
            Position++;
            SkipSpace();
        }
    }

    /// <summary>A number of the grammar (SVG 1.1, 8.3.9; from memory), finite; else the position stays.</summary>
    public bool TryNumber(out double number)
    {
        var end = Position;
        end += end < _text.Length && _text[end] is '+' or '-' ? 1 : 0;
        var digits = end;
        end = PastDigits(end);
        var count = end - digits;
        if (end < _text.Length && _text[end] == '.')
        {
            var fraction = PastDigits(end + 1);
            count += fraction - end - 1;
            end = fraction;
        }

        number = 0;
        if (count == 0)
        {
            return false;
        }

        if (end < _text.Length && _text[end] is 'e' or 'E')
        {
            var power = end + 1;
            power += power < _text.Length && _text[power] is '+' or '-' ? 1 : 0;
            var last = PastDigits(power);
            end = last > power ? last : end;
        }

        if (!double.TryParse(_text[Position..end], NumberStyles.Float, CultureInfo.InvariantCulture, out number) || !double.IsFinite(number))
        {
            return false;
        }

        Position = end;
        return true;
    }

    /// <summary>A flag of an arc: one digit, 0 or 1, that needs nothing after it.</summary>
    public bool TryFlag(out double flag)
    {
        flag = !IsAtEnd && Next == '1' ? 1 : 0;
        if (IsAtEnd || Next is not ('0' or '1'))
        {
            return false;
        }

        Position++;
        return true;
    }

    /// <summary>The letters from here on, which are passed.</summary>
    public ReadOnlySpan<char> Word()
    {
        var start = Position;
        while (!IsAtEnd && (char.IsAsciiLetter(Next) || Next == '%'))
        {
            Position++;
        }

        return _text[start..Position];
    }

    private readonly int PastDigits(int position)
    {
        while (position < _text.Length && char.IsAsciiDigit(_text[position]))
        {
            position++;
        }

        return position;
    }
}
