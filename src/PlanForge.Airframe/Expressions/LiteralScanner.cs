using System.Globalization;
using PlanForge.Airframe.Diagnostics;
using PlanForge.Airframe.Quantities;
using static PlanForge.Airframe.Expressions.Characters;

namespace PlanForge.Airframe.Expressions;

/// <summary>Reads numbers with their units from a value's text; <see cref="Expression"/> has the grammar.</summary>
/// <param name="text">The value's text.</param>
/// <param name="isParameter">True for the names of parameters, to tell a missing <c>*</c> from a misspelled unit.</param>
internal sealed class LiteralScanner(string text, Func<string, bool> isParameter)
{
    private const double InchesInFoot = 12;
    private const double MinutesInDegree = 60;

    private readonly int _firstLiteral = FirstLiteral(text);

    /// <summary>Why the last scan gave nothing.</summary>
    public ExpressionFault? Fault { get; private set; }

    /// <summary>The offset after the last literal.</summary>
    public int End { get; private set; }

    /// <summary>Reads the literal that begins at an offset; null, with <see cref="Fault"/> set, when it is none.</summary>
    /// <param name="start">The offset of its first digit or decimal point.</param>
    /// <param name="isAfterDivision">True directly after a division sign, where a fraction could be misread.</param>
    /// <param name="isInCall">True between the parentheses of a function, where commas part values.</param>
    public Literal? Scan(int start, bool isAfterDivision, bool isInCall)
    {
        if (ScanNumber(start, isInCall) is not { } number)
        {
            return null;
        }

        if (number.IsFraction && isAfterDivision && !number.IsMixed)
        {
            var fraction = Quote.Text(text[start..number.End]);
            return Fail(
                start, number.End, $"{fraction} right after a division can be read in two ways; put it in parentheses with its unit");
        }

        if (ScanUnit(number.End) is not { } unit)
        {
            return null;
        }

        var literal = new Literal(start, End - start, number.Value, unit, number.IsFraction, false);
        return unit switch
        {
            Unit.Foot when BeginsNumber(AfterBlanks(text, End)) => WithInches(literal, number, isInCall),
            Unit.Degree when BeginsNumber(AfterBlanks(text, End)) => WithMinutes(literal, number, isInCall),
            _ => literal,
        };
    }

    private Literal? WithInches(Literal feet, ScannedNumber feetNumber, bool isInCall)
    {
        var start = AfterBlanks(text, End);
        if (ScanNumber(start, isInCall) is not { } inches || ScanUnit(inches.End) is not { } unit)
        {
            return null;
        }

        if (unit != Unit.Inch)
        {
            return Fail(start, End, "after feet only inches can follow, such as `5' 6 1/2\"`");
        }

        if (!feetNumber.IsWhole)
        {
            return Fail(feet.Offset, feet.Offset + feet.Length, "feet before inches must be a whole number");
        }

        return inches.Value < InchesInFoot
            ? new Literal(feet.Offset, End - feet.Offset, (feet.Number * InchesInFoot) + inches.Value, Unit.Inch, inches.IsFraction, true)
            : Fail(start, End, "inches after feet must be under 12");
    }

    private Literal? WithMinutes(Literal degrees, ScannedNumber degreesNumber, bool isInCall)
    {
        var start = AfterBlanks(text, End);
        if (ScanSixtieths(start, '\'', '′', "after degrees only minutes can follow, such as `1° 30'`", isInCall) is not { } minutes)
        {
            return null;
        }

        if (!degreesNumber.IsWhole)
        {
            return Fail(degrees.Offset, degrees.Offset + degrees.Length, "degrees before minutes must be a whole number");
        }

        var value = degrees.Number + (minutes.Value / MinutesInDegree);
        var next = AfterBlanks(text, End);
        if (BeginsNumber(next))
        {
            var minutesEnd = End;
            const string Otherwise = "after minutes only seconds can follow, such as `1° 30' 15\"`";
            if (ScanSixtieths(next, '"', '″', Otherwise, isInCall) is not { } seconds)
            {
                return null;
            }

            if (!minutes.IsWhole)
            {
                return Fail(start, minutesEnd, "minutes before seconds must be a whole number");
            }

            value = degrees.Number + (((minutes.Value * MinutesInDegree) + seconds.Value) / (MinutesInDegree * MinutesInDegree));
        }

        return new Literal(degrees.Offset, End - degrees.Offset, value, Unit.Degree, false, true);
    }

    private ScannedNumber? ScanSixtieths(int start, char sign, char prime, string otherwise, bool isInCall)
    {
        if (ScanNumber(start, isInCall) is not { } number)
        {
            return null;
        }

        var at = AfterBlanks(text, number.End);
        if (at == text.Length || (text[at] != sign && text[at] != prime))
        {
            Fail(start, number.End, otherwise);
            return null;
        }

        End = at + 1;
        if (number.Value >= MinutesInDegree)
        {
            Fail(start, End, "minutes and seconds must be under 60");
            return null;
        }

        return number;
    }

