using PlanForge.Output.Bytes;

namespace PlanForge.Output.Pdf;

/// <summary>Spelling of single PDF values (ISO 32000-1, 7.3 and 7.9).</summary>
internal static class PdfSyntax
{
    /// <summary>Points to a millimetre: 72 to the inch of exactly 25.4 mm.</summary>
    public const double PointsPerMillimetre = 72 / 25.4;

    // A millionth of a point is a third of a nanometre: boxes hold to that.
    private const int BoxDecimals = 6;

    /// <summary>Appends a reference to another object.</summary>
    public static ByteText AppendReference(this ByteText text, int number) => text.Append(number).Append(" 0 R"u8);

    /// <summary>Appends references as an array.</summary>
    public static ByteText AppendReferences(this ByteText text, IEnumerable<int> numbers)
    {
        text.Append("["u8);
        foreach (var number in numbers)
        {
            text.Append(" "u8).AppendReference(number);
        }

        return text.Append(" ]"u8);
    }

    /// <summary>Appends the rectangle of a page, in points, from its size in millimetres.</summary>
    public static ByteText AppendBox(this ByteText text, double width, double height) => text
        .Append("[0 0 "u8).Append(width * PointsPerMillimetre, BoxDecimals)
        .Append(" "u8).Append(height * PointsPerMillimetre, BoxDecimals).Append("]"u8);

    /// <summary>Appends a name; characters that a name cannot hold as they are go as <c>#</c> and two digits.</summary>
    public static ByteText AppendName(this ByteText text, string name)
    {
        text.Append("/"u8);
        foreach (var character in name)
        {
            if (char.IsAsciiLetterOrDigit(character) || character is '-' or '.' or '+' or '_')
            {
                text.Append((byte)character);
            }
            else
            {
                text.Append("#"u8).AppendHex(character, digits: 2);
            }
        }

        return text;
    }

    /// <summary>Appends a text string: as it is when it is plain ASCII, otherwise as UTF-16 in hexadecimal.</summary>
    public static ByteText AppendString(this ByteText text, string value)
    {
        if (IsPlain(value))
        {
            text.Append("("u8);
            foreach (var character in value)
            {
                text.Append((byte)character);
            }

            return text.Append(")"u8);
        }

        text.Append("<FEFF"u8);
        foreach (var unit in value)
        {
            text.AppendHex(unit, digits: 4);
        }

        return text.Append(">"u8);
    }

    private static bool IsPlain(string value)
    {
        foreach (var character in value)
        {
            if (character is < ' ' or > '~' or '(' or ')' or '\\')
            {
                return false;
            }
        }

        return true;
    }
}
