using System.Globalization;
using PlanForge.Geometry;

namespace PlanForge.Output.Inspection;

/// <summary>Numbers and names as findings write them.</summary>
internal static class Words
{
    private const int LongestQuote = 40;

    /// <summary>A length with its unit, to three decimals.</summary>
    public static string Of(double length) => string.Create(CultureInfo.InvariantCulture, $"{Rounded(length):0.000} mm");

    /// <summary>A place, to three decimals.</summary>
    public static string Of(Point2 point) =>
        string.Create(CultureInfo.InvariantCulture, $"({Rounded(point.X):0.000}, {Rounded(point.Y):0.000})");

    /// <summary>The size of a rectangle.</summary>
    public static string SizeOf(Bounds2 bounds) =>
        string.Create(CultureInfo.InvariantCulture, $"{Rounded(bounds.Width):0.000} x {Rounded(bounds.Height):0.000} mm");

    /// <summary>A piece of the file, short, without what could drive a terminal.</summary>
    public static string Quote(ReadOnlySpan<char> text)
    {
        var length = Math.Min(text.Length, LongestQuote);
        Span<char> shown = stackalloc char[length];
        for (var i = 0; i < length; i++)
        {
            shown[i] = char.IsControl(text[i]) || char.IsSurrogate(text[i]) || char.GetUnicodeCategory(text[i]) == UnicodeCategory.Format
                ? '\uFFFD'
                : text[i];
        }

        return $"`{shown}{(text.Length > LongestQuote ? "…" : "")}`";
    }

    // Never a negative zero.
    private static double Rounded(double value) => Math.Round(value, 3) + 0.0;
}
