using System.Globalization;

namespace PlanForge.Output.Inspection.Reading.Dxf;

/// <summary>A group of a DXF file: a code on one line and its value on the next.</summary>
/// <param name="Code">The group code.</param>
/// <param name="Value">The value without the spaces around it.</param>
/// <param name="Line">The line of the code, from 1.</param>
internal readonly record struct DxfTag(int Code, string Value, int Line)
{
    /// <summary>Where the group begins.</summary>
    public TextPlace At => new(Line, 1);

    /// <summary>Where its value stands.</summary>
    public TextPlace ValueAt => new(Line + 1, 1);

    public bool Is(int code, string value) => Code == code && Value == value;

    /// <summary>The value as a finite number.</summary>
    public bool TryNumber(out double number) =>
        double.TryParse(Value, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);

    /// <summary>The value as a whole number.</summary>
    public bool TryInteger(out int number) => int.TryParse(Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out number);
}
