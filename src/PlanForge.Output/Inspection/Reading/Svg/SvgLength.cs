namespace PlanForge.Output.Inspection.Reading.Svg;

/// <summary>A length as an attribute writes it.</summary>
/// <param name="Number">The number.</param>
/// <param name="Unit">The unit's name, empty for user units.</param>
internal readonly record struct SvgLength(double Number, string Unit)
{
    /// <summary>Millimetres of a CSS pixel: 96 of them are an inch (CSS Values and Units, 6.2; from memory).</summary>
    public const double Pixel = 25.4 / 96;

    /// <summary>The length in mm where the unit is one of real size, else null.</summary>
    public double? Millimetres => Unit switch
    {
        "mm" => Number,
        "cm" => Number * 10,
        "in" => Number * 25.4,
        "pt" => Number * 25.4 / 72,
        "pc" => Number * 25.4 / 6,
        "Q" or "q" => Number / 4,
        _ => null,
    };

    /// <summary>The length in user units, or null for one relative to something else.</summary>
    public double? UserUnits => Unit is "" or "px" ? Number : Millimetres / Pixel;

    /// <summary>Reads the whole text as a length; null when it is none.</summary>
    public static SvgLength? Read(string text)
    {
        var numbers = new SvgNumbers(text);
        numbers.SkipSpace();
        if (!numbers.TryNumber(out var number))
        {
            return null;
        }

        var unit = numbers.Word().ToString();
        numbers.SkipSpace();
        return numbers.IsAtEnd ? new(number, unit) : null;
    }
}
