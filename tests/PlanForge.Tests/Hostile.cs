using System.Globalization;

namespace PlanForge.Tests;

/// <summary>Cultures that show up text written without care.</summary>
/// <remarks>
/// The tests run without culture data, as the program does, so the two are made by hand: German with its comma, and one with
/// Arabic letters in its numbers' signs as Persian has them (from memory).
/// </remarks>
internal static class Hostile
{
    public static CultureInfo German { get; } = With(numbers => (numbers.NumberDecimalSeparator, numbers.NumberGroupSeparator) = (",", "."));

    public static CultureInfo Persian { get; } = With(numbers =>
        (numbers.NumberDecimalSeparator, numbers.NumberGroupSeparator, numbers.NegativeSign) = ("\u066B", "\u066C", "\u200E\u2212"));

    /// <summary>Runs something under a culture; tasks it starts take the culture along.</summary>
    public static T Under<T>(CultureInfo culture, Func<T> run)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = culture;
        try
        {
            return run();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static CultureInfo With(Action<NumberFormatInfo> change)
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        change(culture.NumberFormat);
        return culture;
    }
}
