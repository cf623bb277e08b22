using PlanForge.Parts;

namespace PlanForge.Reports;

/// <summary>The units figures are reported in for machines: millimetres, square millimetres, degrees.</summary>
internal static class FigureUnits
{
    // Curves are solved to 1e-6 mm: more digits would be noise that differs from one processor to the next.
    private const int Decimals = 6;

    /// <summary>The name of a quantity's unit, empty for a plain number.</summary>
    public static string NameOf(FigureQuantity quantity) => quantity switch
    {
        FigureQuantity.Length => "mm",
        FigureQuantity.Area => "mm2",
        FigureQuantity.Angle => "deg",
        _ => "",
    };

    /// <summary>A figure's value in that unit, rounded to what is known; never negative zero.</summary>
    public static double ValueOf(Figure figure) => ValueOf(figure.Quantity, figure.Value);

    /// <summary>The same of a value of some quantity.</summary>
    public static double ValueOf(FigureQuantity quantity, double value) =>
        Rounded(quantity == FigureQuantity.Angle ? value * 180 / Math.PI : value);

    /// <summary>A value as it goes into the report.</summary>
    public static double Rounded(double value) => Math.Round(value, Decimals) + 0.0;
}