    private ScannedNumber? ScanNumber(int start, bool isInCall)
    {
        var end = AfterDigits(text, start);
        var isWhole = end > start;
        if (isWhole && ScanFraction(start, end, isInCall) is { } fraction)
        {
            return fraction;
        }

        if (Fault is not null)
        {
            return null;
        }

        if (end < text.Length && text[end] == '.')
        {
            isWhole = false;
            end = AfterDigits(text, end + 1);
        }

        if (end + 1 < text.Length && text[end] is ',' && IsDigit(text[end + 1]))
        {
            var comma = end;
            end = AfterDigits(text, comma + 1);
            var (written, before, after) = (Quote.Text(text[start..end]), text[start..comma], text[(comma + 1)..end]);
            var withPoint = Quote.Text($"{before}.{after}");
            Fail(start, end, isInCall
                ? $"{written} may be one decimal or two values; write {withPoint} or {Quote.Text($"{before}, {after}")}"
                : $"decimals are written with a decimal point: {withPoint}, not {written}");
            return null;
        }

        if (end < text.Length && text[end] == '.')
        {
            Fail(start, end + 1, "a number has one decimal point at most");
            return null;
        }

        var exponentDigits = end < text.Length && text[end] is 'e' or 'E' ? end + 1 : text.Length;
        if (exponentDigits < text.Length && text[exponentDigits] is '+' or '-')
        {
            exponentDigits++;
        }

        if (exponentDigits < text.Length && IsDigit(text[exponentDigits]))
        {
            isWhole = false;
            end = AfterDigits(text, exponentDigits);
        }

        return new(Number(start, end), end, isWhole, false, false);
    }

    /// <summary>A fraction or mixed number whose first digits end at <paramref name="digitsEnd"/>, or null when there is none.</summary>
    private ScannedNumber? ScanFraction(int start, int digitsEnd, bool isInCall)
    {
        var whole = 0.0;
        var (numerator, slash) = (start, digitsEnd);
        var afterBlanks = AfterBlanks(text, digitsEnd);
        var isMixed = afterBlanks > digitsEnd && afterBlanks < text.Length && IsDigit(text[afterBlanks]);
        if (isMixed)
        {
            whole = Number(start, digitsEnd);
            (numerator, slash) = (afterBlanks, AfterDigits(text, afterBlanks));
        }

        if (slash + 1 >= text.Length || text[slash] != '/' || !IsDigit(text[slash + 1]))
        {
            return null;
        }

        var end = AfterDigits(text, slash + 1);
        if (end < text.Length && (text[end] == '.' || (text[end] == ',' && !isInCall)))
        {
            return null;
        }

        if (!isMixed && !IsFollowedByUnit(end) && !IsWholeValue(start, end))
        {
            return null;
        }

        var (above, below) = (Number(numerator, slash), Number(slash + 1, end));
        if (below == 0)
        {
            Fail(numerator, end, "the lower number of a fraction cannot be 0");
            return null;
        }

        if (isMixed && above >= below)
        {
            Fail(numerator, end, "the fraction of a mixed number must be less than 1");
            return null;
        }

        return new(whole + (above / below), end, false, true, isMixed);
    }

    /// <summary>The unit that stands after blanks at an offset, none when there is none; null when a word there is no unit.</summary>
    private Unit? ScanUnit(int at)
    {
        End = at;
        var start = AfterBlanks(text, at);
        if (start == text.Length)
        {
            return Unit.None;
        }

        if (UnitTable.FromSign(text[start]) is { } sign)
        {
            End = start + 1;
            return sign;
        }

        if (!BeginsWord(text[start]))
        {
            return Unit.None;
        }

        End = AfterWord(text, start);
        var word = text[start..End];
        if (UnitTable.FromWord(word) is { } unit)
        {
            return unit;
        }

        Fail(start, End, isParameter(word) || FunctionTable.FromName(word) is not null
            ? $"an operator is missing before {Quote.Text(word)}; to multiply, write `*` between them"
            : $"{Quote.Text(word)} is not a unit; did you mean `{UnitTable.Nearest(word)}`? Known units are {UnitTable.KnownSpellings}");
        return null;
    }

    private bool IsFollowedByUnit(int at)
    {
        at = AfterBlanks(text, at);
        return at < text.Length && (BeginsWord(text[at]) || UnitTable.FromSign(text[at]) is not null);
    }

    private bool IsWholeValue(int start, int end) => start == _firstLiteral && AfterBlanks(text, end) == text.Length;

    /// <summary>Where a literal stands that could be the whole value: behind blanks and a sign.</summary>
    private static int FirstLiteral(string text)
    {
        var first = AfterBlanks(text, 0);
        return first < text.Length && text[first] is '-' or '+' ? AfterBlanks(text, first + 1) : first;
    }

    private bool BeginsNumber(int at) => Characters.BeginsNumber(text, at);

    private double Number(int start, int end) =>
        double.Parse(text.AsSpan(start, end - start), NumberStyles.Float, CultureInfo.InvariantCulture);

    private Literal? Fail(int start, int end, string message)
    {
        Fault ??= new(start, end - start, message);
        return null;
    }

    private readonly record struct ScannedNumber(double Value, int End, bool IsWhole, bool IsFraction, bool IsMixed);
}
