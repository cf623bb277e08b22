using PlanForge.Airframe.Diagnostics;
using YamlDotNet.Core;

namespace PlanForge.Airframe.Reading.Yaml;

/// <summary>Finds the characters of a scalar's value in the file, through quotes, escapes and folded lines.</summary>
/// <param name="File">The file.</param>
/// <param name="Start">Offset of the scalar, quotes included.</param>
/// <param name="End">Offset after it.</param>
/// <param name="Style">How it is written.</param>
internal sealed record ScalarSource(SourceText File, int Start, int End, ScalarStyle Style)
{
    /// <summary>The position of a stretch of the value; null when the writing cannot be followed, as in block scalars.</summary>
    /// <param name="value">The scalar's value.</param>
    /// <param name="offset">Where the stretch begins in the value; may be its end.</param>
    /// <param name="length">Its length.</param>
    public SourcePosition? AtPart(string value, int offset, int length)
    {
        if (Style is not (ScalarStyle.Plain or ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted))
        {
            return null;
        }

        var inner = Style == ScalarStyle.Plain ? 0 : 1;
        var at = Start + inner;
        var end = End - inner;
        var first = -1;
        for (var i = 0; i < value.Length; i++)
        {
            if (i == offset)
            {
                first = at;
            }

            if (i == offset + length)
            {
                return File.At(first, at);
            }

            if (Step(value[i], ref at, end) is false)
            {
                return null;
            }
        }

        return first < 0 ? File.At(at, at + 1) : File.At(first, at);
    }

    /// <summary>Moves over what stands for one character of the value; false when it is something else.</summary>
    private bool Step(char character, ref int at, int end)
    {
        var text = File.Text;
        if (at >= end)
        {
            return false;
        }

        if (Style == ScalarStyle.DoubleQuoted && text[at] == '\\')
        {
            // \xHH, \uHHHH and \UHHHHHHHH have a fixed number of digits; other escapes are one character.
            at += at + 1 >= end ? 1 : text[at + 1] switch { 'x' => 4, 'u' => 6, 'U' => 10, _ => 2 };
            return at <= end;
        }

        if (Style == ScalarStyle.SingleQuoted && text[at] == '\'')
        {
            at += 2;
            return character == '\'';
        }

        if (character is ' ' or '\n' && IsBreakAhead(at, end))
        {
            while (at < end && text[at] is ' ' or '\t' or '\n' or '\r')
            {
                at++;
            }

            return character == ' ';
        }

        return text[at++] == character;
    }

    /// <summary>True when only blanks stand between here and the end of the line: the line is folded here.</summary>
    private bool IsBreakAhead(int at, int end)
    {
        while (at < end && File.Text[at] is ' ' or '\t')
        {
            at++;
        }

        return at < end && File.Text[at] is '\n' or '\r';
    }
}
