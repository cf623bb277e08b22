namespace PlanForge.Parts;

/// <summary>A computed number with its meaning, for the summary, the report and the tests.</summary>
/// <param name="Key">Stable path of lower-case words: <c>wing.incidence.chord</c>.</param>
/// <param name="Label">What a builder calls it.</param>
/// <param name="Value">mm, mm², radians, grams or a plain number, by <paramref name="Quantity"/>.</param>
/// <param name="Quantity">What kind of number it is.</param>
public sealed record Figure(string Key, string Label, double Value, FigureQuantity Quantity);

/// <summary>The kind of a figure.</summary>
public enum FigureQuantity
{
    /// <summary>Millimetres.</summary>
    Length,

    /// <summary>Square millimetres.</summary>
    Area,

    /// <summary>Radians.</summary>
    Angle,

    /// <summary>A plain number.</summary>
    Number,
}
